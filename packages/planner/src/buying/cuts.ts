import type { Part } from "../problem/programme.js";
import { evaluatePrepared } from "../search/evaluate.js";
import { type Kept, lotOfWish, type Wished } from "./basket.js";
import { unitsOf } from "./boughtUnit.js";
import { buyingRule } from "./declared.js";
import { type Fate, fatesOfLot, worstOf, worthOf } from "./fate.js";

/** A unit that may be cut: of which wish, and what is expected of it if it stays. */
export interface Candidate {
  readonly wish: number;
  readonly grams: number;
  /** Room it takes bare [L]. */
  readonly litres: number;
  readonly fate: Fate;
}

/** The last unit of each wish in the basket, as the plan stands: its worst portions. */
export function candidates(wished: Wished, kept: Kept): Candidate[] {
  return kept.basket.flatMap((units, wish) => {
    const lot = lotOfWish(wished, kept, wish);
    if (units === 0 || lot < 0) return [];
    const { gramsPerPortion, litres, grams: all } = kept.prepared.problem.lots[lot]!;
    const one = wished.wishes[wish]!;
    const grams = unitsOf(one, units).grams - (units > 1 ? unitsOf(one, units - 1).grams : 0);
    const fate = worstOf(kept, lot, grams / gramsPerPortion);
    return [{ wish, grams, litres: (litres * grams) / all, fate }];
  });
}

/** A unit adds something when it is worth more than the planner's unevenness. */
export const leastAdded = ({ grams }: { readonly grams: number }): number =>
  buyingRule.leastShareAdded * grams;

const lowest = <Item>(items: readonly Item[], cost: (item: Item) => number): Item | undefined =>
  items.reduce<Item | undefined>(
    (least, one) => (least === undefined || cost(one) < cost(least) ? one : least),
    undefined,
  );

/** Lies, at some time, in a place that has not room for all. */
function liesTooFull({ prepared, evaluation }: Kept, wish: string): boolean {
  return evaluation.choice.parts.some(
    ({ lot, programme }) =>
      prepared.problem.lots[lot]!.lot.id === wish &&
      programme.stays.some(({ place }) => evaluation.over[place]! > 0),
  );
}

/** The parts with fewer portions of one lot, whole pieces at a time, the portions worth least first. */
function withoutPortions(kept: Kept, lot: number, portions: number): Part[] {
  const { splitUnit } = kept.prepared.problem.lots[lot]!;
  const { parts } = kept.evaluation.choice;
  const taken = new Map<number, number>();
  let left = Math.round(portions / splitUnit) * splitUnit;
  for (const fate of fatesOfLot(kept, lot)) {
    const already = taken.get(fate.part) ?? 0;
    const there = parts[fate.part]!.portions - already;
    const some = Math.min(left, there, Math.ceil(fate.portions / splitUnit) * splitUnit);
    taken.set(fate.part, already + some);
    left -= some;
  }
  return parts.flatMap((part, index) => {
    const now = part.portions - (taken.get(index) ?? 0);
    return now > 0 ? [{ ...part, portions: now }] : [];
  });
}

/** Cuts a unit in the plan as it stands: everything else lies where it lies, and is followed and eaten anew. */
function cutAsItStands(wished: Wished, kept: Kept, { wish }: Candidate): Kept {
  const lot = lotOfWish(wished, kept, wish);
  const units = kept.basket[wish]! - 1;
  const { portions, grams } = kept.prepared.problem.lots[lot]!;
  const wanted = units === 0 ? 0 : (portions * unitsOf(wished.wishes[wish]!, units).grams) / grams;
  const there = kept.evaluation.choice.parts
    .filter((part) => part.lot === lot)
    .reduce((sum, part) => sum + part.portions, 0);
  const parts = withoutPortions(kept, lot, Math.max(0, there - wanted));
  return {
    basket: kept.basket.with(wish, units),
    prepared: kept.prepared,
    evaluation: evaluatePrepared(kept.prepared, { ...kept.evaluation.choice, parts }),
  };
}

/** Share of its wish that is still in the basket once the unit is cut. */
const shareAfter = ({ wishes }: Wished, { basket }: Kept, { wish }: Candidate): number =>
  (basket[wish]! - 1) / wishes[wish]!.count;

/**
 * The basket without the unit that goes first: where there is too little room, what gives up a litre most cheaply; else, among units that add nothing,
 * the one that is worth least to its mass and of whose thing most stays. Undefined where every unit adds something.
 */
function cutNext(wished: Wished, kept: Kept): Kept | undefined {
  const all = candidates(wished, kept);
  if (kept.evaluation.objective.overflow > 0) {
    const inTheWay = all.filter(({ wish }) => liesTooFull(kept, wished.wishes[wish]!.lot.id));
    const bulky = lowest(inTheWay, ({ fate, litres }) => worthOf(fate) / litres);
    return bulky && cutAsItStands(wished, kept, bulky);
  }
  const chosen = lowest(
    all.filter((one) => worthOf(one.fate) < leastAdded(one)),
    (one) => worthOf(one.fate) / one.grams - shareAfter(wished, kept, one),
  );
  return chosen && cutAsItStands(wished, kept, chosen);
}

/** Baskets one unit smaller each, as long as the plan as it stands has a unit that is better cut. The first is the basket itself. */
export function cutOneByOne(wished: Wished, kept: Kept): Kept[] {
  const steps = [kept];
  for (;;) {
    const next = cutNext(wished, steps.at(-1)!);
    if (next === undefined) return steps;
    steps.push(next);
  }
}
