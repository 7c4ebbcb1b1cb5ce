import { describe, expect, it } from "vitest";
import { wetnessOf } from "../../src/climate/wetness.js";
import { produceAtTemperature } from "../../src/produce/atTemperature.js";
import { initialState } from "../../src/produce/initialState.js";
import { at as position, stateNames } from "../../src/produce/lotState.js";
import { stateRates } from "../../src/produce/stateRates.js";
import { simulate } from "../../src/simulate/simulate.js";
import { kinds } from "./kinds.js";
import { boxes, lot, room, simulation, stay } from "./kitchen.js";

const only = (one: ReturnType<typeof lot>, more = {}) => simulate(simulation([one], more)).lots[0]!;

describe("a lot alone in the room's air", () => {
  it("ends when its fastest dose is full, as by hand", () => {
    const form = { cut: false, tops: false, wet: false };
    const at = produceAtTemperature(kinds.bulb, form, room.temperature);
    const vapourPressure = room.relativeHumidity * at.saturationVapourPressure;
    const rates = new Float64Array(stateNames.length);
    const conditions = {
      temperature: room.temperature,
      vapourPressure,
      ethylene: room.ethylene,
      wetness: wetnessOf(room.relativeHumidity),
      lit: false,
      uptake: 0,
    };
    stateRates(at, initialState(kinds.bulb, form, 0, 0), conditions, rates);
    const byHand = Math.min(
      1 / rates[position.senescence]!,
      1 / rates[position.decay]!,
      1 / rates[position.sprouting]!,
      kinds.bulb.maximumLoss / rates[position.waterLost]!,
    );
    const got = only(lot("bulb", 1, [stay("room")]), { horizonDays: 60 });
    expect(got.beyondHorizon).toBe(false);
    expect(got.endDay / byHand).toBeCloseTo(1, 9);
  });

  it("ends beyond the horizon where its doses carried on say, under the same cause", () => {
    const near = only(lot("bulb", 1, [stay("room")]), { horizonDays: 60 });
    const far = only(lot("bulb", 1, [stay("room")]), { horizonDays: 3 });
    expect(far.beyondHorizon).toBe(true);
    expect(far.endDay / near.endDay).toBeCloseTo(1, 6);
    expect(far.endedBy).toBe(near.endedBy);
  });

  it("has a state and a quality for each whole day, from arrival to the horizon", () => {
    const got = only(lot("leaf", 1, [stay(1)]), { horizonDays: 7 });
    expect(got.daily).toHaveLength(8);
    expect(got.quality).toHaveLength(8);
    expect(got.quality[0]).toBe(1);
    expect(got.daily[7]![position.senescence]!).toBeGreaterThan(got.daily[6]![position.senescence]!);
  });

  it("gives the same ends, and only those, when only ends are asked for", () => {
    const one = lot("tender", 1, [stay(3, { until: "ripe" }), stay(0)]);
    const whole = only(one);
    const ends = only(one, { outcome: "ends" });
    expect(ends).toEqual({ ...whole, daily: [], quality: [] });
  });
});

describe("moves", () => {
  it("are made on their day, whatever the step", () => {
    for (const stepDays of [1, 0.25, 0.1]) {
      const got = only(lot("leaf", 1, [stay(0, { until: { day: 2.1 } }), stay(3)]), { stepDays });
      expect(got.stayStarts).toEqual([0, 2.1]);
    }
  });

  it("are made when ripe, and what moved is ripe", () => {
    const got = only(lot("fruit", 1, [stay(3, { until: "ripe" }), stay(0)]));
    expect(got.ripeDay).toBeGreaterThan(2);
    expect(got.stayStarts[1]).toBeCloseTo(got.ripeDay, 2);
    expect(got.daily[20]![position.ripeness]!).toBeGreaterThanOrEqual(1);
  });

  it("are made at once when ripe on arrival, by kinds that do not ripen, and past a day gone by", () => {
    expect(only(lot("fruit", 1, [stay(3, { until: "ripe" }), stay(0)], { ripeness: 1 })).stayStarts).toEqual([
      0, 0,
    ]);
    expect(only(lot("leaf", 1, [stay(3, { until: "ripe" }), stay(0)])).stayStarts).toEqual([0, 0]);
    const late = [stay(3, { until: "ripe" }), stay(3, { until: { day: 1 } }), stay(0)];
    const got = only(lot("fruit", 1, late));
    expect(got.stayStarts[2]).toBe(got.stayStarts[1]);
  });

  it("never come where fruit stays too cold to ripen", () => {
    const got = only(lot("tender", 1, [{ ...stay(0, { until: "ripe" }), temperature: 1 }, stay(3)]));
    expect(got.ripeDay).toBe(Number.POSITIVE_INFINITY);
    expect(got.stayStarts).toEqual([0, Number.POSITIVE_INFINITY]);
  });
});

