import { seededRandom } from "@keepwright/quantities";
import type { Choice } from "../problem/programme.js";
import { construct } from "./construct.js";
import { CrowdedAir } from "./crowdedAir.js";
import { better, from, onFrom } from "./downhill.js";
import type { Evaluation } from "./evaluate.js";
import { descend, descendQuickly, finish } from "./improve.js";
import { searchNearby, type Tell } from "./nearby.js";
import { improveWraps } from "./otherWraps.js";
import { perturbed } from "./perturb.js";
import type { Prepared } from "./prepare.js";
import { rearrange, worthArranging } from "./rearrange.js";
import { coldIsShort } from "./roomPrices.js";
import { Search } from "./search.js";
import { isSmall } from "./smallCase.js";
import { searchSmall } from "./smallStarts.js";
import { unsortedChoice } from "./unsorted.js";

/** How far a search has come: a share 0…1 of its fixed rounds, and the objective of the best plan so far [g]. */
export interface Progress {
  readonly done: number;
  readonly best: number;
}

/** Rounds of perturbation of a small case: a fixed number, never a clock, so that a seed gives the same plan everywhere. */
const perturbations = 10;

/**
 * Downhill from the first arrangement; where all cold places are short of room, from the one with the room priced if that is better as it stands; where room is short, also from one that begins
 * with what is hardest to fit.
 */
function searchLarge(search: Search, constructed: Choice, crowded: boolean): Evaluation {
  const { prepared } = search;
  const asItIs = search.current;
  const start = coldIsShort(prepared)
    ? better(asItIs, search.evaluated(construct(prepared, "priced"))).choice
    : constructed;
  if (crowded) search.crowded = new CrowdedAir(prepared, start);
  const first = from(search, start, descend);
  const best =
    first.objective.overflow > 0 ? better(first, from(search, construct(prepared, "bulk"), descend)) : first;
  const finished = onFrom(search, best, finish);
  // A plan is never worse than leaving everything unsorted.
  const unsorted = search.goTo(unsortedChoice(prepared.problem));
  return better(finished, unsorted) === finished ? finished : onFrom(search, unsorted, finish);
}

/**
 * Downhill, then on from choices nearby. Where it is worth it also from arrangements of all lots anew: before, and again if choices nearby led
 * elsewhere.
 */
function searchFar(search: Search, constructed: Choice, random: () => number, tell: Tell): Evaluation {
  const crowded = worthArranging(search.prepared);
  const first = searchLarge(search, constructed, crowded);
  const arranged = crowded ? rearrange(search, first) : first;
  const near = searchNearby(search, arranged, random, tell);
  return crowded && near !== arranged ? rearrange(search, near) : near;
}

/** The best of some choices not far from the best one, gone downhill from. */
function searchPerturbed(search: Search, start: Evaluation, random: () => number, tell: Tell): Evaluation {
  let best = start;
  for (let round = 0; round < perturbations; round++) {
    tell((round + 1) / (perturbations + 1), best);
    const thrown = from(search, perturbed(search.prepared, best.choice, random), descendQuickly);
    if (better(best, thrown) === thrown) best = onFrom(search, thrown, finish);
  }
  return best;
}

/** The best choice found: constructed, improved, improved again from choices nearby, and last wrap by wrap. */
export function searchPlan(prepared: Prepared, progress?: (progress: Progress) => void): Evaluation {
  const { problem } = prepared;
  const random = seededRandom(problem.seed);
  const constructed = construct(prepared);
  const search = new Search(prepared, constructed);
  const tell: Tell = (done, { objective }) => progress?.({ done, best: objective.total });
  const near = isSmall(problem)
    ? searchPerturbed(search, searchSmall(search, constructed), random, tell)
    : searchFar(search, constructed, random, tell);
  const best = onFrom(search, near, improveWraps);
  tell(1, best);
  return best;
}
