import { exchange } from "./exchange.js";
import { withOtherSettings, withProgramme } from "./moves.js";
import { improvePairs } from "./pairs.js";
import { rankedOptions } from "./ranked.js";
import type { Search } from "./search.js";
import { joinParts, splitParts } from "./splitting.js";

/** Estimates may be a little off: changes that seem to cost up to this [g] are still looked at in full. */
const doubt = 1;
/** Options of a part judged in full, at most. */
const mostTried = 3;

/** Gives a part the best other programme, if that helps. */
function improvePart(search: Search, part: number): boolean {
  const { choice } = search.current;
  return rankedOptions(search, part)
    .slice(0, mostTried)
    .some(
      ({ option, cost, overflow }) =>
        cost + overflow < doubt && search.attempt(withProgramme(choice, part, option.programme)),
    );
}

/** Parts in the order of what they cost now, dearest first. */
function dearestFirst({ current }: Search): number[] {
  const cost = current.costs.map(({ costs, costLeft }, part) =>
    current.eating.eaten[part]!.reduce(
      (sum, portions, day) => (portions > 0 ? sum + portions * costs[day]! : sum),
      current.eating.left[part]! * costLeft,
    ),
  );
  return cost.map((_, part) => part).sort((a, b) => cost[b]! - cost[a]! || a - b);
}

const improveParts = (search: Search): boolean =>
  dearestFirst(search).reduce((improved, part) => improvePart(search, part) || improved, false);

const turnVents = (search: Search): boolean =>
  search.prepared.problem.vents.reduce(
    (improved: boolean, _, vent) =>
      withOtherSettings(search.current.choice, vent).some((choice) => search.attempt(choice)) || improved,
    false,
  );

/** Goes downhill by every kind of change until none helps; a change that helped starts again with the cheapest kind. */
export function descend(search: Search): void {
  const kinds = [improveParts, turnVents, exchange, splitParts, joinParts, improvePairs];
  let kind = 0;
  while (kind < kinds.length) kind = kinds[kind]!(search) ? 0 : kind + 1;
}
