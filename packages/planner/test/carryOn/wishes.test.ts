import { catalogue } from "@keepwright/catalogue";
import { expect, it } from "vitest";
import { carryOn } from "../../src/carryOn/index.js";
import { checkPlan } from "../../src/check/index.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { planHaul } from "../../src/search/planHaul.js";

const { ordinary } = ordinaryKitchens;
const kitchen = {
  ...ordinary,
  places: ordinary.places.filter(({ id }) => ["shelf", "counter"].includes(id)),
};

it("a day wanted is the same day in a plan that is carried on, and is forgotten once it has gone by", () => {
  const lot = { commodity: "pear", grams: 540, pieces: 3, ripeness: "turning" };
  const request = {
    haul: {
      lots: [
        { ...lot, id: "sunday", wanted: { when: "on", day: "sunday" } },
        { ...lot, id: "soon", wanted: { when: "after", day: 1 } },
      ],
    },
    kitchen,
    household: { people: 1, portionsPerPersonPerDay: 2, daysAway: [], days: 9 },
    from: "2026-06-15",
    catalogue: catalogue(),
  };
  const plan = planHaul(request);
  const on = "2026-06-17";
  const carried = carryOn({ plan, haul: request.haul, kitchen, on, catalogue: catalogue() });
  const wishes = Object.fromEntries(carried.plan.lots.map(({ lot: id, wish }) => [id, wish]));
  expect(wishes.sunday).toMatchObject({ when: "on", date: "2026-06-21", day: 4 });
  expect(wishes.soon).toBeUndefined();
  const household = { ...request.household, days: 7 };
  const { haul } = carried;
  expect(checkPlan({ plan: carried.plan, haul, kitchen, household, catalogue: catalogue() })).toEqual([]);
});
