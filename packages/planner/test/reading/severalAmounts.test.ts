import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { askBelow, readHaul, type UnderstoodLot } from "../../src/reading/index.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) =>
  read(text).flatMap((item) => (item.kind === "lot" ? [(item as UnderstoodLot).lot] : []));
const questionsIn = (text: string) => read(text).flatMap((item) => item.questions);
const asks = (text: string) =>
  questionsIn(text).flatMap((question) => (question.ask === "how much" ? [question.reason] : []));

/** Pieces and ripeness (or form) of each lot, in order. */
const briefly = (text: string) =>
  lotsIn(text).map(({ pieces, ripeness, form }) => [pieces, ripeness ?? (form === "cut" ? "cut" : "-")]);

describe("several amounts of one kind", () => {
  it.each<[string, ...[number, string][]]>([
    // The first names another state: beside it.
    ["2 ripe avocados and 1 hard", [2, "ripe"], [1, "unripe"]],
    ["3 ripe tomatoes and 2 green", [3, "ripe"], [2, "unripe"]],
    ["1 ripe avocado, 1 hard", [1, "ripe"], [1, "unripe"]],
    ["1 avocado ripe, 1 hard", [1, "ripe"], [1, "unripe"]],
    ["two hard mangoes plus four soft", [2, "unripe"], [4, "ripe"]],
    ["2 ripe and 1 hard avocados", [2, "ripe"], [1, "unripe"]],
    ["2 ripe avocados 1 hard", [2, "ripe"], [1, "unripe"]],
    ["2 ripe avocados, 1 hard, 4 very ripe", [2, "ripe"], [1, "unripe"], [4, "very ripe"]],
    ["2 ripe avocados and a hard one", [2, "ripe"], [1, "unripe"]],
    ["2 ripe avocados, 3 hard ones", [2, "ripe"], [3, "unripe"]],
    ["2 ripe avocados, no hard ones", [2, "ripe"]],
    ["1 red and 1 green pepper", [1, "-"], [1, "-"]],
    ["2 small and 3 large cabbages", [2, "-"], [3, "-"]],
    ["avocados: ripe 3, hard 2", [3, "ripe"], [2, "unripe"]],
    ["1 cut onion and 2 whole", [1, "cut"], [2, "-"]],
    ["2 aguacates maduros y 1 duro", [2, "ripe"], [1, "unripe"]],
    ["3 tomates maduros, 2 verdes", [3, "ripe"], [2, "unripe"]],
    ["3 red apples and 2 green", [3, "-"], [2, "-"]],
    ["2 manzanas rojas y 3 verdes", [2, "-"], [3, "-"]],
    ["3 green peppers, 1 red", [3, "-"], [1, "-"]],
    ["3 large carrots and 2 small", [3, "-"], [2, "-"]],
    // It names none: part of it.
    ["3 avocados, 1 ripe", [2, "-"], [1, "ripe"]],
    ["3 avocados and 1 is ripe", [2, "-"], [1, "ripe"]],
    ["3 large avocados, 1 ripe", [2, "-"], [1, "ripe"]],
    ["3 red tomatoes, 1 ripe", [2, "-"], [1, "ripe"]],
    ["5 apples, 2 red", [3, "-"], [2, "-"]],
    ["5 mangos, 2 maduros", [3, "-"], [2, "ripe"]],
    ["6 bananas, 2 of which ripe", [4, "-"], [2, "ripe"]],
    // It is told that it is among them, whatever the first says.
    ["3 ripe avocados, 1 of them hard", [2, "ripe"], [1, "unripe"]],
    ["2 avocados, both ripe", [2, "ripe"]],
    ["3 avocados, 1 ripe, the rest hard", [2, "unripe"], [1, "ripe"]],
    ["2 avocados, 1 ripe, the other hard", [1, "unripe"], [1, "ripe"]],
    // Shares of the first.
    ["4 avocados, half of them ripe", [2, "-"], [2, "ripe"]],
    ["4 avocados, 50% ripe", [2, "-"], [2, "ripe"]],
    ["4 avocados, 25 percent of them ripe", [3, "-"], [1, "ripe"]],
    ["6 tomatoes, two thirds of them green", [2, "-"], [4, "unripe"]],
  ])("%s", (text, ...expected) => {
    expect(briefly(text)).toEqual(expected);
    expect(questionsIn(text)).toEqual([]);
  });

  it.each([
    ["2 kg tomatoes, half of them ripe", [1000, 1000]],
    ["2 kg tomatoes, half of it ripe", [1000, 1000]],
    ["2 kg tomatoes, a quarter of them ripe", [1500, 500]],
    ["2 kg tomatoes, 30 % ripe", [1400, 600]],
    ["2 kg de tomates, la mitad de ellos maduros", [1000, 1000]],
    ["1 kg ripe tomatoes and 500 g green", [1000, 500]],
  ])("%s: %j g", (text, grams) => {
    expect(lotsIn(text).map((lot) => lot.grams)).toEqual(grams.map((each) => expect.closeTo(each, 1)));
    expect(questionsIn(text)).toEqual([]);
  });

  it.each([
    "3 ripe avocados, 1 ripe",
    "2 washed tomatoes, 1 cut",
    "3 ripe tomatoes, 1 washed",
    "1 avocado, 1 hard",
    "3 avocados, some ripe",
    "3 avocados, mostly ripe",
    "3 avocados, the rest hard",
    "3 avocados, half of them ripe",
    "2 kg tomatoes, half ripe",
    "3 onions, half cut",
    "3 onions, 1 soft",
    "2 avocados, ripe and hard",
    "2 each: red and green apples",
    "2 ripe avocados or 1 hard",
    "1 each ripe and hard avocados",
    "3 avocados, 1 ripe and 2 green tomatoes",
  ])("%s may be meant in two ways: asked, and the lots are unsure", (text) => {
    expect(asks(text)).toEqual(["no amount"]);
    for (const item of read(text))
      if (item.kind === "lot" && item.lot.commodity !== "tomato")
        expect(item.sure.amount).toBeLessThan(askBelow);
  });

  it.each([
    "half of the tomatoes",
    "½ pears",
    "half ripe half hard avocados",
    "2 kg tomatoes, half of the tomatoes ripe",
    "one third of the pears",
  ])("%s: half of how many is asked", (text) => expect(asks(text)).toEqual(["no amount"]));

  it("of two kinds joined by “or”, the second is asked about", () => {
    expect(lotsIn("apples or avocados").map((lot) => lot.commodity)).toEqual(["apple", "avocado"]);
    expect(asks("apples or avocados")).toEqual(["no amount"]);
    expect(asks("1 or 2 avocados")).toEqual([]);
  });

  it("half of one beside a whole one is cut, and no share", () => {
    const [ripe, hard] = lotsIn("1 ripe and half a hard avocado");
    expect(ripe).toMatchObject({ pieces: 1, ripeness: "ripe", form: "whole" });
    expect(hard).toMatchObject({ grams: ripe!.grams / 2, ripeness: "unripe", form: "cut" });
  });

  it("small ones leave large ones at their full weight", () => {
    const one = lotsIn("1 carrot")[0]!.grams;
    const [left, small] = lotsIn("3 carrots, 2 small");
    expect(left).toMatchObject({ pieces: 1, grams: one });
    expect(small!.grams).toBe(lotsIn("2 small carrots")[0]!.grams);
  });
});

