import { type Part, partDoing, programmeKey } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { programmeEffort } from "../rules/effort.js";
import { weights } from "../rules/weights.js";
import { stillRipens } from "./candidates.js";
import { withJoin, withSplit } from "./moves.js";
import type { Option } from "./options.js";
import { hopefulCost, limitOfHope } from "./ranked.js";
import { leastGain, lifeThatMatters, type Search } from "./search.js";
import { isSmall } from "./smallCase.js";

/** Parts a lot may be in: more would be more trouble than a household takes. Declared preference, no source. */
export const mostParts = 3;
/** Options tried for the portions split off. */
const mostOptions = 5;
/** In small cases all options are tried at few amounts, and the most promising at all. */
const mostPromising = 15;
/** Splits of a part judged in full, at most. */
const mostTried = 2;
const mostTriedWhenSmall = 12;

const partsOfLot = (search: Search, lot: number): number =>
  search.current.choice.parts.filter((part) => part.lot === lot).length;

/** Amounts looked at in small cases, at most: of many portions every second, third … */
const mostAmounts = 12;

/** Portions worth splitting off: one piece, or half; in small cases any; in whole pieces. */
function amounts(portions: number, unit: number, small: boolean): number[] {
  const pieces = portions / unit;
  const whole = (share: number): number => Math.round(pieces * share) * unit;
  const shares = small
    ? Array.from({ length: mostAmounts }, (_, index) => (index + 1) / (mostAmounts + 1))
    : [1 / 2];
  const every = small && pieces - 1 <= mostAmounts;
  const all = every
    ? Array.from({ length: pieces - 1 }, (_, index) => (index + 1) * unit)
    : [unit, ...shares.map(whole), portions - unit];
  return [...new Set(small ? all : all.slice(0, 2))].filter((amount) => amount > 0 && amount < portions);
}

/** Something may be gained: it ripens (so may ripen in turn), or it lies, or would rather lie, where there is too little room. */
function worthSplitting(search: Search, index: number): boolean {
  const { choice, over } = search.current;
  const part = choice.parts[index]!;
  const lot = search.prepared.problem.lots[part.lot]!;
  if (part.portions < 2 * lot.splitUnit || partsOfLot(search, part.lot) >= mostParts) return false;
  if (isSmall(search.prepared.problem)) return true;
  const kept = search.ranked(index).some(({ cost, overflow }) => cost < -leastGain && overflow > 0);
  return stillRipens(lot) || kept || part.programme.stays.some((stay) => over[stay.place]! > 0);
}

interface Split {
  readonly option: Option;
  readonly amount: number;
  /** Estimated change of the objective [g]. */
  readonly change: number;
}

/** A split of a part with its estimated change; none where the two parts by themselves could not cost less than the one does now. */
function estimatedSplit(search: Search, index: number, option: Option, amount: number): Split[] {
  const { current, judge } = search;
  const part = current.choice.parts[index]!;
  const { lot } = part;
  const rest: Part = { lot, portions: part.portions - amount, programme: part.programme };
  const own: Part = { lot, portions: amount, programme: option.programme };
  const most = limitOfHope(search, index) - weights.split;
  const atRest =
    judge.price(current, rest, current.costs[index]!) +
    programmeEffort(rest.programme, search.prepared.problem.lots[rest.lot]);
  if (atRest + hopefulCost(search, current, own, option) >= most) return [];
  const { cost, overflow } = judge.estimate(
    current,
    [
      { part: index, like: index, to: rest },
      { part: "new", like: index, to: own },
    ],
    most,
  );
  return [{ option, amount, change: cost + overflow }];
}

const byChange = (a: Split, b: Split): number => a.change - b.change;

/** As much of a part as there is room for where it would rather lie: for each such place its best option. */
function splitsThatFit(search: Search, index: number): Split[] {
  const part = search.current.choice.parts[index]!;
  const { problem } = search.prepared;
  const { splitUnit } = problem.lots[part.lot]!;
  const places = new Set<number>();
  return search.ranked(index).flatMap(({ option, cost, overflow }) => {
    const last = option.programme.stays.length - 1;
    const { place } = option.programme.stays[last]!;
    if (cost >= -leastGain || overflow <= 0 || places.has(place)) return [];
    places.add(place);
    const litres = litresInStay(problem, partDoing(part, option.programme), last);
    const share = 1 - overflow / weights.overflowLitre / litres;
    const amount = Math.floor((part.portions * share) / splitUnit) * splitUnit;
    return amount > 0 && amount < part.portions ? estimatedSplit(search, index, option, amount) : [];
  });
}