describe("lots in one place", () => {
  it("age each other by ethylene, and a vent lets it out", () => {
    const pair = (box: number) => [
      lot("leaf", 0.4, [stay(box, { wrap: "perforated bag" })]),
      lot("fruit", 2, [stay(box)], { ripeness: 1 }),
    ];
    const [closed, open] = [1, 2].map((box) => simulate(simulation(pair(box))));
    expect(closed!.boxes[1]!.ethylene[5]!).toBeGreaterThan(open!.boxes[2]!.ethylene[5]!);
    expect(closed!.lots[0]!.daily[5]![position.senescence]!).toBeGreaterThan(
      open!.lots[0]!.daily[5]![position.senescence]!,
    );
  });

  it("keep each other humid behind a closed vent", () => {
    const outcome = simulate(simulation([lot("leaf", 1, [stay(1)]), lot("leaf", 1, [stay(2)])]));
    expect(outcome.boxes[1]!.relativeHumidity[3]!).toBeGreaterThan(outcome.boxes[2]!.relativeHumidity[3]!);
    expect(outcome.lots[0]!.daily[3]![position.waterLost]!).toBeLessThan(
      outcome.lots[1]!.daily[3]![position.waterLost]!,
    );
  });

  it("water settles on produce colder than the air of its place, and is counted", () => {
    const warm = {
      name: "warm",
      volumeLitres: 50,
      temperature: 20,
      exchange: { with: "room", litresPerHour: 200 },
    } as const;
    const cold = { ...stay(0), temperature: 2 };
    const outcome = simulate(simulation([lot("leaf", 1, [cold])], { boxes: [warm], horizonDays: 2 }));
    expect(outcome.boxes[0]!.condensed).toBeGreaterThan(0.001);
    expect(outcome.lots[0]!.daily[2]![position.waterLost]!).toBe(0);
  });

  it("stand in water and lose a tenth of what they would", () => {
    const [dry, standing] = (["none", "glass of water"] as const).map((wrap) =>
      only(lot("leaf", 0.1, [stay("room", { wrap })])),
    );
    expect(standing!.daily[1]![position.waterLost]! / dry!.daily[1]![position.waterLost]!).toBeCloseTo(
      0.1,
      6,
    );
  });
});

describe("what cannot be simulated", () => {
  it("is refused by name", () => {
    expect(() => only(lot("leaf", 1, []))).toThrow(/“leaf” is nowhere/);
    expect(() => only(lot("leaf", 1, [{ ...stay(0), box: boxes.length }]))).toThrow(
      /box 5; there are 5 boxes/,
    );
    expect(() => only(lot("leaf", 1, [{ ...stay(0), wrap: "foil" }]))).toThrow(/No wrap is called “foil”/);
    expect(() => only(lot("leaf", 0, [stay(0)]))).toThrow(/0 kg/);
    expect(() => only(lot("leaf", 1, [stay(0)]), { horizonDays: 0 })).toThrow(/horizon of 0 days/);
    expect(() => only(lot("leaf", 1, [stay(0)]), { stepDays: 2 })).toThrow(/step of 2 days/);
  });

  it("but nothing at all can be: an empty kitchen has its room's ethylene", () => {
    const outcome = simulate(simulation([], { horizonDays: 2 }));
    expect(outcome.lots).toEqual([]);
    for (const box of outcome.boxes) expect(box.ethylene).toEqual([0.02, 0.02, 0.02]);
  });
});
