import { type Part, programmeKey } from "../problem/programme.js";
import { stillRipens } from "./candidates.js";
import { withJoin, withSplit } from "./moves.js";
import type { Option } from "./options.js";
import { leastGain, type Search } from "./search.js";

/** Parts a lot may be in: more would be more trouble than a household takes. Declared preference, no source. */
export const mostParts = 3;
/** Options tried for the portions split off. */
const mostOptions = 5;
/** Splits of a part judged in full, at most. */
const mostTried = 2;

const partsOfLot = (search: Search, lot: number): number =>
  search.current.choice.parts.filter((part) => part.lot === lot).length;

/** Portions worth splitting off: one piece, or half; in whole pieces. */
function amounts(portions: number, unit: number): number[] {
  const whole = (share: number): number => Math.round((portions * share) / unit) * unit;
  return [...new Set([unit, whole(1 / 2)])].filter((amount) => amount > 0 && amount < portions);
}

/** Something may be gained: it ripens (so may ripen in turn), or it lies, or would rather lie, where there is too little room. */
function worthSplitting(search: Search, index: number): boolean {
  const { choice, over } = search.current;
  const part = choice.parts[index]!;
  const lot = search.prepared.problem.lots[part.lot]!;
  if (part.portions < 2 * lot.splitUnit || partsOfLot(search, part.lot) >= mostParts) return false;
  const kept = search.ranked(index).some(({ cost, overflow }) => cost < -leastGain && overflow > 0);
  return stillRipens(lot) || kept || part.programme.stays.some((stay) => over[stay.place]! > 0);
}

function splitPart(search: Search, index: number): boolean {
  const { choice } = search.current;
  const part = choice.parts[index]!;
  const lot = search.prepared.problem.lots[part.lot]!;
  const own = programmeKey(part.programme);
  const options = search.prepared.options(part.lot).filter((option: Option) => option.key !== own);
  const splits = options.slice(0, mostOptions).flatMap((option) =>
    amounts(part.portions, lot.splitUnit).map((amount) => {
      const rest: Part = { ...part, portions: part.portions - amount };
      const own: Part = { ...part, portions: amount, programme: option.programme };
      const { cost, overflow } = search.judge.estimate(search.current, [
        { part: index, like: index, to: rest },
        { part: "new", like: index, to: own },
      ]);
      return { option, amount, change: cost + overflow };
    }),
  );
  return splits
    .filter(({ change }) => change < -leastGain)
    .sort((a, b) => a.change - b.change)
    .slice(0, mostTried)
    .some(({ option, amount }) => search.attempt(withSplit(choice, index, amount, option.programme)));
}

/** Takes a few portions of a lot apart where that helps. */
export function splitParts(search: Search): boolean {
  const { length } = search.current.choice.parts;
  for (let index = 0; index < length; index++) {
    if (worthSplitting(search, index) && splitPart(search, index)) return true;
  }
  return false;
}

/** Puts parts of a lot together again where that helps. */
export function joinParts(search: Search): boolean {
  const { choice } = search.current;
  return choice.parts.some((part, first) =>
    choice.parts.some(
      (other, second) =>
        second !== first && other.lot === part.lot && search.attempt(withJoin(choice, first, second)),
    ),
  );
}
