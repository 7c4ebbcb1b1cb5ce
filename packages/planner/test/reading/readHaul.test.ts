import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { lotSchema } from "../../src/problem/lot.js";
import { askBelow, mostLots, type Question, readHaul, type UnderstoodLot } from "../../src/reading/index.js";
import { type Expected, phrases } from "./phrases.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) => read(text).filter((item): item is UnderstoodLot => item.kind === "lot");
const questionsIn = (text: string): Question[] => read(text).flatMap((item) => [...item.questions]);

/** Grams of a count of one of the kind's own units, from the catalogue. */
function grams(expected: Expected): number | undefined {
  if (!expected.of) return expected.grams;
  const [count, name] = expected.of;
  const unit = catalogue()
    .commodities.get(expected.commodity)
    ?.household.units.find((entry) => entry.name === name);
  if (!unit) throw new Error(`${expected.commodity} has no unit "${name}"`);
  return Math.round(count * unit.grams * 100) / 100;
}

describe("a name written as two words", () => {
  it.each([
    ["1 water melon", "watermelon"],
    ["2 egg plants", "eggplant"],
    ["blue berries", "blueberry"],
    ["1 lb straw berries", "strawberry"],
    ["a pine apple", "pineapple"],
    ["2 grape fruits", "grapefruit"],
    ["bread fruit", "breadfruit"],
  ])("%s", (text, kind) => {
    expect(lotsIn(text).map(({ lot }) => lot.commodity)).toEqual([kind]);
    expect(questionsIn(text).map(({ ask }) => ask)).not.toContain("what is this");
  });

  it("does not join what stands on two lines or has a comma between", () => {
    expect(lotsIn("2 grapes\n1 pineapple, 2 apples").map(({ lot }) => lot.commodity)).toEqual([
      "grape",
      "pineapple",
      "apple",
    ]);
    expect(lotsIn("1 lb water, melon").map(({ lot }) => lot.commodity)).not.toContain("watermelon");
  });
});

describe("phrases as people write them", () => {
  it.each(phrases)("%s", (text, ...expected) => {
    const lots = lotsIn(text);
    expect(lots.map(({ lot }) => lot.commodity)).toEqual(expected.map((lot) => lot.commodity));
    for (const [index, want] of expected.entries()) {
      const { grams: _, of: __, ...fields } = want;
      expect(lots[index]!.lot).toMatchObject(fields);
      const weight = grams(want);
      if (weight !== undefined) expect(lots[index]!.lot.grams).toBeCloseTo(weight, 2);
      expect(() => lotSchema.parse({ id: "1", ...lots[index]!.lot })).not.toThrow();
    }
    expect(read(text).filter((item) => item.kind === "question")).toEqual([]);
  });

  it("has at least eighty of them", () => {
    expect(phrases.length).toBeGreaterThanOrEqual(80);
  });
});

describe("what is taken for granted is told", () => {
  it.each([
    ["cilantro", "usual amount"],
    ["3 avocados", "usual ripeness"],
    ["3 onions", "usual size"],
    ["aples", "spelling"],
    ["half an onion", "cut, because half of one"],
    ["2-3 lb tomatoes", "rounded amount"],
    ["a few carrots", "usual amount"],
    ["1 quart strawberries", "weight from volume"],
  ])("%s: %s", (text, assumption) => {
    expect(lotsIn(text)[0]?.assumed).toContain(assumption);
  });

  it("a handful and a few are less sure than a count, a count less than a weight", () => {
    const sure = (text: string) => lotsIn(text)[0]!.sure.amount;
    expect(sure("a few carrots")).toBeLessThan(sure("carrots"));
    expect(sure("carrots")).toBeLessThan(sure("6 carrots"));
    expect(sure("6 carrots")).toBeLessThan(sure("1 lb carrots"));
  });

  it("a word for several kinds stands as the usual one, unsure, with the question", () => {
    const [lot] = lotsIn("half a cut melon");
    expect(lot).toMatchObject({ lot: { commodity: "cantaloupe", form: "cut" } });
    expect(lot!.sure.commodity).toBeLessThan(askBelow);
    expect(lot!.questions[0]).toMatchObject({
      ask: "which commodity",
      candidates: expect.arrayContaining(["honeydew"]),
    });
  });
});

