import { expect, it } from "vitest";
import { loadSolver } from "../../src/proof/index.js";
import { LinearModel } from "../../src/proof/linearModel.js";
import type { Placed } from "../../src/proof/placed.js";
import { type Meal, solvePriced } from "../../src/proof/pricing.js";
import { Draw } from "../cases/randomRequest.js";

const lots = 4;
const days = 5;
const waysOfEach = 200;

/** A linear programme as the relaxation's: some ways for every lot, by day, in rows they share. */
function anyProgramme(seed: number): { model: LinearModel; all: Placed[] } {
  const draw = new Draw(seed);
  const model = new LinearModel();
  const table = Array.from({ length: days }, () => model.row(Number.NEGATIVE_INFINITY, 3));
  const litres = Array.from({ length: 3 }, () =>
    model.row(Number.NEGATIVE_INFINITY, 6, [[model.column(1000), -1]]),
  );
  const onDay = table.map((row) => [row]);
  const all = Array.from({ length: lots }, () => {
    const row = model.row(5, 5, [[model.column(1e4), 1]]);
    return Array.from({ length: waysOfEach }, (): Placed => {
      const costs = Float64Array.from({ length: days + 1 }, () =>
        draw.one([1, 2, 3.5, 5, 8, 13, Number.POSITIVE_INFINITY]),
      );
      costs[days] = 20;
      const rows = [row, draw.one(litres)];
      const values = [1, draw.one([0.5, 1, 1.7])];
      // No dearer than it costs: what is not asked for is never worked out.
      const least = costs.map((cost) => cost * draw.one([0.2, 0.5, 1]));
      return {
        column: {} as Placed["column"],
        options: new Map(),
        air: 0,
        least,
        costs: () => costs,
        rows,
        values,
        onDay,
      };
    });
  }).flat();
  return { model, all };
}

const mealsOf = (all: readonly Placed[]): Meal[] =>
  all.flatMap((placed) =>
    Array.from(placed.costs()).flatMap((cost, day) => (Number.isFinite(cost) ? [{ placed, day }] : [])),
  );

it("finds the optimum of all meals though it is told of few", async () => {
  const highs = await loadSolver();
  const solver = highs.createModel();
  solver.options.set("output_flag", false);
  for (let seed = 1; seed <= 10; seed++) {
    const { model, all } = anyProgramme(seed);
    const listed = solvePriced(highs, solver, model, all, mealsOf(all));
    const priced = solvePriced(highs, solver, model, all, []);
    expect(priced?.value, `seed ${seed}`).toBeCloseTo(listed?.value ?? Number.NaN, 6);
    expect(priced?.meals.length).toBeLessThan(listed?.meals.length ?? 0);
  }
  solver.dispose();
});
