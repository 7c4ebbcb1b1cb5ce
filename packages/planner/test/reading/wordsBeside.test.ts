import { catalogue, nameIndex } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { askBelow, readHaul, type UnderstoodLot } from "../../src/reading/index.js";
import { otherFoods } from "../../src/reading/otherFoods.js";
import { shapeWords } from "../../src/reading/shapes.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) => read(text).filter((item): item is UnderstoodLot => item.kind === "lot");
const questionsIn = (text: string) => read(text).flatMap((item) => [...item.questions]);
const unitGrams = (kind: string, name: string) =>
  catalogue()
    .commodities.get(kind)!
    .household.units.find((unit) => unit.name === name)!.grams;

describe("a package that the kind has a weight for is one of it, whole and unasked", () => {
  it.each([
    ["bagged baby carrots", "baby-carrot", "bag", false],
    ["kale, bagged", "kale", "bag", false],
    ["bagged spinach", "spinach", "bag", false],
    ["bagged spinach, washed", "spinach", "bag", true],
    ["espinaca lavada en bolsa", "spinach", "bag", true],
    ["tomatoes in a plastic bag", "tomato", "bag", false],
    ["strawberries in a punnet", "strawberry", "clamshell", false],
    ["strawberries in a tray", "strawberry", "clamshell", false],
    ["fresas en bandeja", "strawberry", "clamshell", false],
  ])("%s", (text, commodity, unit, washed) => {
    expect(lotsIn(text)).toMatchObject([
      { lot: { commodity, washed, form: "whole", grams: unitGrams(commodity, unit) } },
    ]);
    expect(questionsIn(text)).toEqual([]);
  });
});

describe("a package of no known size is the usual amount, taken for granted and less sure", () => {
  it.each([
    ["grapes in a clamshell", "grapes", "grape", "whole"],
    ["fresh cut pineapple in a tub", "pineapple", "pineapple", "cut"],
    ["apples in a box", "apples", "apple", "whole"],
    ["boxed apples", "apples", "apple", "whole"],
    ["cherries in a carton", "cherries", "cherry", "whole"],
    ["uvas en caja", "uvas", "grape", "whole"],
    ["pears in a container", "pears", "pear", "whole"],
  ])("%s", (text, bare, commodity, form) => {
    const [lot, ...others] = lotsIn(text);
    expect(others).toEqual([]);
    expect(lot).toMatchObject({ lot: { commodity, form, grams: lotsIn(bare)[0]!.lot.grams } });
    expect(lot!.assumed).toContain("usual amount");
    expect(lot!.sure.amount).toBeLessThan(lotsIn(bare)[0]!.sure.amount);
    expect(lot!.sure.amount).toBeLessThan(askBelow);
    expect(questionsIn(text)).toMatchObject([{ ask: "how much", reason: "no amount" }]);
  });
});

describe("a package beside an amount is only a package", () => {
  it.each([
    ["5 oz baby-leaf spinach washed in a clamshell", { commodity: "spinach", grams: 141.75, washed: true }],
    ["5 oz baby-leaf spinach, washed, in a clamshell", { commodity: "spinach", grams: 141.75, washed: true }],
    ["2 lb grapes in a box", { commodity: "grape", grams: 907.18 }],
    ["3 apples in a bag", { commodity: "apple", pieces: 3 }],
    ["3 bagged apples", { commodity: "apple", pieces: 3 }],
    ["2 bags of bagged spinach", { commodity: "spinach", grams: 2 * unitGrams("spinach", "bag") }],
  ])("%s", (text, lot) => {
    expect(lotsIn(text)).toMatchObject([{ lot }]);
    expect(questionsIn(text)).toEqual([]);
  });

  it("goes with the name before it", () => {
    expect(lotsIn("grapes in a clamshell strawberries in a punnet 2 pears")).toMatchObject([
      { lot: { commodity: "grape" } },
      { lot: { commodity: "strawberry", grams: unitGrams("strawberry", "clamshell") } },
      { lot: { commodity: "pear", pieces: 2 } },
    ]);
  });
});

describe("Spanish words for how it came", () => {
  it.each([
    ["tomates en rama", { commodity: "tomato" }],
    ["1 kg de tomates en racimo", { commodity: "tomato", grams: 1000 }],
    ["habas desgranadas", { commodity: "fava-bean", form: "cut" }],
    ["chícharos desgranados", { commodity: "pea-in-pod", form: "cut" }],
    ["sandía sin semillas", { commodity: "watermelon", form: "whole" }],
    ["hojas de cilantro", { commodity: "cilantro", form: "whole" }],
  ])("%s", (text, lot) => {
    expect(lotsIn(text)).toMatchObject([{ lot }]);
    expect(questionsIn(text)).toEqual([]);
  });
});

