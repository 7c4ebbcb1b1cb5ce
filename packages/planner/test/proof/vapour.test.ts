import { litresPerHourInCubicMetrePerSecond, simulate } from "@keepwright/physics";
import { describe, expect, it } from "vitest";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem } from "../../src/problem/problem.js";
import type { Choice } from "../../src/problem/programme.js";
import { simulatedPart, simulationOf } from "../../src/problem/simulationOf.js";
import type { Column } from "../../src/proof/columns.js";
import { mostVapour } from "../../src/proof/given.js";
import { KitchenBoxes } from "../../src/proof/kitchenBoxes.js";
import { everyWay } from "../../src/search/options.js";
import { Draw, randomRequest } from "../cases/randomRequest.js";

const size = { lots: [3, 9], places: [3, 7], wraps: [1, 5], days: [3, 9] } as const;

/** Rounding of the simulation, as a share. */
const rounding = 1e-6;

/** Lots put anywhere, and the vapour [kg/m³] of every box and the room at its most of all whole days. */
function anyAir(seed: number) {
  const problem = bindProblem(randomRequest(seed, size));
  const draw = new Draw(seed + 0.75);
  const parts = problem.lots.map((lot) => ({
    lot: lot.index,
    portions: lot.portions,
    programme: draw.one(everyWay(problem, lot)),
  }));
  const choice: Choice = { parts, vents: problem.vents.map(() => draw.one(ventSettings)) };
  const kitchen = new KitchenBoxes(problem);
  const { tree } = kitchen.optimist;
  const { boxes } = simulate(simulationOf(problem, choice));
  const most = boxes.map(
    ({ relativeHumidity }, box) => Math.max(...relativeHumidity) * tree.saturationDensity[box]!,
  );
  return { problem, choice, kitchen, most: [...most, tree.roomDensity] };
}

describe("the vapour of a box at its most", () => {
  it.each(Array.from({ length: 120 }, (_, index) => 5000 + index))(
    "is never more than all that ever lies there or behind can keep up against the air beside it (seed %i)",
    (seed) => {
      const { problem, choice, kitchen, most } = anyAir(seed);
      const { tree } = kitchen.optimist;
      const { least } = kitchen.exchange(choice.vents.map((setting) => [setting]));
      const columns = choice.parts.map(({ lot, portions, programme }) => {
        const gives = kitchen.optimist.gives(simulatedPart(problem, problem.lots[lot]!, portions, programme));
        return { members: [{ way: { gives, apart: false } }] } as unknown as Column;
      });
      for (let box = 0; box < kitchen.size; box++) {
        const level = most[box]!;
        const given = columns.reduce((sum, column) => {
          const { supply, conductance } = mostVapour(column, kitchen.behind[box]!);
          return sum + Math.max(0, supply - conductance * level);
        }, 0);
        const passed = (least[box]! / litresPerHourInCubicMetrePerSecond) * level;
        const beside = (passed * most[kitchen.neighbour[box]!]!) / level;
        const coil = tree.coilExchange[box]! * Math.max(0, level - tree.coilDensity[box]!);
        expect(given + rounding * passed, `box ${box}`).toBeGreaterThanOrEqual(passed - beside + coil);
      }
    },
  );
});
