import { planned } from "../improve/planned.js";
import { type Basket, emptied, isEmpty, type Kept, rekept, requestFor, type Wished } from "./basket.js";
import { unitsOf } from "./boughtUnit.js";
import { candidates, cutOneByOne, leastAdded } from "./cuts.js";
import { buyingRule } from "./declared.js";
import { fateOfAll, worthOf } from "./fate.js";

const keptAnew = (wished: Wished, basket: Basket, from: Kept): Kept =>
  isEmpty(basket) ? emptied(from) : rekept(wished, basket, from);

const seedOf = ({ request }: Wished): number => request.seed ?? 1;

const fits = ({ evaluation }: Kept): boolean => evaluation.objective.overflow === 0;

/**
 * Cuts what is better cut, half of it at a time, and plans anew between: with some gone, the rest finds better places and earlier days, so what seemed
 * lost may not be.
 */
function cutAndReplanned(wished: Wished, all: Kept): Kept {
  let now = all;
  for (;;) {
    const steps = cutOneByOne(wished, now);
    if (steps.length === 1) return now;
    const half = steps[Math.ceil((steps.length - 1) / 2)]!;
    now = keptAnew(wished, half.basket, half);
  }
}

/** One unit more or less of a wish, planned anew; undefined where that is not better. */
function changed(wished: Wished, now: Kept, wish: number, by: 1 | -1): Kept | undefined {
  const units = now.basket[wish]! + by;
  const grams = Math.abs(gramsOf(wished, wish, units) - gramsOf(wished, wish, units - by));
  const then = keptAnew(wished, now.basket.with(wish, units), now);
  if (!fits(then) && (fits(now) || by > 0)) return undefined;
  const better = worthOf(fateOfAll(then)) - worthOf(fateOfAll(now));
  const least = leastAdded({ grams });
  return (by > 0 ? better >= least : better > -least) ? then : undefined;
}

const gramsOf = ({ wishes }: Wished, wish: number, units: number): number =>
  units === 0 ? 0 : unitsOf(wishes[wish]!, units).grams;

/** Wishes whose last unit is not surely eaten at its best as the plan stands. */
const questioned = (wished: Wished, now: Kept): Set<number> =>
  new Set(
    candidates(wished, now)
      .filter(({ fate, grams }) => fate.eaten < buyingRule.unquestionedShare * grams)
      .map(({ wish }) => wish),
  );

const shareOf = ({ wishes }: Wished, { basket }: Kept, wish: number): number =>
  basket[wish]! / wishes[wish]!.count;

/**
 * Goes on changing by one unit, as long as that is better: first the thing of which the least is bought, or the most where less is tried. A thing for which
 * it was in vain once is left alone.
 */
function triedOneWay(wished: Wished, start: Kept, by: 1 | -1, open: ReadonlySet<number>): Kept {
  let now = start;
  const rest = new Set(open);
  for (;;) {
    const doubtful = by > 0 ? undefined : questioned(wished, now);
    const able = [...rest].filter((wish) =>
      doubtful ? doubtful.has(wish) : now.basket[wish]! < wished.wishes[wish]!.count,
    );
    if (able.length === 0) return now;
    const wish = able.reduce((first, one) =>
      by * (shareOf(wished, now, one) - shareOf(wished, now, first)) < 0 ? one : first,
    );
    const better = changed(wished, now, wish, by);
    if (better === undefined) rest.delete(wish);
    else now = better;
  }
}

/** Tries one unit more of everything that was cut, then one unit less of everything that is not surely eaten, then more again of what else was cut. */
function eachTried(wished: Wished, start: Kept): Kept {
  const all = wished.wishes.map((_, wish) => wish);
  const more = triedOneWay(wished, start, 1, new Set(all));
  const less = triedOneWay(wished, more, -1, new Set(all));
  const kept = all.filter((wish) => less.basket[wish] === more.basket[wish]);
  return kept.length === all.length ? less : triedOneWay(wished, less, 1, new Set(kept));
}

/** Times a basket is planned from the start and settled again, at most. */
const mostRounds = 3;

const unitsIn = ({ basket }: Kept): number => basket.reduce((sum, units) => sum + units, 0);

/**
 * The basket worth buying, from a plan for everything wished: cut and settled; planned from the start, since that may find another plan, and settled in that
 * one; and so on while it changes.
 */
export function settled(wished: Wished, all: Kept): Basket {
  let now = eachTried(wished, cutAndReplanned(wished, all));
  for (let round = 0; round < mostRounds && !isEmpty(now.basket); round++) {
    const afresh = { ...planned(requestFor(wished, now.basket), seedOf(wished)), basket: now.basket };
    const next = cutAndReplanned(wished, afresh);
    if (unitsIn(next) === unitsIn(afresh)) return next.basket;
    now = eachTried(wished, next);
  }
  return now.basket;
}
