import { describe, expect, it } from "vitest";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem } from "../../src/problem/problem.js";
import { programmeKey } from "../../src/problem/programme.js";
import { KitchenBoxes } from "../../src/proof/kitchenBoxes.js";
import { airOf } from "../../src/proof/lotAir.js";
import { RootAir } from "../../src/proof/rootAir.js";
import { everyWayOf } from "../../src/proof/ways.js";
import { firstReadyDay } from "../../src/rules/readyToEat.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { Draw, randomRequest } from "../cases/randomRequest.js";
import { anyParts } from "./oddRequest.js";

const size = { lots: [2, 6], places: [3, 7], wraps: [2, 5], days: [3, 9] } as const;
const seeds = Array.from({ length: 200 }, (_, index) => 7000 + index);
const rounding = 1e-9;

describe("the best that can become of a part of a lot", () => {
  it.each(seeds)("is no worse than what the simulation makes of it (seed %i)", (seed) => {
    const problem = bindProblem(randomRequest(seed, size));
    const draw = new Draw(seed + 0.5);
    const parts = problem.lots.flatMap((lot) => anyParts(draw, problem, lot));
    const vents = problem.vents.map(() => draw.one(ventSettings));
    const { outcomes } = evaluate(problem, { parts, vents });
    const { days } = problem.household;
    const kitchen = new KitchenBoxes(problem);
    const ways = problem.lots.map((lot) => everyWayOf(problem, lot, kitchen));
    const air = new RootAir(kitchen, ways);
    parts.forEach(({ lot, portions, programme }, part) => {
      const apart = portions < problem.lots[lot]!.portions;
      const key = programmeKey(programme);
      const way = ways[lot]!.find((one) => one.apart === apart && programmeKey(one.programme) === key)!;
      const outcome = outcomes[part]!;
      const ready = firstReadyDay(outcome.ripeDay);
      const course = kitchen.optimist
        .ways(way.whole, airOf(way, air.ranges(air.root(), lot)), days, way.leastKilograms)
        .find(({ readyDay }) => readyDay === (ready < days ? ready : Number.POSITIVE_INFINITY));
      const what = `${way.lot.commodity.id} ${key} ${portions} ready ${outcome.ripeDay}`;
      expect(course, what).toBeDefined();
      expect(course!.endDay * (1 + rounding), what).toBeGreaterThanOrEqual(Math.min(outcome.endDay, 400));
      outcome.quality.forEach((quality, day) => {
        expect(course!.quality[day]! + rounding, `${what} day ${day}`).toBeGreaterThanOrEqual(quality);
      });
    });
  });
});
