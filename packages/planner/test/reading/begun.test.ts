import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readHaul, type UnderstoodLot } from "../../src/reading/index.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) => read(text).filter((item): item is UnderstoodLot => item.kind === "lot");
const asked = (text: string) => read(text).flatMap(({ questions }) => questions.map(({ ask }) => ask));

describe("a piece that was begun is cut, and never planned as whole", () => {
  it.each([
    "an opened melon",
    "a started melon",
    "a half-eaten cantaloupe",
    "a partly eaten watermelon",
    "half-used cabbage",
    "the rest of a melon",
    "what's left of a watermelon",
    "some leftover watermelon from today",
    "cantaloupe that I cut open this morning",
    "un melón empezado",
    "melón abierto",
    "1 sandía a medias",
    "lo que queda de un melón",
    "una piña ya empezada",
  ])("%s", (text) => {
    const [lot, more] = lotsIn(text);
    expect(lot!.lot.form).toBe("cut");
    expect(more).toBeUndefined();
  });

  it("counts the days since then, where they are told", () => {
    expect(lotsIn("melon, cut yesterday")[0]!.lot).toMatchObject({ form: "cut", extraDays: 1 });
    expect(lotsIn("una sandía empezada ayer")[0]!.lot).toMatchObject({ form: "cut", extraDays: 1 });
    expect(lotsIn("a melon I opened 3 days ago")[0]!.lot).toMatchObject({ form: "cut", extraDays: 3 });
  });

  it("asks about the words beside it that say nothing known", () => {
    expect(asked("watermelon, sliced oddly")).toContain("what is this");
  });

  it("takes what a bag or bunch holds for whole, though it was opened", () => {
    for (const text of ["an opened bag of potatoes", "bag of carrots, opened", "bolsa de manzanas abierta"])
      expect(lotsIn(text)[0]!.lot.form).toBe("whole");
  });

  it("parts what was begun from the rest", () => {
    expect(lotsIn("2 cantaloupes, 1 opened").map(({ lot }) => [lot.form, lot.pieces])).toEqual([
      ["whole", 1],
      ["cut", 1],
    ]);
  });

  it("asks what a piece of a melon weighs, and takes it for no whole one", () => {
    for (const text of ["a piece of watermelon", "un trozo de sandía", "2 pieces of honeydew"])
      expect(asked(text)).toEqual(["how much"]);
    expect(lotsIn("3 pieces of apple")).toHaveLength(1);
  });
});

describe("a degree before a state counts nothing", () => {
  it.each([
    ["6 bananas, a bit green", "banana", 6, "turning"],
    ["6 bananas, a little green", "banana", 6, "turning"],
    ["6 bananas a little bit green", "banana", 6, "turning"],
    ["3 mangos un poco verdes", "mango", 3, "turning"],
    ["3 mangos algo verdes", "mango", 3, "turning"],
    ["3 mangos bastante verdes", "mango", 3, "unripe"],
    ["2 avocados, quite hard", "avocado", 2, "unripe"],
    ["2 avocados, a bit soft", "avocado", 2, "ripe"],
  ])("%s", (text, commodity, pieces, ripeness) => {
    expect(lotsIn(text).map(({ lot }) => lot)).toMatchObject([{ commodity, pieces, ripeness }]);
    expect(asked(text)).toEqual([]);
  });

  it("stays a size before a name", () => {
    expect(lotsIn("a little green apple")[0]!.lot).toMatchObject({ commodity: "apple", pieces: 1 });
  });

  it("asks nothing about “the other”", () => {
    expect(lotsIn("the other mango by sunday")[0]!.lot.wanted).toEqual({ when: "by", day: "sunday" });
    expect(asked("the other mango by sunday")).toEqual([]);
  });
});