describe("what cannot be taken comes back as a question, never as a lot", () => {
  it.each([
    ["0 apples", { ask: "how much", reason: "zero" }],
    ["-3 apples", { ask: "how much", reason: "negative" }],
    ["−3 apples", { ask: "how much", reason: "negative" }],
    ["1e9 apples", { ask: "how much", reason: "too large" }],
    ["1000000000 apples", { ask: "how much", reason: "too large" }],
    ["201 kg apples", { ask: "how much", reason: "too large" }],
    ["1,2,3 apples", { ask: "how much", reason: "contradictory" }],
    ["1 crate of apples", { ask: "how much", reason: "unknown unit", word: "crate" }],
    ["2 cloves of apples", { ask: "how much", reason: "unknown unit", word: "cloves" }],
    ["greens", { ask: "which commodity", word: "greens" }],
    ["2 squash", { ask: "which commodity", word: "squash" }],
    ["frozen peas", { ask: "unsafe or other", reason: "frozen", word: "frozen peas", candidates: [] }],
    ["apple juice", { ask: "unsafe or other", reason: "juice", word: "apple juice", candidates: [] }],
    ["apple pudding", { ask: "which commodity", word: "apple pudding", candidates: ["apple"] }],
    ["1 lb ground beef", { ask: "unsafe or other", reason: "no produce", word: "ground beef" }],
    ["2 cans tomatoes", { ask: "unsafe or other", reason: "tinned" }],
    ["no apples", { ask: "how much", reason: "zero" }],
    ["2 lb", { ask: "which commodity", word: "2 lb" }],
    ["xyzzy", { ask: "what is this", word: "xyzzy" }],
    ["half a dozen doorknobs", { ask: "what is this", word: "doorknobs" }],
    ["🍎🍎", { ask: "what is this", word: "🍎🍎" }],
    ["<img src=x onerror=alert(1)>", { ask: "what is this", word: "<img src=x onerror=alert(1)>" }],
  ])("%s", (text, question) => {
    expect(lotsIn(text)).toEqual([]);
    expect(questionsIn(text)).toContainEqual(expect.objectContaining(question));
  });

  it.each([
    ["3 avocados, 5 ripe", "contradictory"],
    ["2 lb apples 5 kg", "contradictory"],
  ])("%s keeps its lot and asks", (text, reason) => {
    expect(lotsIn(text)).toHaveLength(1);
    expect(questionsIn(text)).toContainEqual(expect.objectContaining({ ask: "how much", reason }));
  });

  it("a strange word beside a lot is asked about, and the lot stands", () => {
    expect(lotsIn("2 lb apples from the farm stand")).toHaveLength(1);
    expect(questionsIn("2 lb apples from the farm stand")).toContainEqual({
      ask: "what is this",
      word: "farm stand",
    });
  });

  it("one line that is not understood does not disturb its neighbours", () => {
    expect(lotsIn("2 apples\nxyzzy\n3 pears").map(({ lot }) => lot.commodity)).toEqual(["apple", "pear"]);
  });
});

describe("bounds", () => {
  it("ten thousand lines give at most sixty lots, and the rest as one question that holds it all", () => {
    const text = Array.from({ length: 10_000 }, (_, line) => `${line + 1} kg apples`).join("\n");
    const items = read(text);
    expect(items.filter((item) => item.kind === "lot")).toHaveLength(mostLots);
    const last = items.at(-1)!;
    expect(last.questions[0]).toMatchObject({ ask: "too many lots" });
    expect(text.slice(last.from, last.to)).toBe(text.slice(text.indexOf("61 kg apples")));
  });

  it("one endless line, and ten thousand lines of nonsense, come back in a bounded number of items", () => {
    expect(read("apples and ".repeat(50_000)).length).toBeLessThanOrEqual(201);
    const nonsense = "qwrtp zxcvb\n".repeat(10_000);
    const items = read(nonsense);
    expect(items.length).toBeLessThanOrEqual(201);
    expect(items.at(-1)!.to).toBe(nonsense.trimEnd().length);
  });

  it.each([undefined, null, 7, {}, [], Symbol("x")])("what is no text is an empty reading", (value) => {
    expect(readHaul(value as unknown as string, catalogue())).toEqual({ items: [] });
  });

  it("an empty text is an empty reading", () => {
    expect(read("")).toEqual([]);
    expect(read(" \n\t , and \n- \n")).toEqual([]);
  });
});
