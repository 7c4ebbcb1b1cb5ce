import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { simulate } from "../../src/simulate/simulate.js";
import { aHaul, aLot, aStay } from "./hauls.js";
import { kinds } from "./kinds.js";
import { boxes, lot, simulation, stay } from "./kitchen.js";

const oneStay = aStay.map((only) => [only]);

describe("any haul in any arrangement", () => {
  it("comes out the same to the last bit when simulated again", () => {
    fc.assert(
      fc.property(aHaul(), (haul) => {
        expect(simulate(simulation(haul))).toEqual(simulate(simulation(haul)));
      }),
      { numRuns: 30 },
    );
  });

  it("changes no end by more than 1 % when the step is halved", () => {
    fc.assert(
      fc.property(aHaul(), (haul) => {
        const usual = simulate(simulation(haul, { outcome: "ends" })).lots;
        const halved = simulate(simulation(haul, { outcome: "ends", stepDays: 0.125 })).lots;
        for (const [index, { endDay }] of usual.entries()) {
          const other = halved[index]!.endDay;
          expect(Math.abs(endDay - other), `${endDay} and ${other} days`).toBeLessThan(
            0.01 * Math.max(other, 1),
          );
        }
      }),
      { numRuns: 150 },
    );
  });

  /**
   * Kinds that bear more cold once ripe, and lots that move when ripe, are left out: ethylene that ripens them sooner takes them out of harm
   * sooner, so there it may rightly lengthen life.
   */
  it("lives no longer for a source of ethylene more", () => {
    const source = { ...kinds.fruit, id: "source", transpiration: 0, transpirationWithTops: 0 };
    fc.assert(
      fc.property(
        aHaul(aLot(oneStay, ["leaf", "root", "fruit", "berry", "pod", "bulb"]), 8),
        fc.nat(boxes.length - 1),
        (haul, box) => {
          const more = { ...lot("fruit", 1, [stay(box)], { ripeness: 1 }), produce: source };
          const without = simulate(simulation(haul, { outcome: "ends" })).lots;
          const withSource = simulate(simulation([...haul, more], { outcome: "ends" })).lots;
          for (const [index, { endDay }] of without.entries()) {
            expect(withSource[index]!.endDay).toBeLessThanOrEqual(endDay * (1 + 1e-3));
          }
        },
      ),
      { numRuns: 100 },
    );
  });

  it("never makes doses, losses or humidity run backwards or out of range", () => {
    fc.assert(
      fc.property(aHaul(), (haul) => {
        const outcome = simulate(simulation(haul));
        for (const { daily, quality, endDay } of outcome.lots) {
          expect(endDay).toBeGreaterThanOrEqual(0);
          for (let day = 1; day < daily.length; day++) {
            for (const [entry, value] of daily[day]!.entries()) {
              expect(value).toBeGreaterThanOrEqual(daily[day - 1]![entry]!);
            }
          }
          for (const value of quality) expect(value).toBeGreaterThanOrEqual(0);
        }
        for (const { relativeHumidity, ethylene } of outcome.boxes) {
          for (const value of relativeHumidity) expect(value).toBeLessThanOrEqual(1 + 1e-9);
          for (const value of ethylene) expect(value).toBeGreaterThanOrEqual(0.02 * (1 - 1e-12));
        }
      }),
      { numRuns: 50 },
    );
  });
});
