import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { askBelow, readHaul } from "../../src/reading/index.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) => read(text).flatMap((item) => (item.kind === "lot" ? [item.lot] : []));
const asks = (text: string) =>
  read(text).flatMap((item) =>
    item.questions.flatMap((question) => (question.ask === "how much" ? [question.reason] : [])),
  );

describe("figures that are no amount", () => {
  it.each([
    "apples 50%",
    "50% apples",
    "50 percent apples",
    "manzanas 50 por ciento",
    "apples 2.99",
    "apples 2,99",
    "2.99 apples",
    "apples $2",
    "apples 2 €",
    "apples @ 2",
    "5 euros apples",
    "apples 2.99/kg",
    "1.25 apples",
    "2.2 apples",
    "2.000 apples",
    "1.500 grapes",
    '6" cucumber',
    "1e-5 apples",
    "1/1000 apple",
    "1e-5 kg apples",
    "0.0001 g basil",
    "0.250 g basil",
    "0,4 g albahaca",
    "0.01 ml basil",
    "0.001 oz kale",
    "1.5 g potatoes",
    "1 g watermelon",
  ])("%s is asked about and not planned", (text) => {
    expect(lotsIn(text)).toEqual([]);
    expect(asks(text)).toEqual(["no amount"]);
  });

  it.each([
    "3 apples 2.99",
    "3 apples @ 2.99",
    "2 kg apples 3 a kilo",
    "2 kg apples $4.50",
    "2 kg apples 3.99",
  ])("%s: the amount stands, and the price is asked about", (text) => {
    expect(lotsIn(text)).toHaveLength(1);
    expect(asks(text)).toEqual(["contradictory"]);
  });

  it.each(["apples 2.99 per kg", "apples 3 per kilo", "apples 3 a kilo", "apples 2.99 a kilo"])(
    "%s: a price is not multiplied into an amount, and is asked about",
    (text) => {
      expect(asks(text)).toHaveLength(1);
      for (const item of read(text)) if (item.kind === "lot") expect(item.sure.amount).toBeLessThan(askBelow);
    },
  );

  it.each([
    ["0.75 watermelon", "watermelon"],
    ["0.5 cabbage", "cabbage"],
    ["2.5 avocados", "avocado"],
    ["1 leaf basil", "basil"],
    ["1 g basil", "basil"],
    [".5 watermelon", "watermelon"],
    ["1.25 kg apples", "apple"],
    ["2.99 kg apples", "apple"],
    ["0.25 lb mushrooms", "mushroom"],
    ['"3 apples"', "apple"],
  ])("%s is an amount all the same", (text, kind) => {
    expect(lotsIn(text)[0]).toMatchObject({ commodity: kind });
    expect(asks(text)).toEqual([]);
  });
});

describe("thousands or decimals", () => {
  it.each([
    ["1,250 kg de tomates", 1250],
    ["1.250 kg tomatoes", 1250],
    ["12,500 kg potatoes", 12500],
    ["0,250 kg apples", 250],
    ["1,250 g tomatoes", 1250],
    [".5 kg tomatoes", 500],
    ["tomatoes .25 kg", 250],
    ["1,250 lb tomatoes", undefined],
    ["1.250 lb tomatoes", 566.99],
    ["12,000 g potatoes", 12000],
    ["1,000 kg tomatoes", undefined],
    ["5,000 kg tomatoes", undefined],
  ])("%s: %s g", (text, grams) => {
    expect(lotsIn(text).map((lot) => lot.grams)).toEqual(grams === undefined ? [] : [grams]);
    expect(asks(text)).toEqual(grams === undefined ? ["too large"] : []);
  });

  it.each([
    ["1.500 g potatoes", 1500],
    ["1.500g de papas", 1500],
    ["2 x 1.500 g potatoes", 3000],
    ["1.500-2.000 g potatoes", 1750],
    ["1.500 ml blueberries", undefined],
  ])(
    "%s: a point before three figures of grams or millilitres parts thousands, and is asked about",
    (text, grams) => {
      const [item] = read(text);
      expect(item).toMatchObject({ kind: "lot", ...(grams ? { lot: { grams } } : {}) });
      expect(item!.kind === "lot" && item.sure.amount).toBeLessThan(askBelow);
      expect(asks(text)).toEqual(["no amount"]);
    },
  );
});

describe("what did not come home", () => {
  it.each([
    ["apples, not pears", "not pears"],
    ["apples, not the pears", "not the pears"],
    ["apples not 3 pears", "not 3 pears"],
    ["apples without pears", "without pears"],
    ["apples instead of pears", "instead of pears"],
    ["apples w/o pears", "w/o pears"],
    ["apples rather than pears", "rather than pears"],
    ["apples but no pears", "no pears"],
    ["apples, except ripe pears", "except ripe pears"],
    ["apples, not paers", "not paers"],
    ["manzanas, sin peras", "sin peras"],
    ["manzanas en vez de peras", "en vez de peras"],
  ])("%s: the pears are not planned", (text, word) => {
    expect(lotsIn(text)).toEqual(lotsIn(text.slice(0, text.search(/[ ,]/))).map((lot) => ({ ...lot })));
    expect(read(text).flatMap((item) => item.questions)).toEqual([{ ask: "how much", reason: "zero", word }]);
  });

  it("reaches over “or”, not over a comma", () => {
    expect(lotsIn("apples, not pears or plums, limes").map((lot) => lot.commodity)).toEqual([
      "apple",
      "lime",
    ]);
  });

  it.each([
    ["spinach, not washed", "spinach"],
    ["avocados, not ripe", "avocado"],
    ["carrots without tops", "carrot"],
  ])("%s is a state", (text, kind) => {
    expect(lotsIn(text)).toMatchObject([{ commodity: kind }]);
    expect(read(text)[0]!.questions).toEqual([]);
  });

  it("denies nothing where no name follows", () => {
    expect(lotsIn("2 apples, not sure")).toMatchObject([{ pieces: 2 }]);
    expect(read("2 apples, not sure").flatMap((item) => item.questions)).toEqual([
      { ask: "what is this", word: "not sure" },
    ]);
  });
});

describe("leaves left on", () => {
  it.each([
    "carrots with leaves",
    "beets with greens",
    "1 bunch beets tops on",
    "kohlrabi with leaves",
    "bunched radishes",
  ])("%s: they draw water out of it", (text) => expect(lotsIn(text)).toMatchObject([{ tops: true }]));

  it.each([
    "celery with leaves",
    "apio con hojas",
    "fennel with leaves",
    "lemons with leaves",
    "cauliflower with leaves on",
  ])("%s: nothing to twist off", (text) => expect(lotsIn(text)).toMatchObject([{ tops: false }]));
});

describe("names that must be known", () => {
  it.each([
    ["1 bunch rapini", "broccoli-rabe"],
    ["ramps", "ramps"],
    ["the rest hard", undefined],
  ])("%s", (text, kind) => {
    expect(lotsIn(text).map((lot) => lot.commodity)).toEqual(kind ? [kind] : []);
  });
});
