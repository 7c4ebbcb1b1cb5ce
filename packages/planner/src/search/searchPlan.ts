import { seededRandom } from "@keepwright/quantities";
import type { Choice } from "../problem/programme.js";
import { construct } from "./construct.js";
import type { Evaluation } from "./evaluate.js";
import { fittingStarts } from "./fittingStarts.js";
import { descend, descendWhole, settle } from "./improve.js";
import { withOtherSettings } from "./moves.js";
import { perturbed } from "./perturb.js";
import type { Prepared } from "./prepare.js";
import { leastGain, Search } from "./search.js";
import { isSmall } from "./smallCase.js";
import { unsortedChoice } from "./unsorted.js";

/** How far a search has come: a share 0…1 of its fixed rounds, and the objective of the best plan so far [g]. */
export interface Progress {
  readonly done: number;
  readonly best: number;
}

/**
 * Rounds of perturbation: a fixed number, never a clock, so that a seed gives the same plan everywhere. Fewer for large
 * hauls, where a round costs more and a single lot weighs less.
 */
export const roundsFor = (lots: number): number => (lots <= 5 ? 10 : lots <= 12 ? 6 : lots <= 30 ? 2 : 1);

/** In small cases, begins again from each other setting of each vent: a turned vent pays only once others have followed. */
function fromTurnedVents(search: Search, best: Evaluation): Evaluation {
  if (!isSmall(search.prepared.problem)) return best;
  const turned = best.choice.vents.flatMap((_, vent) => withOtherSettings(best.choice, vent));
  return turned.reduce((least, choice) => {
    search.goTo(choice);
    settle(search);
    descendWhole(search);
    descend(search, true);
    return search.current.objective.total < least.objective.total - leastGain ? search.current : least;
  }, best);
}

/** Goes downhill from the unsorted arrangement where that is better than the best so far; always in small cases. */
function fromUnsorted(search: Search, best: Evaluation): Evaluation {
  const { problem } = search.prepared;
  const { objective } = search.goTo(unsortedChoice(problem));
  if (objective.total >= best.objective.total && !isSmall(problem)) return best;
  descend(search, true);
  return search.current.objective.total < best.objective.total - leastGain ? search.current : best;
}

/** Arrangements of fitting starts gone downhill from, the best in full judgement. */
const mostFitting = 6;

/** In small cases, begins again from the arrangements that are best by room and lots alone. */
function fromFitting(search: Search, best: Evaluation): Evaluation {
  const { prepared } = search;
  if (!isSmall(prepared.problem)) return best;
  const total = (choice: Choice): number => search.evaluated(choice).objective.total;
  const starts = fittingStarts(prepared).sort((a, b) => total(a) - total(b));
  return starts.slice(0, mostFitting).reduce((least, choice) => {
    search.goTo(choice);
    descendWhole(search);
    descend(search, true);
    return search.current.objective.total < least.objective.total - leastGain ? search.current : least;
  }, best);
}

/** The best choice found: constructed, improved, and improved again from perturbed copies. */
export function searchPlan(prepared: Prepared, progress?: (progress: Progress) => void): Evaluation {
  const { problem } = prepared;
  const small = isSmall(problem);
  const rounds = roundsFor(problem.lots.length);
  const random = seededRandom(problem.seed);
  const search = new Search(prepared, construct(prepared));
  if (small) descendWhole(search);
  descend(search, true);
  let best = search.current;
  if (best.objective.overflow > 0) {
    // Room is short: begin again with what is hardest to fit.
    search.goTo(construct(prepared, "bulk"));
    descend(search, true);
    if (search.current.objective.total < best.objective.total) best = search.current;
  }
  best = fromTurnedVents(search, fromFitting(search, fromUnsorted(search, best)));
  for (let round = 0; round < rounds; round++) {
    progress?.({ done: (round + 1) / (rounds + 1), best: best.objective.total });
    search.goTo(perturbed(prepared, best.choice, random));
    descend(search, false);
    if (search.current.objective.total >= best.objective.total - leastGain) continue;
    descend(search, true);
    best = search.current;
  }
  progress?.({ done: 1, best: best.objective.total });
  return best;
}