function splitsOf(search: Search, index: number): Split[] {
  const part = search.current.choice.parts[index]!;
  const { splitUnit } = search.prepared.problem.lots[part.lot]!;
  const own = programmeKey(part.programme);
  const options = search.prepared.options(part.lot).filter((option) => option.key !== own);
  const few = (list: readonly Option[]): Split[] =>
    list.flatMap((option) =>
      amounts(part.portions, splitUnit, false).flatMap((amount) =>
        estimatedSplit(search, index, option, amount),
      ),
    );
  if (!isSmall(search.prepared.problem)) return few(options.slice(0, mostOptions));
  const promising = new Set(
    few(options)
      .sort(byChange)
      .map(({ option }) => option),
  );
  return [...promising]
    .slice(0, mostPromising)
    .flatMap((option) =>
      amounts(part.portions, splitUnit, true).flatMap((amount) =>
        estimatedSplit(search, index, option, amount),
      ),
    );
}

/** Takes the best of some splits that is better in full judgement. */
function split(search: Search, index: number, splits: readonly Split[], most: number): boolean {
  const { choice } = search.current;
  return [...splits]
    .sort(byChange)
    .slice(0, most)
    .some(({ option, amount }) => search.attempt(withSplit(choice, index, amount, option.programme)));
}

function splitPart(search: Search, index: number): boolean {
  const splits = splitsOf(search, index);
  if (isSmall(search.prepared.problem)) return split(search, index, splits, mostTriedWhenSmall);
  return split(search, index, splits.filter(worthwhile), mostTried);
}

const worthwhile = ({ change }: Split): boolean => change < -leastGain;

/** Lives [d] of parts where taking them apart was tried in vain. */
const inVain = new WeakMap<Part, number>();

/** Taking it apart was tried in vain, and its air has not changed its life since. */
function knownInVain({ current, prepared }: Search, index: number): boolean {
  const then = inVain.get(current.choice.parts[index]!);
  if (then === undefined || isSmall(prepared.problem)) return false;
  return Math.abs(current.outcomes[index]!.endDay - then) <= lifeThatMatters * then;
}

/** Takes a few portions of a lot apart where that helps. */
export function splitParts(search: Search): boolean {
  const { parts } = search.current.choice;
  for (const [index, part] of parts.entries()) {
    if (knownInVain(search, index)) continue;
    if (worthSplitting(search, index) && splitPart(search, index)) return true;
    inVain.set(part, search.current.outcomes[index]!.endDay);
  }
  return false;
}

/** Takes apart what would rather lie where there is too little room for all of it: as much as fits goes there. */
export const splitToFit = (search: Search): boolean =>
  search.current.choice.parts.some(
    (_, index) =>
      worthSplitting(search, index) &&
      split(search, index, splitsThatFit(search, index).filter(worthwhile), mostTried),
  );

/** The same parts of a lot with other amounts: some portions of the first go to the second. */
function shifted(search: Search, first: number, second: number, amount: number): boolean {
  const { choice } = search.current;
  const change = (index: number, more: number): Part => {
    const { lot, portions, programme } = choice.parts[index]!;
    return { lot, portions: portions + more, programme };
  };
  const [less, more] = [change(first, -amount), change(second, amount)];
  const { cost, overflow } = search.judge.estimate(search.current, [
    { part: first, like: first, to: less },
    { part: second, like: second, to: more },
  ]);
  // Estimates let each part have the daily limit to itself; in small cases there is time to look.
  if (cost + overflow >= -leastGain && !isSmall(search.prepared.problem)) return false;
  return search.attempt({ parts: choice.parts.with(first, less).with(second, more), vents: choice.vents });
}

/** Goes on moving portions from one part of a lot to another, twice as many each time, for as long as that helps. */
function shiftedOnwards(search: Search, first: number, second: number, amount: number): boolean {
  if (!shifted(search, first, second, amount)) return false;
  let more = 2 * amount;
  while (more < search.current.choice.parts[first]!.portions && shifted(search, first, second, more))
    more *= 2;
  return true;
}

/** Shares a lot that is in parts out anew where that helps. */
export function shiftPortions(search: Search): boolean {
  const { parts } = search.current.choice;
  const { problem } = search.prepared;
  const small = isSmall(problem);
  const shift = small ? shifted : shiftedOnwards;
  return parts.some((part, first) =>
    parts.some((other, second) => {
      if (second === first || other.lot !== part.lot) return false;
      const { splitUnit } = problem.lots[part.lot]!;
      return amounts(part.portions, splitUnit, small).some((amount) => shift(search, first, second, amount));
    }),
  );
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
