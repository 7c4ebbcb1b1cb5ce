import fc from "fast-check";
import highsLoader from "highs";
import { beforeAll, describe, expect, it } from "vitest";
import { eatingDays, type PartToEat } from "../../src/schedule/eatingDays.js";
import { pricedCost } from "../../src/schedule/pricedCost.js";

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});

const part = (days: number) =>
  fc.record({
    group: fc.integer({ min: 0, max: 3 }),
    portions: fc.integer({ min: 1, max: 9 }),
    costs: fc.array(
      fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 0, max: 90 }) }, fc.constant(Infinity)),
      {
        minLength: days,
        maxLength: days,
      },
    ),
    costLeft: fc.integer({ min: 0, max: 120 }),
  });

/** Table days with room, and parts in which all parts of a group agree on limit and place at the table. */
const problems = fc.integer({ min: 1, max: 6 }).chain((days) =>
  fc
    .record({
      places: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: days, maxLength: days }),
      limits: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 4, maxLength: 4 }),
      seasonings: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
      parts: fc.array(part(days), { minLength: 1, maxLength: 7 }),
    })
    .map(({ places, limits, seasonings, parts }) => ({
      places,
      parts: parts.map(
        (one): PartToEat => ({ ...one, dailyLimit: limits[one.group]!, takesPlace: !seasonings[one.group] }),
      ),
    })),
);

/** The same question as a linear programme in CPLEX LP format. */
function linearProgramme(parts: readonly PartToEat[], places: readonly number[]): string {
  const objective: string[] = [];
  const rows: string[] = [];
  const table = new Map<number, string[]>();
  const groups = new Map<string, { limit: number; terms: string[] }>();
  parts.forEach((one, index) => {
    const supply = [`left${index}`];
    objective.push(`${one.costLeft} left${index}`);
    places.forEach((_, day) => {
      const cost = one.costs[day]!;
      if (!Number.isFinite(cost)) return;
      const name = `x${index}d${day}`;
      supply.push(name);
      objective.push(`${cost} ${name}`);
      if (one.takesPlace) table.set(day, [...(table.get(day) ?? []), name]);
      const key = `${one.group}d${day}`;
      const group = groups.get(key) ?? { limit: one.dailyLimit, terms: [] };
      group.terms.push(name);
      groups.set(key, group);
    });
    rows.push(`${supply.join(" + ")} = ${one.portions}`);
  });
  for (const [day, terms] of table) rows.push(`${terms.join(" + ")} <= ${places[day]}`);
  for (const { limit, terms } of groups.values()) rows.push(`${terms.join(" + ")} <= ${limit}`);
  return `Minimize\n obj: ${objective.join(" + ")}\nSubject To\n${rows.map((row, i) => ` c${i}: ${row}`).join("\n")}\nEnd`;
}

/** Cheapest cost by trying every way of eating, portion by portion; for tiny cases only. */
function bruteForce(parts: readonly PartToEat[], places: readonly number[]): number {
  const portions = parts.flatMap((one, index) => Array.from({ length: one.portions }, () => index));
  const table = [...places];
  const groups = new Map<string, number>();
  const eat = (position: number): number => {
    const index = portions[position];
    if (index === undefined) return 0;
    const one = parts[index]!;
    let least = one.costLeft + eat(position + 1);
    places.forEach((_, day) => {
      const key = `${one.group}d${day}`;
      const used = groups.get(key) ?? 0;
      if (!Number.isFinite(one.costs[day]!) || used >= one.dailyLimit) return;
      if (one.takesPlace && table[day]! <= 0) return;
      groups.set(key, used + 1);
      if (one.takesPlace) table[day]! -= 1;
      least = Math.min(least, one.costs[day]! + eat(position + 1));
      groups.set(key, used);
      if (one.takesPlace) table[day]! += 1;
    });
    return least;
  };
  return eat(0);
}

describe("eating days", () => {
  it("cost what the linear-programming solver HiGHS finds", () => {
    fc.assert(
      fc.property(problems, ({ parts, places }) => {
        const solution = highs.solve(linearProgramme(parts, places));
        expect(solution.Status).toBe("Optimal");
        expect(eatingDays(parts, places).cost).toBeCloseTo(solution.ObjectiveValue, 6);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it("cost what trying every way finds", () => {
    const tiny = problems.filter(
      ({ parts, places }) => parts.reduce((sum, one) => sum + one.portions, 0) <= 6 && places.length <= 3,
    );
    fc.assert(
      fc.property(tiny, ({ parts, places }) => {
        expect(eatingDays(parts, places).cost).toBeCloseTo(bruteForce(parts, places), 9);
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  it("account for every portion, and keep the table, the daily limits and the forbidden days", () => {
    fc.assert(
      fc.property(problems, ({ parts, places }) => {
        const { eaten, left } = eatingDays(parts, places);
        parts.forEach((one, index) => {
          expect(eaten[index]!.reduce((sum, count) => sum + count, left[index]!)).toBe(one.portions);
          eaten[index]!.forEach((count, day) => {
            expect(Number.isInteger(count) && count >= 0).toBe(true);
            if (!Number.isFinite(one.costs[day]!)) expect(count).toBe(0);
          });
        });
        places.forEach((room, day) => {
          const atTable = parts.reduce(
            (sum, one, index) => sum + (one.takesPlace ? eaten[index]![day]! : 0),
            0,
          );
          expect(atTable).toBeLessThanOrEqual(room);
        });
        for (const one of parts) {
          places.forEach((_, day) => {
            const together = parts.reduce(
              (sum, other, index) => sum + (other.group === one.group ? eaten[index]![day]! : 0),
              0,
            );
            expect(together).toBeLessThanOrEqual(one.dailyLimit);
          });
        }
      }),
      { numRuns: 200, seed: 13 },
    );
  });

  it("price a day at what one more place at the table would at most save", () => {
    fc.assert(
      fc.property(problems, ({ parts, places }) => {
        const now = eatingDays(parts, places);
        places.forEach((room, day) => {
          const more = eatingDays(parts, places.with(day, room + 1));
          expect(now.cost - more.cost).toBeLessThanOrEqual(now.dayPrices[day]! + 1e-9);
          if (room > 0) {
            const fewer = eatingDays(parts, places.with(day, room - 1));
            expect(fewer.cost - now.cost).toBeGreaterThanOrEqual(now.dayPrices[day]! - 1e-9);
          }
        });
      }),
      { numRuns: 100, seed: 14 },
    );
  });

  it("bound the cost from below by parts priced one by one", () => {
    fc.assert(
      fc.property(problems, ({ parts, places }) => {
        const { cost, dayPrices } = eatingDays(parts, places);
        const free = places.map(() => 0);
        const priced = parts.reduce(
          (sum, one) =>
            sum +
            pricedCost(
              one.portions,
              one.costs,
              one.costLeft,
              one.takesPlace ? dayPrices : free,
              one.dailyLimit,
            ),
          0,
        );
        const table = places.reduce((sum, room, day) => sum + room * dayPrices[day]!, 0);
        expect(priced - table).toBeLessThanOrEqual(cost + 1e-9);
      }),
      { numRuns: 200, seed: 15 },
    );
  });
});
