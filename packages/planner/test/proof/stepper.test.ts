import { type LotOutcome, simulate, stepperError } from "@keepwright/physics";
import { expect, it } from "vitest";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem } from "../../src/problem/problem.js";
import { simulationOf } from "../../src/problem/simulationOf.js";
import { everyWay } from "../../src/search/options.js";
import { Draw, randomRequest } from "../cases/randomRequest.js";

const size = { lots: [3, 9], places: [3, 7], wraps: [1, 5], days: [3, 9] } as const;

/** Hauls put anyhow, other ones than those the allowance was measured on. */
const seeds = Array.from({ length: 150 }, (_, index) => 30_000 + index);

/** What becomes of lots that still ripen, with the usual step and with one a dozen times as fine. */
function ripeningLots(seed: number): { usual: LotOutcome; fine: LotOutcome }[] {
  const problem = bindProblem(randomRequest(seed, size));
  const draw = new Draw(seed + 0.5);
  const simulation = simulationOf(problem, {
    parts: problem.lots.map((lot) => ({
      lot: lot.index,
      portions: lot.portions,
      programme: draw.one(everyWay(problem, lot)),
    })),
    vents: problem.vents.map(() => draw.one(ventSettings)),
  });
  const usual = simulate(simulation).lots;
  const fine = simulate({ ...simulation, stepDays: 0.02 }).lots;
  return problem.lots.flatMap(({ produce, ripeness, index }) =>
    produce.ripening && ripeness < 1 ? [{ usual: usual[index]!, fine: fine[index]! }] : [],
  );
}

it("the stepper is off by no more than the bound allows it where fruit ripens", () => {
  const lots = seeds.flatMap(ripeningLots);
  expect(lots.length).toBeGreaterThan(100);
  for (const { usual, fine } of lots) {
    if (Number.isFinite(usual.ripeDay) && Number.isFinite(fine.ripeDay)) {
      expect(Math.abs(usual.ripeDay - fine.ripeDay)).toBeLessThanOrEqual(
        stepperError.ripening * fine.ripeDay,
      );
    }
    expect(usual.endDay).toBeLessThanOrEqual(fine.endDay * (1 + stepperError.end));
  }
}, 120_000);
