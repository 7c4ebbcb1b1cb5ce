import { catalogue } from "@keepwright/catalogue";
import { mostLots } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { corrected, correctionKey } from "../../src/state/corrections.js";
import { readLines } from "../../src/state/readLines.js";
import { lotsToPlan, type ReadLine, waits } from "../../src/state/readLots.js";

const read = (text: string, corrections = {}) => readLines(text, corrections, catalogue());
const kindOf = (id: string) => catalogue().commodities.get(id);
const only = (lines: readonly ReadLine[]): ReadLine => {
  expect(lines).toHaveLength(1);
  return lines[0]!;
};

describe("a correction", () => {
  const item = () => {
    const line = only(read("3 avocados"));
    if (line.kind !== "lot") throw new Error("Avocados are not understood.");
    return line.item;
  };
  it("of the kind keeps as many pieces where both kinds are counted, and drops what belonged to the kind before", () => {
    const lot = corrected(item(), { commodity: "pear" }, kindOf);
    const each =
      kindOf("pear")?.household.units.find(({ name }) => name === kindOf("pear")?.household.countUnit)
        ?.grams ?? Number.NaN;
    expect(lot).toMatchObject({ commodity: "pear", pieces: 3, grams: 3 * each });
    expect(lot.ripeness).toBeUndefined();
  });
  it("of the kind keeps the grams of what was weighed", () => {
    const line = only(read("2 kg apples", { "2 kg apples#0": { commodity: "pear" } }));
    expect(line.lot).toMatchObject({ commodity: "pear", grams: 2000 });
    expect(line.lot?.pieces).toBeUndefined();
  });
  it("of the amount drops the count unless it was counted again", () => {
    expect(item().lot.pieces).toBe(3);
    const weighed = corrected(item(), { amount: { value: 1, unit: "lb" } }, kindOf);
    expect(weighed.grams).toBeCloseTo(453.59237, 9);
    expect(weighed.pieces).toBeUndefined();
    expect(corrected(item(), { amount: { value: 5, unit: "each" } }, kindOf).pieces).toBe(5);
  });
  it("to an amount that cannot be leaves what was read", () => {
    const { grams } = item().lot;
    expect(corrected(item(), { amount: { value: 2, unit: "ear" } }, kindOf).grams).toBe(grams);
  });
  it("that is absent or empty leaves the lot as it was read", () => {
    expect(corrected(item(), undefined, kindOf)).toEqual(item().lot);
    expect(corrected(item(), {}, kindOf)).toEqual(item().lot);
  });
});

describe("what the person says is cut, of words that leave in doubt how old it is", () => {
  const typed = "lettuce bought some time ago";
  const said = (correction: object) => only(read(typed, { [correctionKey(typed, 0)]: correction }));
  it("is asked about and not planned until its days are told", () => {
    const cut = said({ form: "cut" });
    expect([waits(cut), lotsToPlan([cut])]).toEqual([true, []]);
    const dated = said({ form: "cut", extraDays: 2 });
    expect(waits(dated)).toBe(false);
    expect(lotsToPlan([dated])).toMatchObject([{ form: "cut", extraDays: 2 }]);
  });
  it("is planned where it stays whole", () => {
    const whole = said({ form: "whole" });
    expect(waits(whole)).toBe(false);
    expect(lotsToPlan([whole])).toHaveLength(1);
  });
});

describe("reading with corrections", () => {
  it("keeps a correction with its line while lines are put before it", () => {
    const corrections = { [correctionKey("1 kg carrots", 0)]: { amount: { value: 700, unit: "g" } } };
    for (const text of ["1 kg carrots", "2 kg apples\n1 kg carrots", "3 figs\n\n1 kg carrots\n1 lemon"]) {
      const lot = read(text, corrections).find(({ lot }) => lot?.commodity === "carrot")?.lot;
      expect(lot?.grams).toBe(700);
    }
  });
  it("tells lines with the same words apart", () => {
    const lines = read("1 kg carrots\n1 kg carrots", {
      [correctionKey("1 kg carrots", 1)]: { amount: { value: 5, unit: "g" } },
    });
    expect(lines.map(({ lot }) => lot?.grams)).toEqual([1000, 5]);
    expect(new Set(lines.map(({ key }) => key)).size).toBe(2);
  });
  it("leaves out of the plan what was left out, and nothing else", () => {
    const lines = read("2 kg apples\n1 kg carrots", { [correctionKey("2 kg apples", 0)]: { leftOut: true } });
    expect(lotsToPlan(lines).map(({ commodity }) => commodity)).toEqual(["carrot"]);
  });
  it("takes no correction from the machinery of objects", () => {
    for (const name of ["constructor", "__proto__", "toString"])
      expect(read(name).every(({ correction }) => correction === undefined)).toBe(true);
  });
});

describe("a question", () => {
  it("waits until it has a kind and an amount, and is then planned", () => {
    const key = correctionKey("3 zorbles", 0);
    expect(waits(only(read("3 zorbles")))).toBe(true);
    expect(lotsToPlan(read("3 zorbles", { [key]: { commodity: "fig" } }))).toMatchObject([{ pieces: 3 }]);
    const noAmount = read("0 lemons", { [correctionKey("0 lemons", 0)]: { commodity: "fig" } });
    expect(waits(only(noAmount))).toBe(true);
    const answered = read("3 zorbles", { [key]: { commodity: "fig", amount: { value: 90, unit: "g" } } });
    expect(waits(only(answered))).toBe(false);
    expect(lotsToPlan(answered)).toMatchObject([{ commodity: "fig", grams: 90, form: "whole" }]);
  });
  it("about an amount suggests the kind that was named, and plans nothing before it is answered", () => {
    const line = only(read("0 lemons"));
    expect(line).toMatchObject({ kind: "question", likely: "lemon", lot: undefined });
    const answered = read("0 lemons", { [line.key]: { amount: { value: 300, unit: "g" } } });
    expect(lotsToPlan(answered)).toMatchObject([{ commodity: "lemon", grams: 300 }]);
  });
  it("beside a lot that stands is settled by any correction, or by an empty one: it is right", () => {
    const line = only(read("half a cut melon"));
    expect(line.kind).toBe("lot");
    expect(waits(line)).toBe(true);
    expect(waits(only(read("half a cut melon", { [line.key]: {} })))).toBe(false);
  });
});

describe("any text", () => {
  it("gives lines with keys of their own, and lots that a plan can take", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        const lines = read(text);
        expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length);
        const lots = lotsToPlan(lines);
        expect(lots.length).toBeLessThanOrEqual(mostLots);
        expect(new Set(lots.map(({ id }) => id)).size).toBe(lots.length);
        for (const { grams } of lots) expect(grams).toBeGreaterThan(0);
      }),
    );
  });
});
