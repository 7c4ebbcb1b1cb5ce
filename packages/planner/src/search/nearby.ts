import { promisingDepartures } from "./departures.js";
import { better, from, onFrom } from "./downhill.js";
import type { Evaluation } from "./evaluate.js";
import { moveGivers } from "./givers.js";
import { finish, letFollow } from "./improve.js";
import type { Search } from "./search.js";
import { promisingSwaps, type Start } from "./swaps.js";

/** Told how far a search has come, 0…1, and the best so far. */
export type Tell = (done: number, best: Evaluation) => void;

/**
 * Starts that may lead to nothing, one after another, before the search ends: a fixed number, never a clock, so that a seed gives the same plan everywhere. Fewer
 * for large hauls, where one costs more and a single lot weighs less.
 */
const mostInVain = (lots: number): number => (lots <= 20 ? 6 : lots <= 30 ? 3 : 2);

/** Starts in all, at most. Declared, no source; what it was chosen by stands in the decision on the search. */
const mostStarts = 24;

/** Among so many of the most promising the seed draws the next, likelier near the front. Declared, no source. */
const drawnFrom = 4;

/** Choices near where the search stands that may lead to something better once others have followed, the most promising first. */
const promisingStarts = (search: Search): Start[] =>
  [...promisingSwaps(search), ...promisingDepartures(search)].sort((a, b) => a.change - b.change);

/**
 * The best choice found from those nearby that promise most: two parts change places, or one makes way for those who wait for its room; then only what
 * that stirs looks around. Whatever leads to something better is gone on from.
 */
export function searchNearby(
  search: Search,
  start: Evaluation,
  random: () => number,
  tell: Tell,
): Evaluation {
  const { lots } = search.prepared.problem;
  const tried = new Set<string>();
  let best = start;
  let starts: Start[] | undefined;
  let inVain = 0;
  for (let round = 0; round < mostStarts && inVain < mostInVain(lots.length); round++) {
    tell((round + 1) / (mostStarts + 1), best);
    search.goBackTo(best);
    starts ??= promisingStarts(search);
    const untried = starts.filter(({ name }) => !tried.has(name));
    const next = untried[Math.floor(random() ** 2 * Math.min(drawnFrom, untried.length))];
    if (!next) break;
    tried.add(next.name);
    for (const part of best.choice.parts.keys()) search.settle(part);
    const found = from(search, next.choice, letFollow);
    inVain++;
    if (better(best, found) === best) continue;
    best = found;
    starts = undefined;
    inVain = 0;
  }
  best = moveGivers(search, best);
  return best === start ? best : onFrom(search, best, finish);
}
