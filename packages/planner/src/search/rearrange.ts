import { type Choice, choiceKey } from "../problem/programme.js";
import { sum } from "../problem/sum.js";
import { weights } from "../rules/weights.js";
import { type Assignment, cheapestAssignments } from "./assignment.js";
import { better, from, onFrom } from "./downhill.js";
import type { Evaluation } from "./evaluate.js";
import { finish, letFollow } from "./improve.js";
import { type LotWay, litresOfParts, waysOfLot } from "./lotWays.js";
import type { Prepared } from "./prepare.js";
import { coldIsShort } from "./roomPrices.js";
import type { Search } from "./search.js";

/** Rounds at most, and rounds that may lead to nothing before it ends: fixed numbers, never a clock. All declared, no source; what they were chosen by stands in the decision on the search. */
const mostRounds = 12;
const mostInVain = 2;

/** Arrangements kept, judged in full, and followed by others, the most promising of each. */
const mostKept = 12;
const mostJudged = 6;
const mostFollowed = 2;

/** Ways of lots looked at in one search for arrangements, at most. */
const mostLooked = 20_000;

/** How much worse than the present one an arrangement may be estimated, as shares of the objective: as little as gives some. */
const worseBy = [0.03, 0.1, 0.3];
const enough = 3;

/** What was found is gone downhill from by every kind of change if it is at most this share worse than the best. */
const near = 0.03;

/** Lots above which they are not arranged anew: estimates of so many moving at once say little, and cost much. Declared, no source. */
const mostLots = 20;

/** Whether lots are worth arranging anew: all cold places are short of room, and the lots are few enough. */
export const worthArranging = (prepared: Prepared): boolean =>
  prepared.problem.lots.length <= mostLots && coldIsShort(prepared);

/** The cheapest arrangements of all lots by estimates of each by itself; as much room as there is now counts as there, so that staying as it is fits. */
function cheapest(search: Search, ways: readonly (readonly LotWay[])[]): readonly Assignment[] {
  const { current, prepared } = search;
  const used = litresOfParts(search, current.choice.parts);
  const room = prepared.problem.places.map(({ place }, index) =>
    Math.max(place.litres, used[index]! - current.over[index]!),
  );
  const perLitreOver = weights.overflowLitre;
  const now = sum(current.over) * perLitreOver;
  const { total, overflow } = current.objective;
  let found: readonly Assignment[] = [];
  for (const share of worseBy) {
    const below = now + share * (total - overflow);
    found = cheapestAssignments(ways, room, { below, perLitreOver, kept: mostKept, looked: mostLooked });
    if (found.length >= enough) break;
  }
  return found;
}

/** Arrangements of all lots at once that promise most from where the search stands, the most promising first. */
function promisingArrangements(search: Search): Choice[] {
  const { parts: now, vents } = search.current.choice;
  const ways = search.prepared.problem.lots.map(({ index }) => waysOfLot(search, index));
  return cheapest(search, ways)
    .map((assignment) => assignment.ways.flatMap((way, lot) => ways[lot]![way]!.parts))
    .filter((parts) => parts.length !== now.length || parts.some((part, index) => part !== now[index]))
    .map((parts) => ({ parts, vents }));
}

/** The best that comes of the most promising arrangements not seen before, once others have followed. */
function bestFollowed(search: Search, seen: Set<string>): Evaluation | undefined {
  const judged = promisingArrangements(search)
    .filter((choice) => !seen.has(choiceKey(search.prepared.pinned(choice))))
    .slice(0, mostJudged)
    .map((choice) => search.evaluated(choice))
    .sort((a, b) => a.objective.total - b.objective.total)
    .slice(0, mostFollowed);
  let best: Evaluation | undefined;
  for (const { choice } of judged) {
    seen.add(choiceKey(choice));
    const followed = from(search, choice, letFollow);
    best = best ? better(best, followed) : followed;
  }
  return best;
}

/**
 * Arranges all lots anew where there is too little room for all that would lie in the cold: each lot's ways to lie are estimated with the others as they are (its parts gathered first), what fits together and costs least is found
 * by branch and bound, and the most promising are judged in full and followed by others. It goes on from what comes of that, better or not, and hands back the best. So a lot in parts is put together while several others make
 * way, which no change of one or two finds.
 */
export function rearrange(search: Search, start: Evaluation): Evaluation {
  const seen = new Set<string>();
  let best = start;
  let here = start;
  let vain = 0;
  for (let round = 0; round < mostRounds && vain < mostInVain; round++) {
    search.goBackTo(here);
    const found = bestFollowed(search, seen);
    if (!found) break;
    const worthMore = found.objective.total < (1 + near) * best.objective.total;
    here = worthMore ? onFrom(search, found, finish) : found;
    vain = better(best, here) === best ? vain + 1 : 0;
    best = better(best, here);
  }
  return best;
}
