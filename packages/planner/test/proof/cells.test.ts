import { describe, expect, it } from "vitest";
import { type VentSetting, ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem } from "../../src/problem/problem.js";
import { Cells, type Range } from "../../src/proof/cells.js";
import { KitchenBoxes } from "../../src/proof/kitchenBoxes.js";
import { RootAir } from "../../src/proof/rootAir.js";
import { stretchesOf } from "../../src/proof/stretch.js";
import { everyWayOf } from "../../src/proof/ways.js";
import { Draw, randomRequest } from "../cases/randomRequest.js";

const size = { lots: [3, 8], places: [3, 7], wraps: [1, 3], days: [1, 9] } as const;
const rounds = 6;

const holds = ({ least, most }: Range, value: number): boolean => value >= least && value <= most;

/** How the vent of a box may be set; undefined alone where it has none to set. */
const settingsOf = (kitchen: KitchenBoxes, box: number): readonly (VentSetting | undefined)[] =>
  kitchen.ventOf(box) === undefined ? [undefined] : ventSettings;

/** Cells halved anyhow, some rounds long. */
function halvedAnyhow(seed: number) {
  const problem = bindProblem(randomRequest(seed, size));
  const kitchen = new KitchenBoxes(problem);
  const air = new RootAir(
    kitchen,
    problem.lots.map((lot) => everyWayOf(problem, lot, kitchen)),
  );
  const most = air.mostEthylene(kitchen.exchange(kitchen.everyVent()));
  const room = problem.kitchen.room.ethylene;
  const stretches = stretchesOf(kitchen);
  const cells = new Cells(kitchen, air, stretches, most, room);
  const draw = new Draw(seed + 0.25);
  for (let round = 0; round < rounds; round++) {
    const shares = (options: readonly unknown[]): number[] => options.map(() => draw.one([0, 1]));
    cells.refine(cells.ethylene.map(shares), cells.density.map(shares));
  }
  return { cells, stretches, most, room, air, kitchen, draw };
}

describe("the cells that the air is told apart into", () => {
  it.each(Array.from({ length: 40 }, (_, index) => 7000 + index))(
    "leave nothing out that may be, however they are halved (seed %i)",
    (seed) => {
      const { cells, stretches, most, room, air, kitchen, draw } = halvedAnyhow(seed);
      const share = (): number => draw.one([0, 0.001, 0.01, 0.03, 0.1, 0.3, 0.5, 0.7, 0.9, 0.99, 1]);
      for (let time = 0; time < 200; time++) {
        stretches.forEach(({ box }, which) => {
          const later = room + share() * (most[box]! - room);
          const always = room + share() * (later - room);
          for (const setting of settingsOf(kitchen, box)) {
            const found = cells.ethylene[which]!.some(
              (cell) => cell.setting === setting && holds(cell.always, always) && holds(cell.later, later),
            );
            expect(found, `${always} always, ${later} later, vent ${setting}`).toBe(true);
          }
        });
        for (let box = 0; box < kitchen.size; box++) {
          const least = Math.min(air.leastDensity[box]!, air.mostDensity[box]!);
          const density = least + share() * (air.mostDensity[box]! - least);
          for (const setting of settingsOf(kitchen, box)) {
            const found = cells.density[box]!.some(
              (option) =>
                option.setting === setting && holds(option.range, Math.min(density, air.mostDensity[box]!)),
            );
            expect(found, `${density}, vent ${setting}`).toBe(true);
          }
        }
      }
    },
  );
});
