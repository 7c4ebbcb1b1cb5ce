import { type Part, programmeKey } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { programmeEffort } from "../rules/effort.js";
import { weights } from "../rules/weights.js";
import type { Way } from "./assignment.js";
import { lastPlace } from "./goings.js";
import type { Option } from "./options.js";
import { hopefulCost } from "./ranked.js";
import type { Search } from "./search.js";

/** Options of a whole lot estimated for each place, at most. Declared, no source. */
const mostOptions = 3;

/** A way for a lot to lie: its estimated change of the objective, room apart [g], and the litres it takes, every stay taken to last. */
export interface LotWay extends Way {
  readonly parts: readonly Part[];
}

/** A lot all in one place at last. */
interface WholeWay extends LotWay {
  readonly option: Option;
}

/** Litres of some parts by place, every stay taken to last. */
export function litresOfParts({ prepared: { problem } }: Search, parts: readonly Part[]): number[] {
  const litres = problem.places.map(() => 0);
  for (const part of parts) {
    const own = new Map<number, number>();
    part.programme.stays.forEach(({ place }, stay) => {
      own.set(place, Math.max(own.get(place) ?? 0, litresInStay(problem, part, stay)));
    });
    for (const [place, taken] of own) litres[place]! += taken;
  }
  return litres;
}

/** Where parts lie, one after another, whatever their wraps. */
function nameOf(parts: readonly Part[]): string {
  const ways = parts.map(({ programme }) => programme.stays.map(({ place }) => place).join(">"));
  return [...new Set(ways)].sort().join("+");
}

/** For each last place the option hoped best, and the next that take less room each. */
function fewOptions(search: Search, whole: Part): Option[] {
  const { prepared, current } = search;
  const byPlace = new Map<number, { readonly option: Option; readonly litres: number }[]>();
  const hopeful = prepared
    .options(whole.lot)
    .map((option) => ({ option, hope: hopefulCost(search, current, whole, option) }))
    .sort((a, b) => a.hope - b.hope);
  for (const { option } of hopeful) {
    const place = lastPlace(option);
    const { lot, portions } = whole;
    const own: Part = { lot, portions, programme: option.programme };
    const litres = litresInStay(prepared.problem, own, option.programme.stays.length - 1);
    const known = byPlace.get(place) ?? [];
    byPlace.set(place, known);
    if (known.length < mostOptions && known.every((one) => litres < one.litres))
      known.push({ option, litres });
  }
  return [...byPlace.values()].flat().map(({ option }) => option);
}

/** Ways for a lot to lie all together: its parts are gathered, estimated as one change each. */
function wholeWays(search: Search, lot: number): WholeWay[] {
  const { current, prepared, judge } = search;
  const mine = current.choice.parts.flatMap((part, index) => (part.lot === lot ? [index] : []));
  const first = mine[0]!;
  const { portions } = prepared.problem.lots[lot]!;
  const whole: Part = { lot, portions, programme: current.choice.parts[first]!.programme };
  const own = mine.length === 1 ? programmeKey(whole.programme) : undefined;
  return fewOptions(search, whole)
    .filter(({ key }) => key !== own)
    .map((option) => {
      const to: Part = { lot, portions, programme: option.programme };
      const changes = mine.map((part) => (part === first ? { part, like: part, to } : { part, like: part }));
      const { cost } = judge.estimate(current, changes);
      return { option, cost, parts: [to], litres: litresOfParts(search, [to]), name: nameOf([to]) };
    });
}

/** Half of a lot in one way and half in another, which costs the mean of both but for the further trouble. */
function halfAndHalf(search: Search, lot: number, one: WholeWay, other: WholeWay): LotWay[] {
  const bound = search.prepared.problem.lots[lot]!;
  const { portions, splitUnit } = bound;
  const amount = Math.round(portions / splitUnit / 2) * splitUnit;
  if (lastPlace(one.option) === lastPlace(other.option) || amount <= 0 || amount >= portions) return [];
  const effort = ({ option }: WholeWay): number => programmeEffort(option.programme, bound);
  const parts: Part[] = [
    { lot, portions: amount, programme: one.option.programme },
    { lot, portions: portions - amount, programme: other.option.programme },
  ];
  const share = amount / portions;
  const cost = share * (one.cost + effort(other)) + (1 - share) * (other.cost + effort(one)) + weights.split;
  return [{ cost, parts, litres: litresOfParts(search, parts), name: nameOf(parts) }];
}

/** Ways for a lot to lie from where the search stands: as it does, all in one place, or half in one and half in another. */
export function waysOfLot(search: Search, lot: number): LotWay[] {
  const mine = search.current.choice.parts.filter((part) => part.lot === lot);
  const asItIs: LotWay = { cost: 0, parts: mine, litres: litresOfParts(search, mine), name: nameOf(mine) };
  const whole = wholeWays(search, lot);
  const halves = whole.flatMap((one, at) =>
    whole.slice(at + 1).flatMap((other) => halfAndHalf(search, lot, one, other)),
  );
  return [asItIs, ...whole, ...halves];
}