describe("an amount told for each of several names", () => {
  it.each([
    ["2 each apples, pears, plums", 3, 2],
    ["2 of each: apples, pears", 2, 2],
    ["3 each of limes, lemons and mangoes", 3, 3],
    ["apples, pears and plums, 2 each", 3, 2],
    ["apples, pears: 4 each", 2, 4],
    ["2 each apples, not bananas, pears", 2, 2],
  ])("%s", (text, kinds, pieces) => {
    expect(lotsIn(text).map((lot) => lot.pieces)).toEqual(Array.from({ length: kinds }, () => pieces));
  });

  it.each([
    "1 kg each of apples and pears",
    "apples and pears 1 kg each",
    "apples and pears, 1 kg of each",
    "1 kg of apples and pears each",
  ])("%s", (text) => {
    expect(lotsIn(text)).toMatchObject([
      { commodity: "apple", grams: 1000 },
      { commodity: "pear", grams: 1000 },
    ]);
    expect(questionsIn(text)).toEqual([]);
  });

  it("ends at an amount of its own and at a full stop", () => {
    expect(lotsIn("1 kg each apples, pears, 3 limes").map((lot) => lot.grams)).toEqual([
      1000,
      1000,
      lotsIn("3 limes")[0]!.grams,
    ]);
    expect(lotsIn("2 each apples, pears; bananas")[2]).toEqual({ ...lotsIn("bananas")[0]! });
  });

  it("asks of every one when it cannot be taken", () => {
    expect(lotsIn("0 each apples, pears")).toEqual([]);
    expect(asks("0 each apples, pears")).toEqual(["zero", "zero"]);
    expect(asks("apples, pears $2 each")).toEqual(["no amount", "no amount"]);
  });
});
