import { describe, expect, it } from "vitest";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem } from "../../src/problem/problem.js";
import type { Choice } from "../../src/problem/programme.js";
import { simulatedPart } from "../../src/problem/simulationOf.js";
import { KitchenBoxes } from "../../src/proof/kitchenBoxes.js";
import { RootAir } from "../../src/proof/rootAir.js";
import { everyWayOf } from "../../src/proof/ways.js";
import { firstReadyDay } from "../../src/rules/readyToEat.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { everyWay } from "../../src/search/options.js";
import { Draw, randomRequest } from "../cases/randomRequest.js";

const size = { lots: [3, 9], places: [3, 7], wraps: [1, 5], days: [3, 9] } as const;

/** Rounding: sums in another order. */
const rounding = 1e-9;

/** A request, with every lot put anywhere it may lie in any way, and every vent turned anyhow. */
function anyChoice(seed: number) {
  const problem = bindProblem(randomRequest(seed, size));
  const draw = new Draw(seed + 0.5);
  const choice: Choice = {
    parts: problem.lots.map((lot) => ({
      lot: lot.index,
      portions: lot.portions,
      programme: draw.one(everyWay(problem, lot)),
    })),
    vents: problem.vents.map(() => draw.one(ventSettings)),
  };
  const kitchen = new KitchenBoxes(problem);
  const air = new RootAir(
    kitchen,
    problem.lots.map((lot) => everyWayOf(problem, lot, kitchen)),
  );
  return { problem, choice, kitchen, air, evaluation: evaluate(problem, choice) };
}

const seeds = Array.from({ length: 300 }, (_, index) => 1000 + index);

describe("the best that can become of a lot in air known only within bounds", () => {
  it.each(seeds)(
    "is no worse than what the simulation makes of it, wherever everything lies (seed %i)",
    (seed) => {
      const { problem, choice, kitchen, air, evaluation } = anyChoice(seed);
      const { days } = problem.household;
      choice.parts.forEach(({ portions, programme, lot: index }, part) => {
        const lot = problem.lots[index]!;
        const outcome = evaluation.outcomes[part]!;
        const ready = firstReadyDay(outcome.ripeDay);
        const ways = kitchen.optimist.ways(
          simulatedPart(problem, lot, portions, programme),
          air.ranges(air.root(), index),
          days,
        );
        const what = `${lot.commodity.id} ${JSON.stringify(programme)} ready ${outcome.ripeDay}`;
        const way = ways.find(
          ({ readyDay }) => readyDay === (ready < days ? ready : Number.POSITIVE_INFINITY),
        );
        expect(way, what).toBeDefined();
        expect(way!.endDay * (1 + rounding), what).toBeGreaterThanOrEqual(Math.min(outcome.endDay, 400));
        outcome.quality.forEach((quality, day) => {
          expect(way!.quality[day]! + rounding, `${what} day ${day}`).toBeGreaterThanOrEqual(quality);
        });
      });
    },
  );
});
