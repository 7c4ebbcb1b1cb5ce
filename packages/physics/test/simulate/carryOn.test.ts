import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { produceFromCommodity } from "../../src/produce/fromCommodity.js";
import type { Produce } from "../../src/produce/produce.js";
import { simulate } from "../../src/simulate/simulate.js";
import type { AirBox, LotOutcome, SimulatedLot } from "../../src/simulate/simulation.js";
import { boxes, lot, simulation, stay, temperatures } from "./kitchen.js";

const cellar: AirBox = {
  name: "cellar",
  volumeLitres: 500,
  temperature: 11,
  exchange: { with: "room", litresPerHour: 500 },
};
const places = [...boxes, cellar];
const cellarBox = boxes.length;

const inCellar = (of: Produce, more: Partial<SimulatedLot> = {}): SimulatedLot => ({
  ...lot("fruit", 0.6, [{ ...stay(0), box: cellarBox, temperature: 11 }], more),
  produce: of,
});
const real = (id: string): Produce => produceFromCommodity(catalogue().commodities.get(id)!);

/** Nothing is said of agreement better than this where a lot ends beyond the horizon, alone in the kitchen's air. */
const agreed = 0.02;
const horizons = [1, 2, 3, 4, 5, 7, 10];
const steps = [0.125, 0.25, 0.5];

const outcome = (one: SimulatedLot, horizonDays: number, stepDays: number): LotOutcome =>
  simulate(simulation([one], { boxes: places, horizonDays, stepDays, outcome: "ends" })).lots[0]!;

/** Runs a lot with many horizons and steps and returns the largest error of a number of its outcome against a run of 200 days. */
function expectSame(one: SimulatedLot): void {
  const long = outcome(one, 200, 0.125);
  expect(long.beyondHorizon, "ends within 200 days").toBe(false);
  for (const horizonDays of horizons) {
    for (const stepDays of steps) {
      const got = outcome(one, horizonDays, stepDays);
      const told = `horizon ${horizonDays} d, step ${stepDays} d: ${got.endDay} by ${got.endedBy}, not ${long.endDay} by ${long.endedBy}`;
      expect(got.endedBy, told).toBe(long.endedBy);
      expect(Math.abs(got.endDay / long.endDay - 1), told).toBeLessThan(agreed);
      if (long.ripeDay <= long.endDay) {
        expect(Math.abs(got.ripeDay - long.ripeDay), told).toBeLessThanOrEqual(agreed * long.ripeDay);
      }
      for (const [index, start] of long.stayStarts.entries()) {
        if (start > long.endDay) continue;
        expect(Math.abs(got.stayStarts[index]! - start), told).toBeLessThanOrEqual(agreed * start);
      }
    }
  }
}

describe("an end beyond the horizon", () => {
  it("stands wherever the horizon falls, for kiwifruit that ripens about then in a cellar", () => {
    for (const ripeness of [0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95])
      expectSame(inCellar(real("kiwifruit"), { ripeness }));
  });

  it("stands for kinds of the catalogue that ripen, half ripe, in a cellar and in the cold", () => {
    for (const id of ["tomato", "avocado", "pear", "banana", "mango", "peach"]) {
      expectSame(inCellar(real(id), { ripeness: 0.5 }));
      expectSame({ ...inCellar(real(id), { ripeness: 0.5, stays: [stay(0)] }) });
    }
  });

  it("stands for every invented kind in every place", () => {
    for (const kind of ["leaf", "root", "fruit", "tender", "berry", "pod", "bulb"] as const) {
      for (const box of temperatures.keys()) expectSame(lot(kind, 0.5, [stay(box)], { ripeness: 0.4 }));
    }
  });

  it("stands where fruit is moved when ripe, into a drawer whose air it changes, and bagged or not", () => {
    for (const kind of ["fruit", "tender"] as const) {
      for (const wrap of ["none", "paper bag"] as const) {
        for (const ripeness of [0, 0.4, 0.7]) {
          expectSame(lot(kind, 1, [stay(3, { wrap, until: "ripe" }), stay(1)], { ripeness }));
        }
      }
    }
  });

  it("stands where a lot is moved on a day", () => {
    for (const day of [1, 2.1, 4, 6.5]) {
      expectSame(lot("pod", 0.5, [stay(0, { until: { day } }), stay(3)]));
      expectSame(lot("tender", 0.5, [stay(0, { until: { day } }), stay(3, { until: "ripe" }), stay(2)]));
    }
  });

  it("stands where chilling overtakes ageing in the meantime", () => {
    for (const spent of [0.1, 0.3, 0.5]) expectSame(lot("tender", 0.5, [stay(2)], { spent, ripeness: 0.7 }));
  });
});
