import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { simulate } from "../../src/simulate/simulate.js";
import type { SimulatedLot } from "../../src/simulate/simulation.js";
import { trajectory } from "../../src/simulate/trajectory.js";
import { aHaul } from "./hauls.js";
import { lot, simulation, stay } from "./kitchen.js";

const ends = (lots: readonly SimulatedLot[]): number[] =>
  simulate({ ...simulation(lots), outcome: "ends" }).lots.map(({ endDay }) => endDay);

const withheld = (one: SimulatedLot, ethylene: boolean, vapour: boolean): SimulatedLot => ({
  ...one,
  withheld: { ethylene, vapour },
});

/**
 * A lot that moves still cuts steps where it moves, so that ends shift by the error of a step. Worst of 4000 random hauls: 1.1·10⁻⁴ of a life, and
 * a quarter of that at half the step. Lives that are over at once are compared in days.
 */
const stepError = { share: 1e-3, days: 1e-3 };

describe("what is withheld from the air", () => {
  it("changes nothing where nothing is withheld", () => {
    const lots = [lot("tender", 1, [stay(0)]), lot("leaf", 0.5, [stay(0)])];
    expect(ends([withheld(lots[0]!, false, false), lots[1]!])).toEqual(ends(lots));
  });

  it("with ethylene and vapour both withheld a lot that stays is to the others as if it were gone, to the last bit", () => {
    fc.assert(
      fc.property(aHaul(undefined, 6), ([first, ...others]) => {
        const still = { ...first!, stays: first!.stays.slice(-1) };
        expect(ends([withheld(still, true, true), ...others]).slice(1)).toEqual(ends(others));
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("and one that moves too, but for the error of a step", () => {
    fc.assert(
      fc.property(aHaul(undefined, 6), ([first, ...others]) => {
        const kept = ends([withheld(first!, true, true), ...others]).slice(1);
        ends(others).forEach((end, index) => {
          expect(Math.abs(kept[index]! - end)).toBeLessThan(stepError.days + stepError.share * end);
        });
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("without its ethylene a neighbour that is harmed by it lasts longer, and the air is as damp as before", () => {
    const lots = [lot("fruit", 2, [stay(1)], { ripeness: 1 }), lot("pod", 0.3, [stay(1)])];
    const whole = simulate(simulation(lots));
    const bare = simulate(simulation([withheld(lots[0]!, true, false), lots[1]!]));
    expect(bare.lots[1]!.endDay).toBeGreaterThan(whole.lots[1]!.endDay);
    expect(bare.boxes[1]!.relativeHumidity[3]).toBeCloseTo(whole.boxes[1]!.relativeHumidity[3]!, 9);
    expect(bare.boxes[1]!.ethylene[3]).toBeLessThan(whole.boxes[1]!.ethylene[3]!);
  });

  it("without its vapour the air is drier, and holds as much ethylene as before", () => {
    const lots = [lot("leaf", 2, [stay(2)]), lot("bulb", 0.3, [stay(2)])];
    const whole = simulate(simulation(lots));
    const dry = simulate(simulation([withheld(lots[0]!, false, true), lots[1]!]));
    expect(dry.boxes[2]!.relativeHumidity[3]).toBeLessThan(whole.boxes[2]!.relativeHumidity[3]!);
    expect(dry.boxes[2]!.ethylene[3]).toBeCloseTo(whole.boxes[2]!.ethylene[3]!, 9);
  });

  it("is refused where changes are to be judged from a record", () => {
    expect(() => trajectory(simulation([withheld(lot("leaf", 1, [stay(0)]), true, false)]))).toThrow(
      /Use simulate/,
    );
  });
});
