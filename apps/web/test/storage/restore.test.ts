import { unitsOf } from "@keepwright/handout";
import { describedKitchen, ordinaryKitchens } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayRange, type PlannerState, peopleRange } from "../../src/state/plannerState.js";
import { restore, restoreAll } from "../../src/storage/restore.js";
import { wholeKitchens } from "../../src/storage/wholeKitchens.js";
import { anyState, how, otherwise } from "../support/states.js";

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
      fc.property(anyState, (each) => {
        const saved = JSON.parse(JSON.stringify(each));
        expect(restoreAll(saved, how)).toEqual({ state: saved, unused: [], usable: true });
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

  it("reads what an older version saved, which asked anew in every list", () => {
    const { meant: _, ...older } = { ...otherwise, version: 4, text: "greens" };
    expect(restoreAll(older, how)).toEqual({
      state: { ...otherwise, text: "greens" },
      unused: [],
      usable: true,
    });
  });

  it("keeps answers about words, but for a kind that nobody knows", () => {
    const saved = { ...otherwise, meant: { greens: "apple", eggs: "left out", roots: "zorble" } };
    const { state, unused } = restoreAll(saved, how);
    expect(state.meant).toEqual({ greens: "apple", eggs: "left out" });
    expect(unused).toMatchObject([{ field: 'meant."roots"', value: '"zorble"' }]);
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

  it("tells by field and value everything that it could not use", () => {
    const bad = { key: "own-1", kitchen: { ...ordinaryKitchens.small, places: [] } };
    const saved = {
      text: "x",
      people: 99,
      units: { mass: "stone" },
      done: ["a", 7],
      kitchens: [bad],
      colour: 1,
    };
    const { unused } = restoreAll(saved, how);
    expect(unused.map(({ field, value, wanted }) => [field, value, wanted.want])).toEqual([
      ["colour", "1", "nothing"],
      ["kitchens[1].kitchen.places", "0", "length"],
      ["people", "99", "whole number"],
      ["units.mass", '"stone"', "choice"],
      ["done[2]", "7", "text"],
    ]);
  });

  it("keeps the kitchens that can be planned for, and the choice among them", () => {
    const good = { key: "own-1", kitchen: ordinaryKitchens.small };
    const saved = { text: "x", kitchen: "own-1", kitchens: [good, { key: "own-2", kitchen: {} }, good] };
    const { state, unused } = restoreAll(saved, how);
    expect(state.kitchens).toEqual([good]);
    expect(state.kitchen).toBe("own-1");
    expect(unused.map(({ field }) => field)).toContain("kitchens[3].key");
  });

  it("puts a broken kitchen together again from the answers it was described by", () => {
    const answers = { refrigerator: "shoulder", cold: "turns" } as const;
    const kitchens = [{ key: "own-1", kitchen: { name: "Flat", places: 7 }, answers }];
    const { state, unused } = restoreAll({ text: "x", kitchens }, { ...how, kitchenDoor: wholeKitchens });
    expect(state.kitchens).toEqual([
      { key: "own-1", kitchen: describedKitchen(answers, "Flat").kitchen, answers },
    ]);
    expect(unused.length).toBeGreaterThan(0);
  });

  it("lets go of a correction to a kind that the catalogue no longer has, and keeps the others", () => {
    const saved = { text: "x", corrections: { a: { commodity: "zorble", grams: 5 }, b: { grams: 6 } } };
    expect(restore(saved, how).corrections).toEqual({ b: { amount: { value: 6, unit: "g" } } });
  });
});
