import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { timeWords } from "../../src/reading/ageWords.js";
import { readHaul } from "../../src/reading/readHaul.js";
import type { UnderstoodLot } from "../../src/reading/reading.js";

/** A Thursday. */
const on = "2026-06-18";
const itemsIn = (text: string) => readHaul(text, catalogue(), on).items;
const lotsIn = (text: string) => itemsIn(text).filter((item): item is UnderstoodLot => item.kind === "lot");
const asked = (text: string) => itemsIn(text).flatMap(({ questions }) => questions.map(({ ask }) => ask));

const tables = {
  English: [
    ["today", 0],
    ["earlier today", 0],
    ["this morning", 0],
    ["yesterday", 1],
    ["since yesterday", 1],
    ["yesterday evening", 1],
    ["last night", 1],
    ["from last night", 1],
    ["the day before yesterday", 2],
    ["day before yesterday", 2],
    ["the night before last", 2],
    ["2 days ago", 2],
    ["two days ago", 2],
    ["two nights ago", 2],
    ["a day ago", 1],
    ["3 days old", 3],
    ["since 3 days ago", 3],
    ["a week ago", 7],
    ["30 hours ago", 2],
    ["since Monday", 3],
    ["on Monday", 3],
    ["since Friday", 6],
    ["on 2026-06-16", 2],
    ["since 2026-06-16", 2],
  ],
  Spanish: [
    ["hoy", 0],
    ["esta mañana", 0],
    ["ayer", 1],
    ["desde ayer", 1],
    ["ayer por la noche", 1],
    ["ayer en la tarde", 1],
    ["anoche", 1],
    ["anteayer", 2],
    ["antier", 2],
    ["antes de ayer", 2],
    ["desde antier", 2],
    ["antenoche", 2],
    ["hace 2 días", 2],
    ["hace dos días", 2],
    ["desde hace 3 días", 3],
    ["de hace 3 días", 3],
    ["hace un día", 1],
    ["hace una semana", 7],
    ["hace 30 horas", 2],
    ["desde el lunes", 3],
    ["el lunes", 3],
    ["desde el viernes", 6],
    ["desde el 2026-06-16", 2],
  ],
} as const;

describe.each([
  { language: "English", table: tables.English, cut: "200 g mango cut", whole: "200 g spinach bought" },
  {
    language: "Spanish",
    table: tables.Spanish,
    cut: "200 g de mango cortado",
    whole: "200 g de espinaca comprada",
  },
])("how long ago, in $language", ({ table, cut, whole }) => {
  it.each(table)("%s", (words, days) => {
    for (const text of [`${cut} ${words}`, `${whole} ${words}`]) {
      expect(itemsIn(text)).toHaveLength(1);
      expect(lotsIn(text)[0]!.lot).toMatchObject({ grams: 200, extraDays: days });
      expect(lotsIn(text)[0]!.questions).toEqual([]);
    }
    expect(lotsIn(`${cut} ${words}`)[0]!.lot.form).toBe("cut");
  });
});

describe("how long ago, where it is not clear", () => {
  it.each([
    "200 g cut mango since Thursday",
    "200 g cut mango last Monday",
    "200 g cut mango last week",
    "200 g cut mango a few days ago",
    "200 g cut mango a couple of days ago",
    "200 g cut mango about 3 days ago",
    "200 g cut mango several days ago",
    "200 g cut mango the other day",
    "200 g cut mango for 3 days",
    "200 g cut mango since the weekend",
    "200 g cut mango the previous evening",
    "200 g cut mango from Monday",
    "200 g cut mango on 2026-06-25",
    "watermelon, sliced last tuesday",
    "200 g de mango cortado hace unos días",
    "200 g de mango cortado hace como 3 días",
    "200 g de mango cortado hace un par de días",
    "200 g de mango cortado la semana pasada",
    "200 g de mango cortado el lunes pasado",
    "200 g de mango cortado desde el jueves",
    "200 g de mango cortado desde el fin de semana",
    "200 g de mango cortado hace tiempo",
  ])("asks, and plans nothing of it: %s", (text) => {
    expect(lotsIn(text)).toEqual([]);
    expect(asked(text)).toContain("how old");
  });

  it("asks of a weekday where the day it is now is not known", () => {
    const { items } = readHaul("200 g cut mango since Monday", catalogue());
    expect(items).toMatchObject([{ kind: "question", questions: [{ ask: "how old", since: "monday" }] }]);
  });

  it("plans what is whole all the same, and asks", () => {
    expect(lotsIn("200 g spinach bought last Tuesday")).toHaveLength(1);
    expect(asked("200 g spinach bought last Tuesday")).toEqual(["how old"]);
  });

  it("takes the most of several ages of what is cut", () => {
    expect(lotsIn("mango cut 3 days ago, bought yesterday")[0]!.lot).toMatchObject({ extraDays: 3 });
  });

  it("leaves amounts as they are beside an age", () => {
    expect(
      lotsIn("melón cortado hace 3 días, 2 manzanas").map(({ lot }) => [lot.pieces, lot.extraDays]),
    ).toEqual([
      [1, 3],
      [2, 0],
    ]);
  });

  it("never takes what is cut for cut today because of words of time that are not understood (any words)", () => {
    const words = fc.array(
      fc.constantFrom(...timeWords, "2", "three", "dos", "the", "el", "del", "for", "de"),
      {
        minLength: 1,
        maxLength: 4,
      },
    );
    const ofToday =
      /\b(?:today|hoy|this morning|this afternoon|this evening|esta manana|esta tarde|tomorrow|tonight|0)\b/;
    fc.assert(
      fc.property(words, (said) => {
        const text = `200 g cut mango ${said.join(" ")}`;
        const young = lotsIn(text).filter(({ lot, questions }) => {
          return (
            lot.form === "cut" && lot.extraDays === 0 && lot.wanted === undefined && questions.length === 0
          );
        });
        if (said.some((word) => timeWords.has(word)) && !ofToday.test(text)) expect(young).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});
