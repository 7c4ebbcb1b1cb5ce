import { withProgramme } from "./moves.js";
import { type RankedOption, waysOut } from "./ranked.js";
import type { Search } from "./search.js";

/** Those that want to come, ways out of one that leaves, and exchanges judged in full: the most promising of each. */
const mostComing = 4;
const mostWaysOut = 2;
const mostTried = 6;

/** A wrapped lot takes at most about this many times its bare room. */
const mostExtraRoom = 2;

interface Exchange {
  readonly comes: RankedOption;
  readonly leaves: RankedOption;
  readonly change: number;
}

/** Exchanges that would make room for one that wants to come. */
function exchangesFor(search: Search, comes: RankedOption): Exchange[] {
  const places = new Set(comes.option.programme.stays.map((stay) => stay.place));
  return search.current.choice.parts.flatMap((part, index) => {
    if (index === comes.part || !part.programme.stays.some((stay) => places.has(stay.place))) return [];
    return waysOut(search, index, places, mostWaysOut)
      .slice(0, 1)
      .map((leaves) => ({ comes, leaves, change: comes.cost + leaves.cost }));
  });
}

/** Whether some place a part could lie in has too little room left for it: only then can others be in its way. */
function couldBeBlocked({ current, prepared }: Search, index: number): boolean {
  const part = current.choice.parts[index]!;
  const lot = prepared.problem.lots[part.lot]!;
  const litres = (lot.litres * part.portions) / lot.portions;
  const places = new Set(
    prepared.options(part.lot).flatMap(({ programme }) => programme.stays.map(({ place }) => place)),
  );
  return [...places].some((place) => {
    const peak = current.taken[place]!.reduce((most, taken) => Math.max(most, taken), 0);
    return peak + litres * mostExtraRoom > prepared.problem.places[place]!.place.litres;
  });
}

/**
 * Two-lot exchanges: where a part would do better in a place without room for it, one that lies there leaves for its own
 * cheapest option elsewhere.
 */
export function exchange(search: Search): boolean {
  const { choice } = search.current;
  const coming = choice.parts
    .flatMap((_, part) => (couldBeBlocked(search, part) ? search.ranked(part) : []))
    .filter(({ cost, overflow }) => overflow > 0 && cost < 0)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, mostComing);
  return coming
    .flatMap((comes) => exchangesFor(search, comes))
    .filter(({ change }) => change < 0)
    .sort((a, b) => a.change - b.change)
    .slice(0, mostTried)
    .some(({ comes, leaves }) => {
      const came = withProgramme(choice, comes.part, comes.option.programme);
      return search.attempt(withProgramme(came, leaves.part, leaves.option.programme));
    });
}
