import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { askFor } from "../../src/behaviour/useWorkedOut.js";
import { civilDayFits, daysOfPlan } from "../../src/state/daysAway.js";
import { gramsOf } from "../../src/state/enteredAmount.js";
import { kitchenOf } from "../../src/state/kitchenOf.js";
import type { PlannerState } from "../../src/state/plannerState.js";
import { readLines } from "../../src/state/readLines.js";
import { shownAmount } from "../../src/state/shownAmount.js";
import { firstDay, sinceThen } from "../../src/state/sinceThen.js";
import { restoreAll } from "../../src/storage/restore.js";
import { wholeKitchens } from "../../src/storage/wholeKitchens.js";
import { anyState, otherwise } from "../support/states.js";

const all = catalogue();
const how = { otherwise, kinds: new Set(all.commodities.keys()) };
const saved = (fields: object) => ({ ...otherwise, ...fields });
const unusedOf = (fields: object) =>
  restoreAll(saved(fields), how).unused.map(({ field, value }) => [field, value]);

/** All that the page works out of a state before it asks for a plan. */
function workedOut(state: PlannerState, today: string) {
  const read = (text: string) => readLines(text, state.corrections, all);
  const lines = read(state.text);
  for (const line of lines) {
    const commodity = all.commodities.get(line.lot?.commodity ?? "");
    const shown = shownAmount(line, commodity, state.units.mass);
    if (shown) gramsOf(shown, commodity);
  }
  const days = [firstDay(state, today), ...state.away, ...state.before.map(({ day }) => day)];
  const formatted = days.map((day) =>
    new Intl.DateTimeFormat("en-GB").format(Date.parse(`${day}T00:00:00Z`)),
  );
  const began = sinceThen(state, lines, today, read);
  return {
    formatted,
    days: daysOfPlan(began.from, state.days),
    asked: askFor(state, kitchenOf(state), began),
  };
}

describe("a day that is in no calendar", () => {
  const impossible = ["2026-00-00", "2026-11-31", "2026-02-29", "2026-99-99", "2026-13-01", "2026-1-1", ""];
  it.each(impossible)("%j is not taken, and told", (day) => {
    const value = JSON.stringify(day);
    expect(unusedOf({ from: day })).toEqual([["from", value]]);
    expect(unusedOf({ away: ["2026-06-13", day] })).toEqual([["away[2]", value]]);
    expect(unusedOf({ before: [{ day, text: "x" }] })).toEqual([["before[1].day", value]]);
  });
  it.each(["2024-02-29", "2026-11-30", "2026-12-31"])("is none of %s", (day) => {
    expect(civilDayFits(day)).toBe(true);
    expect(unusedOf({ from: day, away: [day], before: [{ day, text: "x" }] })).toEqual([]);
  });
});

describe("what else cannot be", () => {
  it("a unit that nobody has is told, and the amount left out", () => {
    const correction = { ripeness: "ripe", amount: { value: 3, unit: "parsec" } };
    const restored = restoreAll(saved({ corrections: { "3 avocados#0": correction } }), how);
    expect(restored.unused).toMatchObject([
      { field: 'corrections."3 avocados#0".amount.unit', value: '"parsec"', wanted: { want: "choice" } },
    ]);
    expect(restored.state.corrections).toEqual({ "3 avocados#0": { ripeness: "ripe" } });
  });
  it("days it has lain are whole", () => {
    expect(unusedOf({ corrections: { x: { extraDays: 1.5 } } })).toEqual([
      ['corrections."x".extraDays', "1.5"],
    ]);
  });
  it("a version there never was is told, and the words are kept", () => {
    expect(unusedOf({ version: 9 })).toEqual([["version", "9"]]);
    expect(unusedOf({ version: undefined })).toEqual([]);
  });
});

const oddDay = fc.constantFrom(
  "today",
  "2026-00-00",
  "2026-11-31",
  "0001-01-01",
  "9999-12-31",
  "2026-06-10",
  "x",
);
const odd: fc.Arbitrary<unknown> = fc.oneof(
  fc.anything(),
  oddDay,
  fc.constantFrom(-1, 0, 1.5, 1e308, Number.NaN, null, "", "constructor", "__proto__", [[]], [{}]),
);
const oddCorrection = fc.record(
  {
    commodity: fc.oneof(odd, fc.constantFrom("apple", "fig", "avocado")),
    amount: fc.oneof(
      odd,
      fc.record({
        value: fc.oneof(odd, fc.double()),
        unit: fc.oneof(odd, fc.constantFrom("g", "lb", "each", "bunch", "ear", "toString", "each small")),
      }),
    ),
    ripeness: odd,
    form: fc.oneof(odd, fc.constant("cut")),
    extraDays: fc.oneof(odd, fc.double()),
    leftOut: odd,
  },
  { requiredKeys: [] },
);
const mangled = fc
  .record(
    {
      text: fc.constantFrom("2 kg apples\n3 avocados", "lettuce", "3 figs", ""),
      version: odd,
      corrections: fc.oneof(
        odd,
        fc.dictionary(
          fc.constantFrom("2 kg apples#0", "3 avocados#0", "lettuce#0", "3 figs#0"),
          oddCorrection,
        ),
      ),
      from: fc.oneof(odd, oddDay),
      away: fc.oneof(odd, fc.array(oddDay)),
      before: fc.oneof(
        odd,
        fc.array(fc.record({ day: oddDay, text: fc.constantFrom("3 figs", "lettuce", "") })),
      ),
      missed: fc.oneof(odd, fc.array(fc.constantFrom("eat|2026-00-00|3 figs#0", "move||", "|", "x"))),
      days: odd,
      people: odd,
      portions: odd,
      kitchen: odd,
      kitchens: odd,
      units: odd,
      region: odd,
    },
    { requiredKeys: ["text"] },
  )
  .chain((fields) => anyState.map((state) => ({ ...state, ...fields })));

describe("a kept state that was mangled", () => {
  it("is repaired to one with which the page works everything out", () => {
    fc.assert(
      fc.property(mangled, (each) => {
        const { state, usable } = restoreAll(each, { ...how, kitchenDoor: wholeKitchens });
        expect(usable).toBe(true);
        expect(state.text).toBe(each.text);
        const { asked } = workedOut(state, "2026-06-13");
        for (const { grams, extraDays } of asked?.lots ?? []) {
          expect(grams).toBeGreaterThan(0);
          expect(extraDays).toSatisfy(Number.isInteger);
        }
      }),
      { numRuns: 300 },
    );
  });
});
