import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readHaul } from "../../src/reading/readHaul.js";

const lots = (text: string) =>
  readHaul(text, catalogue()).items.flatMap((item) => (item.kind === "lot" ? [item] : []));
/** Pieces of each lot with what is wanted of it, in order. */
const wishes = (text: string) => lots(text).map(({ lot }) => [lot.pieces, lot.wanted]);
const asks = (text: string) => lots(text).flatMap(({ questions }) => questions.map(({ ask }) => ask));

const by = (day: string | number) => ({ when: "by", day });
const on = (day: string | number) => ({ when: "on", day });
const from = (day: string | number) => ({ when: "from", day });
const after = (day: string | number) => ({ when: "after", day });

describe("a day that a lot is wanted for is read, in English and Spanish", () => {
  it.each([
    ["3 avocados, ripe by Friday", by("friday")],
    ["3 avocados ripe by fri", by("friday")],
    ["3 avocados (we want them ready to eat by Friday night)", by("friday")],
    ["3 avocados, no later than Monday", by("monday")],
    ["3 avocados within 3 days", by(3)],
    ["3 avocados by tomorrow", by(1)],
    ["3 avocados for Sunday", on("sunday")],
    ["3 mangoes wanted in 4 days", on(4)],
    ["3 mangoes ripe in a week", on(7)],
    ["3 mangoes to eat on Wednesday", on("wednesday")],
    ["3 mangoes wanted this Tuesday", on("tuesday")],
    ["3 kiwis for 2026-06-19", on("2026-06-19")],
    ["3 pears for the day after tomorrow", on(2)],
    ["3 pears, keep until Sunday", from("sunday")],
    ["3 pears, not before Saturday", from("saturday")],
    ["3 peaches to eat after Tuesday", after("tuesday")],
    ["3 aguacates para el viernes", on("friday")],
    ["3 aguacates maduros el domingo", on("sunday")],
    ["3 aguacates, maduros para el miércoles", on("wednesday")],
    ["3 peras, las quiero para el sábado", on("saturday")],
    ["3 peras listas el lunes", on("monday")],
    ["3 duraznos maduros en 4 días", on(4)],
    ["3 duraznos para mañana", on(1)],
    ["3 duraznos para pasado mañana", on(2)],
    ["3 mangos dentro de una semana", on(7)],
    ["3 mangos a más tardar el jueves", by("thursday")],
    ["3 mangos, no antes del martes", from("tuesday")],
    ["3 mangos a partir del martes", from("tuesday")],
    ["3 mangos después del domingo", after("sunday")],
  ])("%s", (text, wanted) => {
    expect(wishes(text)).toEqual([[3, wanted]]);
    expect(asks(text)).toEqual([]);
  });

  it("says nothing of how ripe it is now, and leaves that word where it stands by itself", () => {
    expect(lots("3 avocados, ripe by Friday")[0]!.lot.ripeness).toBeUndefined();
    expect(lots("4 ripe pears for Sunday")[0]!.lot).toMatchObject({ ripeness: "ripe", wanted: on("sunday") });
  });
});

describe("parts of a lot wanted for different days", () => {
  it.each([
    [
      "3 avocados, 1 ripe by Friday, the rest later",
      [
        [2, after("friday")],
        [1, by("friday")],
      ],
    ],
    [
      "3 hard avocados, 1 ripe by Friday, the rest later",
      [
        [2, after("friday")],
        [1, by("friday")],
      ],
    ],
    [
      "3 aguacates, 1 maduro para el viernes, el resto más tarde",
      [
        [2, after("friday")],
        [1, on("friday")],
      ],
    ],
    [
      "3 avocados, 1 by Tuesday, 1 for Thursday, 1 for Saturday",
      [
        [1, by("tuesday")],
        [1, on("thursday")],
        [1, on("saturday")],
      ],
    ],
    [
      "2 avocados for Friday and 3 for Sunday",
      [
        [2, on("friday")],
        [3, on("sunday")],
      ],
    ],
    [
      "3 avocados, 1 for Friday",
      [
        [2, undefined],
        [1, on("friday")],
      ],
    ],
    [
      "3 avocados for Friday, 2 pears for Sunday",
      [
        [3, on("friday")],
        [2, on("sunday")],
      ],
    ],
    [
      "3 avocados for Friday 2 pears for Sunday",
      [
        [3, on("friday")],
        [2, on("sunday")],
      ],
    ],
  ])("%s", (text, expected) => {
    expect(wishes(text)).toEqual(expected);
    expect(asks(text)).toEqual([]);
  });
});

describe("what may mean several days is asked about, and no day is taken", () => {
  it.each([
    "3 avocados by next Friday",
    "3 avocados for the weekend",
    "3 avocados, ripe soon",
    "3 avocados, later",
    "3 avocados before Friday",
    "3 avocados on Friday",
    "3 apples from Friday",
    "3 ripe avocados by Friday",
    "For Friday: 3 avocados",
    "3 avocados in a few days",
    "3 avocados for Friday, for Sunday",
    "3 aguacates el próximo viernes",
    "3 aguacates para el fin de semana",
    "3 aguacates antes del viernes",
  ])("%s", (text) => {
    expect(lots(text).map(({ lot }) => lot.wanted)).toEqual([undefined]);
    expect(asks(text)).toContain("when wanted");
  });

  it("an amount that may be all of them or another kind's is asked about as before", () => {
    expect(asks("3 avocados, half by Friday")).toContain("how much");
  });
});

describe("words that look like a day and are none", () => {
  it.each([
    "3 apples bought on Friday",
    "3 apples from 2 days ago",
    "3 apples bought yesterday",
    "sun dried tomatoes",
    "3 apples, comprado el lunes",
  ])("%s", (text) => expect(lots(text).every(({ lot }) => lot.wanted === undefined)).toBe(true));
});
