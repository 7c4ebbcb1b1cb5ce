import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { type NotKept, notKept, readHaul } from "../../src/reading/index.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const reasonsIn = (text: string) =>
  read(text).flatMap((item) =>
    item.questions.flatMap((question) => (question.ask === "unsafe or other" ? [question.reason] : [])),
  );
const kindsIn = (text: string) =>
  read(text).flatMap((item) => (item.kind === "lot" ? [item.lot.commodity] : []));

const told: [string, NotKept][] = [
  ["200 g bean sprouts", "raw sprouts"],
  ["bean-sprouts", "raw sprouts"],
  ["beansprouts", "raw sprouts"],
  ["alfalfa sprouts", "raw sprouts"],
  ["broccoli sprouts", "raw sprouts"],
  ["raw sprouts", "raw sprouts"],
  ["germinados de soja", "raw sprouts"],
  ["germinado de alfalfa 100 g hace 2 días", "raw sprouts"],
  ["germinados", "raw sprouts"],
  ["brotes de alfalfa", "raw sprouts"],
  ["mouldy strawberries", "mouldy"],
  ["strawberries, a bit moldy", "mouldy"],
  ["fresas mohosas", "mouldy"],
  ["moldy carrots", "mouldy firm"],
  ["half a mouldy cabbage", "mouldy firm"],
  ["rotten tomatoes", "rotten"],
  ["tomatoes, rotten", "rotten"],
  ["3 tomatoes, 1 rotten", "rotten"],
  ["tomates podridos", "rotten"],
  ["slimy lettuce", "slimy"],
  ["fermenting grapes", "fermenting"],
  ["green potatoes", "green potatoes"],
  ["2 lb potatoes (gone green)", "green potatoes"],
  ["papas verdes", "green potatoes"],
  ["sprouted potatoes", "sprouted potatoes"],
  ["papas germinadas", "sprouted potatoes"],
  ["sprouted onions", "sprouted"],
  ["wild mushrooms", "wild mushrooms"],
  ["2 lb of wild mushrooms", "wild mushrooms"],
  ["gathered mushrooms", "wild mushrooms"],
  ["mushrooms (foraged)", "wild mushrooms"],
  ["foraged chanterelles", "wild mushrooms"],
  ["setas silvestres", "wild mushrooms"],
  ["hongos del monte", "wild mushrooms"],
  ["hongos de monte", "wild mushrooms"],
  ["hongos que junté", "wild mushrooms"],
  ["mushrooms we picked", "wild mushrooms"],
  ["300 g mushrooms that I picked", "wild mushrooms"],
  ["setas del campo", "wild mushrooms"],
  ["setas de monte", "wild mushrooms"],
  ["rhubarb leaves", "rhubarb leaves"],
  ["hojas de ruibarbo", "rhubarb leaves"],
  ["garlic in oil", "in oil"],
  ["garlic in olive oil", "in oil"],
  ["ajo en aceite", "in oil"],
  ["cooked beets", "cooked"],
  ["carrots, frozen", "frozen"],
  ["2 cans tomatoes", "tinned"],
  ["sun-dried tomatoes", "dried"],
  ["apple juice", "juice"],
  ["pickled cucumbers", "pickled"],
  ["strawberry jam", "made from it"],
];

describe("what is unsafe, or not kept as fresh produce, is told and never planned", () => {
  it.each(told)("%s: %s", (text, reason) => {
    expect(kindsIn(text)).toEqual([]);
    expect(reasonsIn(text)).toEqual([reason]);
  });

  it("never offers another kind for sprouts grown from seed", () => {
    for (const text of ["bean sprouts", "alfalfa sprouts", "mung bean sprouts"])
      expect(read(text)[0]!.questions).toEqual([
        { ask: "unsafe or other", reason: "raw sprouts", word: text, candidates: [] },
      ]);
  });

  it("offers the kind only where what is left may be planned", () => {
    const candidates = (text: string) =>
      read(text).flatMap((item) =>
        item.questions.flatMap((question) => ("candidates" in question ? question.candidates : [])),
      );
    expect(candidates("green potatoes")).toEqual(["potato"]);
    expect(candidates("moldy carrots")).toEqual(["carrot"]);
    expect(candidates("rotten tomatoes")).toEqual([]);
    expect(candidates("wild mushrooms")).toEqual([]);
  });

  it("tells the gravest of several reasons", () => {
    expect(reasonsIn("frozen rotten tomatoes")).toEqual(["rotten"]);
  });

  it("leaves its neighbours alone", () => {
    expect(kindsIn("200 g bean sprouts, 3 apples")).toEqual(["apple"]);
    expect(kindsIn("bean sprouts 3 apples")).toEqual(["apple"]);
    expect(kindsIn("apples, rotten tomatoes, pears")).toEqual(["apple", "pear"]);
    expect(kindsIn("apples, oil")).toEqual(["apple"]);
  });

  it.each([
    ["green apples", "apple"],
    ["Brussels sprouts", "brussels-sprouts"],
    ["purple sprouting broccoli", "broccoli"],
    ["wild strawberries", "strawberry"],
    ["apples we picked", "apple"],
    ["tomates del campo", "tomato"],
    ["mushrooms", "mushroom"],
    ["potatoes", "potato"],
  ])("%s is still fresh produce", (text, kind) => {
    expect(kindsIn(text)).toEqual([kind]);
    expect(reasonsIn(text)).toEqual([]);
  });

  it("names only safety entries that the catalogue has", () => {
    const ids = [...catalogue().safety.keys()];
    for (const { safety } of Object.values(notKept)) if (safety) expect(ids).toContain(safety);
  });
});
