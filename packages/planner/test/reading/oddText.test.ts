import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readHaul, type UnderstoodLot } from "../../src/reading/index.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) =>
  read(text)
    .filter((item): item is UnderstoodLot => item.kind === "lot")
    .map(({ lot }) => lot);
const questionsIn = (text: string) => read(text).flatMap((item) => item.questions);
const avocado = lotsIn("1 avocado")[0]!.grams;

describe("terminal control sequences", () => {
  it.each([
    "\u001b[0m carrots",
    "\u001b[1;31mcarrots\u001b[0m",
    "\u001b]0;title\u0007carrots",
    "\u009b0mcarrots",
  ])("%j is carrots, at its own place", (text) => {
    const [item, ...others] = read(text);
    expect(others).toEqual([]);
    expect(item).toMatchObject({ kind: "lot", typed: "carrots", from: text.indexOf("carrots") });
  });
});

describe("mark-up in the text", () => {
  it.each(["<script>alert(1)</script>", "<b>alert(1)</b>", "<img src=x onerror=alert(1)>", "<svg>(1)</svg>"])(
    "%s leaves the amount with its apples, in the words, and asks",
    (markUp) => {
      const text = `2 lb ${markUp} apples`;
      const [item, ...others] = read(text);
      expect(others).toEqual([]);
      expect(item).toMatchObject({ kind: "lot", typed: text, lot: { commodity: "apple", grams: 907.18 } });
      expect(item!.questions.length).toBeGreaterThan(0);
    },
  );

  it("parts the items of a pasted list, and gives no amount of one to another", () => {
    const lots = lotsIn("<ul><li>2 lb xyzzy</li><li>apples</li><li>3 pears</li></ul>");
    expect(lots).toMatchObject([{ commodity: "apple" }, { commodity: "pear", pieces: 3 }]);
    expect(lots[0]!.grams).toBe(lotsIn("apples")[0]!.grams);
  });
});

describe("parts of pieces", () => {
  it.each(["1.5 avocados", "1½ avocados", "one and a half avocados", "1,5 aguacates"])(
    "%s: one whole and half of one, cut",
    (text) => {
      expect(lotsIn(text)).toMatchObject([
        { commodity: "avocado", form: "whole", pieces: 1, grams: avocado },
        { commodity: "avocado", form: "cut", grams: avocado / 2 },
      ]);
      expect(lotsIn(text)[1]).not.toHaveProperty("pieces");
    },
  );

  it("the whole one may be told apart from the cut", () => {
    expect(lotsIn("1.5 avocados, 1 ripe")).toMatchObject([
      { form: "whole", pieces: 1, ripeness: "ripe" },
      { form: "cut", grams: avocado / 2 },
    ]);
  });

  it.each(["two halves of avocado", "2 halves of avocado", "two half avocados", "2 avocado halves"])(
    "%s: cut",
    (text) => {
      expect(lotsIn(text)).toMatchObject([{ commodity: "avocado", form: "cut", grams: avocado }]);
      expect(questionsIn(text)).toEqual([]);
    },
  );

  it.each(["1.5 kg avocados", "half a dozen avocados", "2-3 avocados"])("%s: whole", (text) => {
    expect(lotsIn(text)).toMatchObject([{ commodity: "avocado", form: "whole" }]);
  });
});

describe("a half behind a number", () => {
  it("belongs to it only in its own language", () => {
    expect(lotsIn("mango × 2 and medio kilo de fresas")).toMatchObject([{ pieces: 2 }, { grams: 500 }]);
    expect(lotsIn("dos y medio kilos de tomates")).toMatchObject([{ grams: 2500 }]);
    expect(lotsIn("two and half pounds of peaches")).toMatchObject([{ grams: 1133.98 }]);
  });
});

describe("thousands", () => {
  it.each([
    ["1 000 g carrots", 1000],
    ["12 050 g carrots", 12050],
    ["1\u00a0500 g carrots", 1500],
    ["1\u202f500 g carrots", 1500],
    ["2 500 g bags of carrots", 1000],
  ])("%s", (text, grams) => {
    expect(lotsIn(text)).toMatchObject([{ commodity: "carrot", grams }]);
  });
});

describe("a question about an amount", () => {
  it.each(["1e9 kg plums", "0 kg plums"])("%s quotes the amount and the name", (text) => {
    expect(questionsIn(text)).toMatchObject([{ ask: "how much", word: text }]);
  });
});
