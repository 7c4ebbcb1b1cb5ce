import { catalogue, nameIndex } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readHaul } from "../../src/reading/index.js";
import { noProduceNames } from "../../src/reading/noProduceWords.js";

const bundled = catalogue();
const read = (text: string) => readHaul(text, bundled).items;

describe("what is no fruit or vegetable", () => {
  it("has no name that the catalogue has, in one or in many", () => {
    const { byFolded } = nameIndex(bundled);
    const both = noProduceNames.filter((name) =>
      [name, `${name}s`, `${name}es`].some((each) => byFolded.has(each)),
    );
    expect(both).toEqual([]);
  });

  it.each([
    ["6 huevos", "huevos"],
    ["eggs", "eggs"],
    ["1 gallon milk", "milk"],
    ["tortillas", "tortillas"],
    ["tortillas de maíz", "tortillas de maíz"],
    ["corn tortillas", "corn tortillas"],
    ["2 cervezas", "cervezas"],
    ["3 lb chicken thighs", "chicken thighs"],
    ["pan", "pan"],
  ])("%s is told to be none, by its name, and no kind is suggested", (text, word) => {
    expect(read(text)).toMatchObject([
      {
        kind: "question",
        typed: text,
        questions: [{ ask: "unsafe or other", reason: "no produce", word, candidates: [] }],
      },
    ]);
  });

  it.each([
    ["eggplant", "eggplant"],
    ["butter beans", "lima-bean"],
    ["sugar snap peas", "sugar-snap-pea"],
    ["water spinach", "water-spinach"],
    ["butter lettuce", "leaf-lettuce"],
    ["cerezas", "cherry"],
  ])("%s is a kind although it begins so, or nearly so", (text, commodity) => {
    expect(read(text)).toMatchObject([{ kind: "lot", lot: { commodity } }]);
  });

  it("beside produce it takes nothing of it along", () => {
    expect(read("milk, 3 apples and tortillas")).toMatchObject([
      { questions: [{ reason: "no produce" }] },
      { lot: { commodity: "apple", pieces: 3 } },
      { questions: [{ reason: "no produce" }] },
    ]);
  });

  it("right behind one thing's name it may be the second half of another", () => {
    expect(read("apple butter")).toMatchObject([
      { questions: [{ ask: "which commodity", word: "apple butter", candidates: ["apple"] }] },
    ]);
  });

  it.each(["quesadillas", "yerbamate", "turkeys"])(
    "no kind is suggested for %s, which shares little with any",
    (text) => {
      const candidates = read(text).flatMap(({ questions }) =>
        questions.flatMap((question) => ("candidates" in question ? question.candidates : [])),
      );
      expect(candidates).toEqual([]);
    },
  );
});
