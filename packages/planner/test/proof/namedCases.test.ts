import { catalogue } from "@keepwright/catalogue";
import { expect, it } from "vitest";
import { type Kitchen, kitchenSchema } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { bindProblem } from "../../src/problem/problem.js";
import { boundOf } from "../../src/proof/boundOf.js";
import { loadSolver } from "../../src/proof/index.js";
import { planProblem } from "../../src/search/planHaul.js";
import { prepare } from "../../src/search/prepare.js";

const { ordinary } = ordinaryKitchens;

/** Plan and bound of invented lots in a kitchen. */
async function planAndBound(lots: readonly object[], kitchen: Partial<Kitchen> = {}) {
  const problem = bindProblem({
    haul: { lots: lots.map((lot, index) => ({ id: `lot-${index}`, ...lot })) },
    kitchen: kitchenSchema.parse({ ...ordinary, ...kitchen }),
    household: { people: 1, portionsPerPersonPerDay: 3.5, daysAway: [], days: 3 },
    from: "2026-02-26",
    seed: 1,
    catalogue: catalogue(),
  } as Parameters<typeof bindProblem>[0]);
  const known = { mostRelaxations: 3, value: Number.POSITIVE_INFINITY };
  const { bound } = boundOf(await loadSolver(), prepare(problem), known);
  return { bound, value: planProblem(problem).objective.total };
}

const turnips = { commodity: "turnip", grams: 526 };
const bananas = { commodity: "banana", grams: 900, ripeness: "unripe" };

it("holds where the main air is so much colder than a shelf that what lies there makes it condense", async () => {
  const refrigerators = ordinary.refrigerators.map((one) => ({
    ...one,
    temperature: -1,
    coil: { temperature: -8, airChangesPerHour: 0 },
  }));
  const { bound, value } = await planAndBound([turnips], { refrigerators });
  expect(bound).toBeLessThanOrEqual(value * (1 + 1e-9));
});

it("holds for what is past its best as it comes home, which a plan eats at once", async () => {
  const overRipe = { commodity: "sweetsop", grams: 597, ripeness: "very ripe", extraDays: 12 };
  const { bound, value } = await planAndBound([overRipe]);
  expect(bound).toBeLessThanOrEqual(value * (1 + 1e-9));
});

it.each([0, 0.02, 50])("holds in a room of %d µL/L of ethylene", async (ethylene) => {
  const room = { ...ordinary.room, ethylene };
  const { bound, value } = await planAndBound([turnips, bananas], { room });
  expect(bound).toBeGreaterThan(0);
  expect(bound).toBeLessThanOrEqual(value * (1 + 1e-9));
});

it("holds for what arrives as good as ripe and moves on at once", async () => {
  const { bound, value } = await planAndBound([{ ...bananas, ripeness: 0.99995 }, turnips]);
  expect(bound).toBeLessThanOrEqual(value * (1 + 1e-9));
});
