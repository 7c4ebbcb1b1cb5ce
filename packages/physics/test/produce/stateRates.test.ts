import { describe, expect, test } from "vitest";
import { at, endings, initialState, produceAtTemperature, stateNames, stateRates } from "../../src/index.js";
import { constantLife } from "../fixtures/constantLife.js";
import { air, cut, dryBulb, kind, leaf, ripener, whole } from "../fixtures/kinds.js";

const ratesOf = (
  ...[produce, form, conditions, ripeness = 1]: [typeof leaf, typeof whole, ReturnType<typeof air>, number?]
) => {
  const out = new Float64Array(stateNames.length);
  const state = initialState(produce, form, ripeness, 0);
  stateRates(produceAtTemperature(produce, form, conditions.temperature), state, conditions, out);
  return Object.fromEntries(stateNames.map((name) => [name, out[at[name]]!])) as Record<
    (typeof stateNames)[number],
    number
  >;
};

describe("a kind that does not ripen", () => {
  test("at its recommended conditions lives its published life", () => {
    expect(constantLife(leaf, air(0), { leaveOut: ["water"] }).days).toBeCloseTo(leaf.storageLifeDays, 1);
  });
  test("ages with its respiration", () => {
    expect(ratesOf(leaf, whole, air(10)).senescence).toBeCloseTo((60 / 20) * (1 / 12), 12);
  });
  test("stays as ripe as it came", () => expect(ratesOf(leaf, whole, air(20)).ripeness).toBe(0));
  test("rots as a ripe one whatever ripeness is handed in", () => {
    expect(ratesOf(leaf, whole, air(10), 0).decay).toBe(ratesOf(leaf, whole, air(10), 1).decay);
  });
  test("loses k (a_w p_sat − p) of water", () => {
    const lot = produceAtTemperature(leaf, whole, 5);
    const expected = 86_400 * leaf.transpiration * (lot.surfaceVapourPressure - air(5).vapourPressure);
    expect(ratesOf(leaf, whole, air(5)).waterLost).toBeCloseTo(expected, 12);
  });
  test("loses more through leaves left on", () => {
    const tops = { ...whole, tops: true };
    expect(ratesOf(leaf, tops, air(5)).waterLost).toBeCloseTo(2 * ratesOf(leaf, whole, air(5)).waterLost, 12);
  });
});

describe("a kind that ripens", () => {
  test("ripens in its days at 20 °C", () => {
    const life = constantLife(ripener, air(20), { ripeness: 0, leaveOut: ["water", "decay"] });
    expect(life.ripeDay).toBeCloseTo(5, 1);
    expect(life.days).toBeCloseTo(5 + 3, 1);
    expect(life.endedBy).toBe("over-ripeness");
  });
  test("stops ripening at its minimum, and then lives its published life", () => {
    const cold = kind({ ...ripener, storageTemperature: 6, chilling: undefined as never });
    expect(ratesOf(cold, whole, air(6), 0).ripeness).toBe(0);
    expect(ratesOf(cold, whole, air(6), 0).senescence).toBeCloseTo(1 / cold.storageLifeDays, 12);
    const life = constantLife(cold, air(6), { ripeness: 0, leaveOut: ["water", "decay"] });
    expect(life.days).toBeCloseTo(cold.storageLifeDays, 1);
    expect(life).toMatchObject({ endedBy: "senescence", ripeDay: Number.POSITIVE_INFINITY });
  });
  test("does not count its storage life against it while it ripens in full", () => {
    expect(ratesOf(ripener, whole, air(20), 0.7).senescence).toBe(0);
    expect(ratesOf(ripener, whole, air(20), 1).senescence).toBeCloseTo(1 / (5 + 3), 12);
  });
  test("above its maximum goes on softening but ripens badly, and lives shorter still", () => {
    const at = (celsius: number) =>
      constantLife(ripener, air(celsius), { ripeness: 0, leaveOut: ["water", "decay"] });
    expect(ratesOf(ripener, whole, air(31), 0).senescence).toBeCloseTo(2 ** 1.1 / (5 + 3), 12);
    expect(at(31).days).toBeLessThan(at(29).days);
    expect(at(35).days).toBeCloseTo((5 + 3) / 2 ** 1.5, 1);
  });
  test("bears colder air once ripe", () => {
    expect(ratesOf(ripener, whole, air(5), 0).chilling).toBeCloseTo((2 / 5) * (1 / 10), 12);
    expect(ratesOf(ripener, whole, air(5), 1).chilling).toBe(0);
    expect(ratesOf(ripener, whole, air(2), 1).chilling).toBeGreaterThan(0);
  });
});

