import { seededRandom } from "@keepwright/quantities";
import type { Choice } from "../problem/programme.js";
import { construct } from "./construct.js";
import type { Evaluation } from "./evaluate.js";
import { descend, descendQuickly, finish } from "./improve.js";
import { improveWraps } from "./otherWraps.js";
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

const better = (one: Evaluation, other: Evaluation): Evaluation =>
  other.objective.total < one.objective.total - leastGain ? other : one;

/** Goes from a choice downhill, and tells where that leads. */
function from(search: Search, choice: Choice, downhill: (search: Search) => void): Evaluation {
  search.goTo(choice);
  downhill(search);
  return search.current;
}

/** Goes on downhill from where the search has been, by other kinds of change. */
function onFrom(search: Search, evaluation: Evaluation, downhill: (search: Search) => void): Evaluation {
  search.goBackTo(evaluation);
  downhill(search);
  return search.current;
}

/** Downhill from the first arrangement; where room is short, also from one that begins with what is hardest to fit. */
function searchLarge(search: Search, constructed: Choice): Evaluation {
  const { prepared } = search;
  const first = from(search, constructed, descend);
  const best =
    first.objective.overflow > 0 ? better(first, from(search, construct(prepared, "bulk"), descend)) : first;
  const finished = onFrom(search, best, finish);
  // A plan is never worse than leaving everything unsorted.
  const unsorted = search.goTo(unsortedChoice(prepared.problem));
  return better(finished, unsorted) === finished ? finished : onFrom(search, unsorted, finish);
}

/** The best choice found: constructed, improved, improved again from perturbed copies, and last wrap by wrap. */
export function searchPlan(prepared: Prepared, progress?: (progress: Progress) => void): Evaluation {
  const { problem } = prepared;
  const rounds = roundsFor(problem.lots.length);
  const random = seededRandom(problem.seed);
  const constructed = construct(prepared);
  const search = new Search(prepared, constructed);
  let best = isSmall(problem) ? searchSmall(search, constructed) : searchLarge(search, constructed);
  for (let round = 0; round < rounds; round++) {
    progress?.({ done: (round + 1) / (rounds + 1), best: best.objective.total });
    const thrown = from(search, perturbed(prepared, best.choice, random), descendQuickly);
    if (better(best, thrown) === thrown) best = onFrom(search, thrown, finish);
  }
  best = onFrom(search, best, improveWraps);
  progress?.({ done: 1, best: best.objective.total });
  return best;
}
