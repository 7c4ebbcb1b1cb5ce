import { unitsOf } from "@keepwright/handout";
import { type KitchenAnswers, ordinaryKitchens, ventSettings, wrapIds } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayRange, type PlannerState, peopleRange, portionRange } from "../../src/state/plannerState.js";
import { type RestoreWith, restore } from "../../src/storage/restore.js";

const otherwise: PlannerState = {
  version: 3,
  text: "3 figs",
  corrections: {},
  kitchen: "ordinary",
  kitchens: [],
  people: 4,
  days: 10,
  portions: 5,
  away: [],
  units: unitsOf("metric"),
  language: "device",
  region: "device",
  done: [],
  lying: {},
  vents: {},
};
const how: RestoreWith = { otherwise, kinds: new Set(["apple", "fig"]) };

const state: fc.Arbitrary<PlannerState> = fc.record({
  version: fc.constant(3 as const),
  text: fc.string({ unit: "binary" }),
  corrections: fc.dictionary(
    fc.string(),
    fc.record(
      {
        commodity: fc.constantFrom("apple", "fig"),
        amount: fc.record({
          value: fc.double({ min: 0.1, max: 200_000, noNaN: true }),
          unit: fc.constantFrom("g", "kg", "lb", "oz", "each", "bunch"),
        }),
        extraDays: fc.integer({ min: 0, max: 60 }),
        ripeness: fc.constantFrom("unripe", "turning", "ripe", "very ripe"),
        form: fc.constantFrom("whole", "cut"),
        tops: fc.boolean(),
        washed: fc.boolean(),
        leftOut: fc.boolean(),
      },
      { requiredKeys: [] },
    ),
  ),
  kitchen: fc.constantFrom("ordinary", "small", "cellar", "warm"),
  people: fc.integer({ min: peopleRange.least, max: peopleRange.most }),
  days: fc.integer({ min: dayRange.least, max: dayRange.most }),
  portions: fc.integer({ min: portionRange.least, max: portionRange.most }),
  away: fc.uniqueArray(fc.constantFrom("2026-06-13", "2026-06-20")),
  units: fc.record({
    temperature: fc.constantFrom("metric", "us"),
    mass: fc.constantFrom("metric", "us"),
  }),
  region: fc.constantFrom("device", "US", "419"),
  kitchens: fc.array(
    fc.record({
      key: fc.string().map((key) => `own-${key}`),
      kitchen: fc.constantFrom(...Object.values(ordinaryKitchens)),
      answers: fc.constantFrom<KitchenAnswers>(
        {},
        { refrigerator: "litres", litres: "many", drawers: ["slide", "unknown"], door: false },
        { cold: "reading", coldReading: { typed: "60", unit: "°F" }, wraps: ["foil"], balcony: true },
      ),
    }),
    { maxLength: 3 },
  ),
  language: fc.constantFrom("device", "en", "es"),
  done: fc.array(fc.string()),
  lying: fc.dictionary(
    fc.string(),
    fc.oneof(
      fc.record({ place: fc.string(), wrap: fc.constantFrom(...wrapIds) }),
      fc.constant("as planned" as const),
    ),
  ),
  vents: fc.dictionary(fc.string(), fc.constantFrom(...ventSettings)),
});

function expectSound(restored: PlannerState): void {
  expect(typeof restored.text).toBe("string");
  expect(Object.keys(ordinaryKitchens)).toContain(restored.kitchen);
  expect(restored.people).toBeGreaterThanOrEqual(peopleRange.least);
  expect(restored.people).toBeLessThanOrEqual(peopleRange.most);
  expect(restored.days).toBeGreaterThanOrEqual(dayRange.least);
  expect(restored.days).toBeLessThanOrEqual(dayRange.most);
  expect(["metric", "us"]).toContain(restored.units.temperature);
  expect(["metric", "us"]).toContain(restored.units.mass);
  for (const { amount, commodity } of Object.values(restored.corrections)) {
    if (amount !== undefined) expect(amount.value).toBeGreaterThan(0);
    if (commodity !== undefined) expect(how.kinds).toContain(commodity);
  }
}

describe("the one door for what was saved", () => {
  it("gives back whatever this version saved, unchanged", () => {
    fc.assert(
      fc.property(state, (each) => {
        expect(restore(JSON.parse(JSON.stringify(each)), how)).toEqual(JSON.parse(JSON.stringify(each)));
      }),
    );
  });

  it("turns anything at all into a sound state, and never throws", () => {
    fc.assert(fc.property(fc.anything(), (saved) => expectSound(restore(saved, how))));
  });

  it("keeps the words whatever else is broken", () => {
    const broken = fc.record(
      {
        text: fc.string({ unit: "binary" }),
        version: fc.anything(),
        corrections: fc.oneof(fc.anything(), fc.dictionary(fc.string(), fc.anything())),
        kitchen: fc.oneof(fc.anything(), fc.constantFrom("constructor", "__proto__", "toString")),
        people: fc.anything(),
        days: fc.anything(),
        units: fc.anything(),
      },
      { requiredKeys: ["text"] },
    );
    fc.assert(
      fc.property(broken, (saved) => {
        const restored = restore(saved, how);
        expect(restored.text).toBe(saved.text);
        expectSound(restored);
      }),
    );
  });

  it.each([undefined, null, 7, "text", [], {}, { text: 7 }])("opens what it is told to for %j", (saved) => {
    expect(restore(saved, how)).toBe(otherwise);
  });

  it.each([
    ["us", unitsOf("us")],
    ["metric", unitsOf("metric")],
    [7, unitsOf("metric")],
    [{ temperature: "us" }, { temperature: "us", mass: "metric" }],
  ])("reads the units %j of any version", (units, expected) => {
    expect(restore({ version: 2, text: "x", units }, how).units).toEqual(expected);
  });

  it("lets go of a correction to a kind that the catalogue no longer has, and keeps the others", () => {
    const saved = { text: "x", corrections: { a: { commodity: "zorble", grams: 5 }, b: { grams: 6 } } };
    expect(restore(saved, how).corrections).toEqual({ b: { amount: { value: 6, unit: "g" } } });
  });
});
