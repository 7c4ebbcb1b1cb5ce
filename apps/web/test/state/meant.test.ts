import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { correctionKey } from "../../src/state/corrections.js";
import type { Meant } from "../../src/state/meant.js";
import { readLines } from "../../src/state/readLines.js";
import { isLeftOut, lotsToPlan, stillAsked, waits } from "../../src/state/readLots.js";
import { rememberedWord } from "../../src/state/wordAsked.js";

const read = (text: string, meant: Meant, corrections = {}) =>
  readLines(text, corrections, catalogue(), meant);

describe("a word that was answered in an earlier list", () => {
  it("is taken so in the next, with the amount that stands beside it, and not asked about", () => {
    const [line] = read("3 squash", { squash: "zucchini" });
    expect(line).toMatchObject({
      recalled: "zucchini",
      lot: { commodity: "zucchini", pieces: 3, typed: "3 squash" },
    });
    expect(waits(line!)).toBe(false);
    expect(lotsToPlan([line!])).toHaveLength(1);
  });
  it("is taken so where its usual kind would be taken and asked about", () => {
    const [asked] = read("1 lettuce", {});
    expect([asked?.lot?.commodity, waits(asked!)]).toEqual(["head-lettuce", true]);
    const [line] = read("1 lettuce", { lettuce: "romaine" });
    expect([line?.lot?.commodity, waits(line!), stillAsked(line!)]).toEqual(["romaine", false, []]);
  });
  it("keeps the state that is told beside it", () => {
    const [line] = read("2 lb greens, washed", { greens: "kale" });
    expect(line?.lot).toMatchObject({ commodity: "kale", washed: true });
    expect(line?.lot?.grams).toBeCloseTo(907.18, 1);
  });
  it("gives way to what is said of the line itself", () => {
    const key = correctionKey("3 squash", 0);
    const [line] = read("3 squash", { squash: "zucchini" }, { [key]: { commodity: "pumpkin" } });
    expect(line).toMatchObject({ recalled: undefined, lot: { commodity: "pumpkin" } });
    const [heavier] = read(
      "3 squash",
      { squash: "zucchini" },
      { [key]: { amount: { value: 700, unit: "g" } } },
    );
    expect(heavier).toMatchObject({ recalled: "zucchini", lot: { commodity: "zucchini", grams: 700 } });
    expect(heavier?.lot?.pieces).toBeUndefined();
  });
  it("is left out where it was said to be no fruit or vegetable, and stays in the list", () => {
    const lines = read("6 huevos\n2 figs", { huevos: "left out" });
    expect(lines.map(isLeftOut)).toEqual([true, false]);
    expect(lines.map(waits)).toEqual([false, false]);
    expect(lotsToPlan(lines)).toMatchObject([{ commodity: "fig" }]);
  });
  it("is asked about again where its kind is no longer known", () => {
    expect(read("3 squash", { squash: "zorble" })[0]).toMatchObject({ recalled: undefined, lot: undefined });
  });
  it("still has asked what else is in doubt", () => {
    const [line] = read("lettuce cut some time ago", { lettuce: "romaine" });
    expect(line && waits(line)).toBe(true);
    expect(lotsToPlan([line!])).toEqual([]);
  });
});

describe("the word that an answer holds for", () => {
  const wordsOf = (text: string) => read(text, {}).map(({ item }) => rememberedWord(item));
  it.each([
    ["2 bunches greens", "greens"],
    ["1 lettuce", "lettuce"],
    ["6 Huevos", "huevos"],
    ["2 Zörbles", "zorbles"],
  ])("in %s is %s", (text, word) => expect(wordsOf(text)).toEqual([word]));
  it.each(["apples", "zero apples", "rotten apples", "3 apples flurb"])(
    "is none in %s, where nothing, or something else, is asked",
    (text) => expect(wordsOf(text)).toEqual([undefined]),
  );
});

it("an answer about the kind takes the amount from the words", () => {
  const key = correctionKey("2 bunches greens", 0);
  const [line] = read("2 bunches greens", {}, { [key]: { commodity: "kale" } });
  const bunch = catalogue()
    .commodities.get("kale")
    ?.household.units.find(({ name }) => name === "bunch")?.grams;
  expect(line?.lot).toMatchObject({ commodity: "kale", grams: 2 * bunch! });
  expect(waits(line!)).toBe(false);
});
