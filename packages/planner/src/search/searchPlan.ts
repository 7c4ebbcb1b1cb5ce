import { seededRandom } from "@keepwright/quantities";
import { construct } from "./construct.js";
import type { Evaluation } from "./evaluate.js";
import { descend } from "./improve.js";
import { perturbed } from "./perturb.js";
import type { Prepared } from "./prepare.js";
import { leastGain, Search } from "./search.js";
import { isSmall } from "./smallCase.js";
import { searchSmall } from "./smallStarts.js";
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

/** Downhill from the first arrangement; where room is short, also from one that begins with what is hardest to fit. */
function searchLarge(search: Search): Evaluation {
  const { prepared } = search;
  descend(search, true);
  let best = search.current;
  if (best.objective.overflow > 0) {
    search.goTo(construct(prepared, "bulk"));
    descend(search, true);
    if (search.current.objective.total < best.objective.total) best = search.current;
  }
  // A plan is never worse than leaving everything unsorted.
  if (search.goTo(unsortedChoice(prepared.problem)).objective.total >= best.objective.total) return best;
  descend(search, true);
  return search.current;
}

/** The best choice found: constructed, improved, and improved again from perturbed copies. */
export function searchPlan(prepared: Prepared, progress?: (progress: Progress) => void): Evaluation {
  const { problem } = prepared;
  const rounds = roundsFor(problem.lots.length);
  const random = seededRandom(problem.seed);
  const constructed = construct(prepared);
  const search = new Search(prepared, constructed);
  let best = isSmall(problem) ? searchSmall(search, constructed) : searchLarge(search);
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
