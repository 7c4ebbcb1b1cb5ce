import { describe, expect, it } from "vitest";
import type { Kitchen } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { bindProblem } from "../../src/problem/problem.js";
import { bestOfAll, everyDivision, everyProgramme } from "../cases/exhaustive.js";
import { lot, request } from "../support.js";
import { begin, faultsOf, later } from "./support.js";

function kitchen(litres: Record<string, number>, wraps: Kitchen["wraps"]): Kitchen {
  const { ordinary } = ordinaryKitchens;
  const places = ordinary.places
    .filter(({ id }) => id in litres)
    .map((place) => ({ ...place, litres: litres[place.id]! }));
  return { ...ordinary, places, wraps };
}

describe("a small plan carried on", () => {
  it.each<[string, object[], Kitchen, number, object]>([
    [
      "with a new lot that wants the drawer",
      [lot("spinach", 280), lot("broccoli", 400)],
      kitchen({ shelf: 20, "left-drawer": 4.5 }, ["perforated bag"]),
      1,
      { lots: [{ lot: "spinach", eaten: "none" }], cameHome: [{ commodity: "romaine", grams: 350 }] },
    ],
    [
      "with an avocado seen ripe, and a banana come home",
      [lot("avocado", 204, { pieces: 2, ripeness: "unripe" }), lot("apple", 400)],
      kitchen({ shelf: 20, counter: 20 }, ["paper bag"]),
      2,
      {
        lots: [{ lot: "avocado", eaten: "none", ripeness: "ripe" }],
        cameHome: [{ commodity: "banana", grams: 300 }],
      },
    ],
    [
      "with spinach left on the counter",
      [lot("spinach", 280), lot("apple", 600)],
      kitchen({ shelf: 20, counter: 20 }, ["perforated bag"]),
      1,
      { lots: [{ lot: "spinach", eaten: "none", place: "counter" }] },
    ],
  ])("%s is the best there is", (_, lots, small, days, happened) => {
    const begun = begin(request(lots, small, { people: 1, portionsPerPersonPerDay: 2, days: 6 }));
    const after = later(begun, days, happened);
    expect(faultsOf(begun, after)).toEqual([]);
    const problem = bindProblem({
      ...begun.request,
      haul: after.haul,
      household: { ...after.plan.household, days: after.plan.days },
      from: after.plan.from,
    });
    const ways = problem.lots.map(({ index }) =>
      everyDivision(problem, index, everyProgramme(problem, index)).filter(({ length }) => length === 1),
    );
    const best = bestOfAll(problem, ways);
    expect(after.plan.objective.total).toBeLessThanOrEqual(best.total + 1e-6);
  });
});