describe("other harms", () => {
  test("freezing ends it within the hour, as chilling", () => {
    const life = constantLife(leaf, air(-1));
    expect(life.days).toBeLessThan(0.07);
    expect(life.endedBy).toBe("chilling");
  });
  test("a named ethylene injury is done in its days, and only above its temperature", () => {
    const injury = { effect: "russet spotting", concentration: 1, days: 6, temperature: 5, onlyAbove: 4 };
    const head = kind({ ethyleneInjuries: [injury] });
    expect(ratesOf(head, whole, air(5, { ethylene: 1 })).ethyleneInjury).toBeCloseTo(1 / 6, 10);
    expect(ratesOf(head, whole, air(4, { ethylene: 1 })).ethyleneInjury).toBe(0);
    expect(ratesOf(head, whole, air(5, { ethylene: 0.06 })).ethyleneInjury).toBe(0);
  });
  test("of several injuries the fastest counts", () => {
    const slow = { effect: "bitterness", concentration: 1, days: 20, temperature: 5, onlyAbove: -10 };
    const quick = { ...slow, effect: "yellowing", days: 5 };
    const both = kind({ ethyleneInjuries: [slow, quick] });
    expect(ratesOf(both, whole, air(5, { ethylene: 1 })).ethyleneInjury).toBeCloseTo(0.2, 10);
  });
  test("a bulb sprouts soonest in the middle, and roots and rots sooner in damp air", () => {
    const days = (celsius: number, relativeHumidity = 0.6) =>
      1 / ratesOf(dryBulb, whole, air(celsius, { relativeHumidity })).sprouting;
    expect([0, 10, 20].map((celsius) => Math.round(days(celsius)))).toEqual([200, 60, 90]);
    expect(days(35)).toBeCloseTo(90, 9);
    expect(days(10, 1)).toBeCloseTo(12, 9);
    const damp = ratesOf(dryBulb, whole, air(10, { relativeHumidity: 1 })).decay;
    expect(damp / ratesOf(dryBulb, whole, air(10, { relativeHumidity: 0.6 })).decay).toBeCloseTo(5, 9);
  });
  test("free water brought along counts as much as water fallen on it", () => {
    const washed = ratesOf(leaf, { ...whole, wet: true }, air(5)).decay;
    expect(washed).toBeCloseTo(ratesOf(leaf, whole, air(5, { wetness: 1 })).decay, 12);
    expect(washed / ratesOf(leaf, whole, air(5)).decay).toBeCloseTo(4, 9);
  });
  test("an eating effect takes its full loss and no more, inside its window only", () => {
    const effect = { effect: "flavour loss", below: 10, above: Number.NEGATIVE_INFINITY, days: 4, loss: 0.4 };
    const fruit = kind({ eatingEffects: [effect] });
    expect(ratesOf(fruit, whole, air(8)).eatingHarm).toBeCloseTo(0.1, 12);
    expect(ratesOf(fruit, whole, air(10)).eatingHarm).toBe(0);
    const out = new Float64Array(stateNames.length);
    const spoilt = initialState(fruit, whole, 1, 0);
    spoilt[at.eatingHarm] = 0.4;
    stateRates(produceAtTemperature(fruit, whole, 8), spoilt, air(8), out);
    expect(out[at.eatingHarm]).toBe(0);
  });
  test("light turns what greens, and only in the light", () => {
    const tuber = kind({ greensInLightDays: 8 });
    expect(ratesOf(tuber, whole, air(20, { lit: true })).safety).toBeCloseTo(1 / 8, 12);
    expect(ratesOf(tuber, whole, air(20)).safety).toBe(0);
  });
});

describe("cut produce", () => {
  test("lives its cut life at 5 °C", () => {
    expect(constantLife(leaf, air(5), { form: cut, leaveOut: ["water"] }).days).toBeCloseTo(
      leaf.cutLifeDaysAt5,
      1,
    );
  });
  test("neither ripens nor sprouts nor chills", () => {
    const rates = ratesOf(ripener, cut, air(2), 0.3);
    expect([rates.ripeness, rates.sprouting, rates.chilling]).toEqual([0, 0, 0]);
  });
  test("is out of its safe time in two hours on the counter", () => {
    const life = constantLife(leaf, air(22), { form: cut });
    expect(life.days * 24).toBeCloseTo(2, 0);
    expect(life.endedBy).toBe("safety");
  });
  test("loses water faster and rots faster than whole", () => {
    for (const name of ["waterLost", "decay"] as const) {
      expect(ratesOf(leaf, cut, air(5))[name]).toBeGreaterThan(ratesOf(leaf, whole, air(5))[name]);
    }
  });
});

test("every ending has a place in the progress", () => expect(endings).toHaveLength(8));