describe("shapes say that it is cut, and are no kind", () => {
  it.each([
    ["peeled butternut squash cubes", "winter-squash"],
    ["diced mango cubes", "mango"],
    ["2 cups mango chunks", "mango"],
    ["pineapple rings", "pineapple"],
    ["pineapple spears", "pineapple"],
    ["lemon wedges", "lemon"],
    ["8 oz celery sticks", "celery"],
    ["carrot batons", "carrot"],
    ["broccoli florets", "broccoli"],
    ["mango pieces", "mango"],
    ["sweet pepper strips", "sweet-pepper"],
    ["1 wedge of cabbage", "cabbage"],
    ["cubos de mango", "mango"],
    ["piña en trozos", "pineapple"],
    ["300 g de rodajas de piña", "pineapple"],
    ["tiras de pimiento", "sweet-pepper"],
  ])("%s", (text, commodity) => {
    expect(lotsIn(text)).toMatchObject([{ lot: { commodity, form: "cut" } }]);
    expect(questionsIn(text)).toEqual([]);
  });

  it("behind the name of any kind they make one lot of that kind, cut", () => {
    const words = shapeWords.map(([, all]) => all.split(" ")[1]!);
    for (const { id, names } of catalogue().commodities.values()) {
      const alone = lotsIn(names.en.one).map(({ lot }) => lot.commodity);
      for (const word of words)
        expect(
          lotsIn(`${names.en.one} ${word}`).map(({ lot }) => [lot.commodity, lot.form]),
          `${id} ${word}`,
        ).toEqual(alone.map((kind) => [kind, "cut"]));
    }
  });

  it.each([
    "4 apple slices",
    "2 slices of watermelon",
    "3 carrot sticks",
    "5 pineapple spears",
    "3 mango pieces",
  ])("%s: nobody knows how much that is", (text) => {
    expect(lotsIn(text)).toEqual([]);
    expect(questionsIn(text)).toMatchObject([{ ask: "how much", reason: "unknown unit" }]);
  });

  it.each([
    ["2 sticks of celery", { commodity: "celery", pieces: 2, form: "whole" }],
    ["3 celery sticks", { commodity: "celery", pieces: 3, form: "whole" }],
    ["6 asparagus spears", { commodity: "asparagus", pieces: 6, form: "whole" }],
    ["asparagus spears", { commodity: "asparagus", form: "whole", grams: unitGrams("asparagus", "bunch") }],
    ["2 pieces of ginger", { commodity: "ginger", pieces: 2, form: "whole" }],
  ])("%s is a unit of the kind", (text, lot) => {
    expect(lotsIn(text)).toMatchObject([{ lot }]);
  });
});

describe("another part of the plant is no kind", () => {
  it.each(
    (
      "sweet potato leaves|sweet potato greens|2 cups cassava leaves|casava leaves|taro leaves|taro-leaves|pumpkin leaves|banana leaf|" +
      "celery leaves|apricot kernels|corn kernels|banana blossom|orange peel|lemon zest|leaves of taro|hojas de yuca|5 hojas de rábano|semillas de granada|cáscara de naranja"
    ).split("|"),
  )("%s: asked", (text) => {
    expect(lotsIn(text)).toEqual([]);
    const [question, ...others] = questionsIn(text);
    expect(others).toEqual([]);
    expect(question).toMatchObject({ ask: "what is this" });
  });

  it("whatever the kind, unless that part is what is eaten of it or the whole is a name", () => {
    const eatenAsLeaf = new Set(["leaf", "head", "herb"]);
    for (const { id, names, organ } of catalogue().commodities.values()) {
      if (eatenAsLeaf.has(organ)) continue;
      for (const { lot } of lotsIn(`2 cups ${names.en.one} leaves`))
        expect(lot.commodity, names.en.one).not.toBe(id);
      for (const { lot } of lotsIn(`hojas de ${names.es.one}`))
        expect(lot.commodity, names.es.one).not.toBe(id);
    }
  });

  it.each([
    ["beet greens", "beet-greens"],
    ["turnip tops", "turnip-greens"],
    ["hojas de betabel", "beet-greens"],
    ["zucchini flowers", "squash-blossom"],
    ["flor de calabaza", "squash-blossom"],
    ["bay leaves", "bay-leaf"],
    ["spinach leaves", "spinach"],
    ["kale greens", "kale"],
    ["mint leaves", "mint"],
    ["cabbage leaves", "cabbage"],
    ["oak leaf lettuce", "leaf-lettuce"],
    ["parsley stems", "parsley"],
  ])("%s is the kind itself, or a kind by name", (text, kind) => {
    expect(lotsIn(text).map(({ lot }) => lot.commodity)).toEqual([kind]);
    expect(questionsIn(text)).toEqual([]);
  });

  it.each([
    ["10 basil leaves", 10],
    ["5 hojas de albahaca", 5],
    ["5 leaves of basil", 5],
  ])("%s: leaves are counted", (text, count) => {
    expect(lotsIn(text)).toMatchObject([
      { lot: { commodity: "basil", grams: count * unitGrams("basil", "leaf") } },
    ]);
  });

  it.each(["radishes with leaves", "carrot tops on", "1 bunch beets with greens"])(
    "%s still has them on",
    (text) => {
      expect(lotsIn(text)).toMatchObject([{ lot: { tops: true } }]);
    },
  );
});

describe("foods that are no kind here are never turned into one", () => {
  it.each(
    "2 savory|winter savory|black sapote|zapote negro|horned melon|2 mitsuba|2 cups olives|black olives|aceitunas|calamondins|salak|snake fruit|black beans|dewberries".split(
      "|",
    ),
  )("%s", (text) => {
    expect(lotsIn(text)).toEqual([]);
    expect(questionsIn(text)).toMatchObject([{ ask: "what is this" }]);
  });

  it("none of them is the name of a kind", () => {
    const { byFolded } = nameIndex(catalogue());
    expect(otherFoods.filter((name) => byFolded.has(name) || byFolded.has(`${name}s`))).toEqual([]);
  });

  it("leaves their neighbours alone", () => {
    expect(lotsIn("olives, 3 apples and taro leaves").map(({ lot }) => lot.commodity)).toEqual(["apple"]);
  });
});
