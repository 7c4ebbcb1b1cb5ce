import {
  handoutContext,
  type LabelSheet,
  labelLayout,
  labelPage,
  labelPosition,
  labelRows,
  sheetFaults,
  textWidth,
  usualSheets,
} from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const rows = labelRows(context, handMadePlan);
const sheet: LabelSheet = usualSheets["a4-3x7-63.5x38.1"];

const anySheet: fc.Arbitrary<LabelSheet> = fc
  .record({
    columns: fc.integer({ min: 1, max: 6 }),
    rows: fc.integer({ min: 1, max: 12 }),
    labelWidth: fc.integer({ min: 25, max: 150 }),
    labelHeight: fc.integer({ min: 12, max: 120 }),
    marginLeft: fc.integer({ min: 0, max: 20 }),
    marginTop: fc.integer({ min: 0, max: 20 }),
    gapAcross: fc.integer({ min: 0, max: 5 }),
    gapDown: fc.integer({ min: 0, max: 5 }),
  })
  .map((one) => ({
    ...one,
    pageWidth: one.marginLeft + one.columns * (one.labelWidth + one.gapAcross),
    pageHeight: one.marginTop + one.rows * (one.labelHeight + one.gapDown),
  }));

describe("labels", () => {
  it("say what it is, until when it is good, where it goes, since when and how", () => {
    const [first] = rows;
    expect(first).toMatchObject({
      name: "Moonleaves, about\u00a0300\u00a0g",
      until: "Check from Fri\u00a019\u00a0June",
    });
    expect(rows.find(({ lot }) => lot === "b")?.places.join(" | ")).toMatch(
      /Counter: in a paper bag.* \| When ripe, about/,
    );
    for (const row of rows) expect(row.putAway).toBe("Put away Sat\u00a013\u00a0June");
  });

  it("fit their words on any label: measured, whole words, until when in full, and inside the edge", () => {
    const place = fc.string({ unit: fc.constantFrom(..."abc dé果W "), maxLength: 60 });
    fc.assert(
      fc.property(anySheet, place, (of, name) => {
        const places = handMadePlan.places.map((one) => ({ ...one, name }));
        const own = labelRows(context, { ...handMadePlan, places });
        const placed = labelLayout(own, of);
        expect(placed.map(({ lot }) => lot)).toEqual(own.map(({ lot }) => lot));
        placed.forEach((label, index) => {
          const row = own[index]!;
          const told = (role: string) =>
            label.lines.filter((line) => line.role === role).map(({ text }) => text);
          expect(told("until").join(" ")).toBe(row.until);
          expect(told("name").length).toBeGreaterThan(0);
          const whole = [row.name, row.until, row.putAway, row.how ?? "", ...row.places]
            .join(" ")
            .split(/ +/);
          let bottom = label.y;
          for (const line of label.lines) {
            const words = line.text.split(" ");
            for (const word of words) {
              const bare = word.replace(/…$/, "");
              expect(whole.some((one) => (bare === word ? one === word : one.startsWith(bare)))).toBe(true);
            }
            expect(line.width).toBeCloseTo(textWidth(line.text, line.size, line.bold), 9);
            expect(line.x).toBeGreaterThanOrEqual(label.x + 1.99);
            expect(line.x + line.width).toBeLessThanOrEqual(label.x + label.width - 1.99);
            expect(line.y - 0.8 * line.size).toBeGreaterThanOrEqual(bottom - 1e-6);
            bottom = line.y + 0.2 * line.size;
          }
          expect(bottom).toBeLessThanOrEqual(label.y + label.height - 1.9);
        });
      }),
      { numRuns: 150 },
    );
  });

  it("begin at the first free label, go along the rows, and on to the next sheet", () => {
    const placed = labelLayout(rows, sheet, 18);
    expect(placed.map(({ page, row, column }) => [page, row, column])).toEqual([
      [0, 5, 2],
      [0, 6, 0],
      [0, 6, 1],
      [0, 6, 2],
      [1, 0, 0],
      [1, 0, 1],
      [1, 0, 2],
    ]);
    const last = labelPosition(sheet, 20);
    expect([last.x, last.y]).toEqual([7.25 + 2 * 66, 15.15 + 6 * 38.1]);
  });

  it.each(Object.entries(usualSheets))("%s lies on its page, the grid in the middle", (_, of) => {
    expect(sheetFaults(of)).toEqual([]);
    const right = of.pageWidth - of.marginLeft - of.columns * of.labelWidth - (of.columns - 1) * of.gapAcross;
    const bottom = of.pageHeight - of.marginTop - of.rows * of.labelHeight - (of.rows - 1) * of.gapDown;
    expect(Math.abs(right - of.marginLeft)).toBeLessThan(0.5);
    expect(Math.abs(bottom - of.marginTop)).toBeLessThan(0.6);
  });

  it.each<[string, Partial<LabelSheet>]>([
    ["too wide", { labelWidth: 70 }],
    ["too high", { rows: 8 }],
    ["too small to write on", { labelWidth: 10 }],
    ["of no labels", { columns: 0 }],
    ["of half a label", { columns: 1.5 }],
    ["of measures that are none", { marginLeft: Number.NaN }],
  ])("refuse a sheet %s", (_, wrong) => {
    const faults = sheetFaults({ ...sheet, ...wrong });
    expect(faults.length).toBeGreaterThan(0);
    for (const { thing, value, remedy } of faults)
      expect(`${thing}${value}${remedy}`).toMatch(/Give|Measure/);
  });

  it("say to throw away what is past its safe day, and by when to eat what has one", () => {
    const told = (safeUntil: string) => {
      const lots = [{ ...handMadePlan.lots.find(({ form }) => form === "cut")!, safeUntil }];
      return labelRows(context, { ...handMadePlan, lots } as Plan)[0]!;
    };
    expect(told("2026-06-16").until).toBe("Eat by Tue\u00a016\u00a0June, then throw away");
    const past = told("past");
    expect(past).toMatchObject({ until: "Throw away: do\u00a0not\u00a0eat", places: [], how: undefined });
    const words = labelLayout([past], { ...sheet, labelWidth: 25, labelHeight: 12 })[0]!.lines.map(
      ({ text }) => text,
    );
    expect(words.join(" ")).toContain("Throw away: do\u00a0not\u00a0eat");
    expect(words).not.toContain("eat");
  });
});

describe("the page of labels", () => {
  it("is as large as the sheet, one drawing a page, names never mark-up", () => {
    const places = handMadePlan.places.map((one) => ({ ...one, name: `<b>&"${one.name}` }));
    const own = labelRows(context, { ...handMadePlan, places });
    const page = labelPage(context, labelLayout(own, sheet, 20), sheet, true);
    expect(page).toContain("@page { size: 210mm 297mm; margin: 0; }");
    expect(page.match(/<svg [^>]*width="210mm" height="297mm" viewBox="0 0 210 297"/g)).toHaveLength(2);
    expect(page).not.toMatch(/<b>|undefined|NaN/);
    expect(page).toContain("&lt;b&gt;&amp;&quot;");
    expect(page.match(/<rect /g)).toHaveLength(own.length);
  });
});
