import { litresInStay } from "../rules/capacity.js";
import { weights } from "../rules/weights.js";
import { withProgramme } from "./moves.js";
import { partWith, type RankedOption, waysOut } from "./ranked.js";
import { leastGain, type Search } from "./search.js";

/** Those that want to come, ways out of one that leaves, exchanges judged together, and in full: the most promising of each. */
const mostComing = 4;
const mostWaysOut = 2;
const mostTogether = 12;
const mostTried = 3;

/** Share of the litres wanting that is rounding. */
const roundingShare = 1e-9;

/** A wrapped lot takes at most about this many times its bare room. */
const mostExtraRoom = 2;

interface Exchange {
  readonly comes: RankedOption;
  readonly leaves: RankedOption;
  /** Estimated change of the objective [g]. */
  readonly change: number;
}

/** Litres a part takes in some places, at most. */
function litresIn({ current, prepared }: Search, index: number, places: ReadonlySet<number>): number {
  const part = current.choice.parts[index]!;
  const litres = part.programme.stays.map(({ place }, stay) =>
    places.has(place) ? litresInStay(prepared.problem, part, stay) : 0,
  );
  return Math.max(...litres);
}

/** Exchanges that could make room for one that wants to come: what leaves takes as much as is wanting, or more. */
function exchangesFor(search: Search, comes: RankedOption): Exchange[] {
  const places = new Set(comes.option.programme.stays.map((stay) => stay.place));
  const wanting = (1 - roundingShare) * (comes.overflow / weights.overflowLitre);
  return search.current.choice.parts.flatMap((_, index) => {
    if (index === comes.part || litresIn(search, index, places) < wanting) return [];
    return waysOut(search, index, places, mostWaysOut, -comes.cost)
      .slice(0, 1)
      .map((leaves) => ({ comes, leaves, change: comes.cost + leaves.cost }));
  });
}

/** The same with both changes judged together: only so is it seen whether the room suffices. */
function judgedTogether(search: Search, { comes, leaves }: Exchange): Exchange {
  const { current, judge } = search;
  const changes = [comes, leaves].map(({ part, option }) => ({
    part,
    like: part,
    to: partWith(current, part, option),
  }));
  const { cost, overflow } = judge.estimate(current, changes);
  return { comes, leaves, change: cost + overflow };
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
    .slice(0, mostTogether)
    .map((one) => judgedTogether(search, one))
    .filter(({ change }) => change < -leastGain)
    .sort((a, b) => a.change - b.change)
    .slice(0, mostTried)
    .some(({ comes, leaves }) => {
      const came = withProgramme(choice, comes.part, comes.option.programme);
      return search.attempt(withProgramme(came, leaves.part, leaves.option.programme));
    });
}
