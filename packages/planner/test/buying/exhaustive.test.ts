import { describe, expect, it } from "vitest";
import type { Basket, Wished } from "../../src/buying/basket.js";
import { buyable } from "../../src/buying/buyable.js";
import { wishedFrom } from "../../src/buying/checkWished.js";
import { buyingRule } from "../../src/buying/declared.js";
import { randomRequest } from "../cases/randomRequest.js";
import { everyBasket } from "./everyBasket.js";

const size = { lots: [2, 3], places: [2, 3], wraps: [0, 1], days: [3, 8], ripening: 1 } as const;
const mostBaskets = 80;

/** A small random list, twice as much as a haul would be, so that some of it is too much. */
function asked(seed: number) {
  const { haul, ...rest } = randomRequest(seed, size);
  const { lots } = haul as { lots: { grams: number; pieces?: number }[] };
  const wished = {
    lots: lots.map((lot) => ({
      ...lot,
      grams: 2 * lot.grams,
      ...(lot.pieces !== undefined && { pieces: 2 * lot.pieces }),
    })),
  };
  return { ...rest, wished, stepGrams: 400, seed: 1 };
}

const baskets = ({ wishes }: Wished): number =>
  wishes.reduce((product, { count }) => product * (count + 1), 1);

const basketOf = ({ wishes }: Wished, grams: readonly number[]): Basket =>
  wishes.map(({ unit, count, lot }, at) =>
    grams[at]! >= lot.grams - 1e-6 ? count : Math.round(grams[at]! / unit.grams),
  );

/** How far below the best of all baskets what `buyable` finds is, in grams, and that best. */
function compared(seed: number): { short: number; best: number } {
  const request = asked(seed);
  const wished = wishedFrom(request);
  const all = everyBasket(wished);
  const best = Math.max(...all.map(({ worth }) => worth));
  const bought = basketOf(
    wished,
    buyable(request).things.map(({ buy }) => buy.grams),
  );
  const mine = all.find(({ basket }) => basket.every((units, at) => units === bought[at]))!;
  return { short: best - mine.worth, best };
}

const seeds = Array.from({ length: 60 }, (_, index) => index + 1)
  .filter((seed) => baskets(wishedFrom(asked(seed))) <= mostBaskets)
  .slice(0, 8);

describe("small lists, beside every basket there is", () => {
  // A local best: measured, 10 of the first 12 were the best of all, one 3 g short, one 14 %.
  it("are worth what the best basket is worth in most cases, and never much less", () => {
    const found = seeds.map(compared);
    expect(found).toHaveLength(8);
    expect(
      found.filter(({ short, best }) => short <= buyingRule.leastShareAdded * best).length,
    ).toBeGreaterThan(5);
    for (const { short, best } of found) expect(short).toBeLessThan(0.2 * best);
  }, 300_000);
});
