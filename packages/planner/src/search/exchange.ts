import type { Programme } from "../problem/programme.js";
import { withProgramme } from "./moves.js";
import { type RankedOption, rankedOptions } from "./ranked.js";
import type { Search } from "./search.js";

/** Exchanges judged in full for each search through all of them, the most promising first. */
const mostTried = 12;

const uses = (programme: Programme, places: ReadonlySet<number>): boolean =>
  programme.stays.some((stay) => places.has(stay.place));

interface Exchange {
  readonly comes: RankedOption;
  readonly leaves: RankedOption;
  readonly change: number;
}

/** Those who lie where one wants to come, each with its cheapest option elsewhere. */
function leavers(search: Search, comes: RankedOption, ranked: readonly (readonly RankedOption[])[]): RankedOption[] {
  const places = new Set(comes.option.programme.stays.map((stay) => stay.place));
  return search.current.choice.parts.flatMap((part, index) => {
    if (index === comes.part || !uses(part.programme, places)) return [];
    const elsewhere = ranked[index]!.filter(({ option }) => !uses(option.programme, places));
    const cheapest = elsewhere.reduce<RankedOption | undefined>(
      (best, one) => (!best || one.cost < best.cost ? one : best),
      undefined,
    );
    return cheapest ? [cheapest] : [];
  });
}

/**
 * Two-lot exchanges: where a part would do better in a place without room for it, one that lies there leaves for its own
 * cheapest option elsewhere.
 */
export function exchange(search: Search): boolean {
  const { choice } = search.current;
  const ranked = choice.parts.map((_, part) => rankedOptions(search, part));
  const exchanges = ranked.flat().flatMap((comes): Exchange[] => {
    if (comes.overflow <= 0 || comes.cost >= 0) return [];
    return leavers(search, comes, ranked).map((leaves) => ({ comes, leaves, change: comes.cost + leaves.cost }));
  });
  return exchanges
    .filter(({ change }) => change < 0)
    .sort((a, b) => a.change - b.change)
    .slice(0, mostTried)
    .some(({ comes, leaves }) => {
      const came = withProgramme(choice, comes.part, comes.option.programme);
      return search.attempt(withProgramme(came, leaves.part, leaves.option.programme));
    });
}
