import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readHaul } from "../../src/reading/readHaul.js";
import type { UnderstoodLot } from "../../src/reading/reading.js";

/** A Friday. */
const on = "2026-06-12";
const itemsIn = (text: string) => readHaul(text, catalogue(), on).items;
const lotsIn = (text: string) => itemsIn(text).filter((item): item is UnderstoodLot => item.kind === "lot");
const asked = (text: string) => itemsIn(text).flatMap(({ questions }) => questions.map(({ ask }) => ask));

describe("what is cut, with words beside it that may tell when", () => {
  it.each([
    "cut melon 9/6",
    "cut melon 9-6",
    "9/6 cut melon",
    "6/9 cut melon",
    "cut melon 9",
    "cut melon (9)",
    "cut melon 48h",
    "cut melon 48 h",
    "cut melon (3d)",
    "cut melon 2 wks old",
    "cut melon on 9 June",
    "9 June cut melon",
    "cut melon Jun 9",
    "old cut melon",
    "Monday's cut melon",
    "Mondays cut melon",
    "cut melon Mon",
    "cut melon Monday",
    "cut melon on Monday",
    "cut melon kept from Monday",
    "cut melon ages ago",
    "cut melon, 3 days in fridge",
    "cut melon, been in the fridge since Monday",
    "week-old cut melon",
    "cut melon, flurbs",
    "opened melon, old",
    "leftover watermelon, old",
    "half a melon, old",
    "piña picada del 9",
    "piña picada 9/6",
    "melón cortado el 9 de junio",
    "melón cortado 9 jun",
    "melón cortado (3d)",
    "melón cortado 48 h",
    "melón cortado viejo",
    "melón cortado del lunes pasado",
    "melón cortado lun",
    "melón cortado hace siglos",
    "melón cortado, 3 días en la nevera",
    "melón empezado, viejo",
    "sobras de sandía del 9",
    "sobras de sandía",
    "el resto del melón",
    "leftover watermelon",
    "200 g leftover cut melon",
    "precut melon",
    "pre-cut melon 200 g",
  ])("asks how old it is, and plans nothing of it: %s", (text) => {
    expect(lotsIn(text)).toEqual([]);
    expect(asked(text)).toContain("how old");
  });

  it.each([
    ["cut melon and sliced tomatoes 3 days ago", "tomato", 3],
    ["sliced tomatoes 3 days ago and cut melon", "tomato", 3],
    ["melón cortado y tomates picados hace 3 días", "tomato", 3],
    ["cut melon, spinach bought yesterday", "spinach", 1],
  ])("asks it of what is cut where a time is told of another lot: %s", (text, commodity, extraDays) => {
    expect(lotsIn(text).map(({ lot }) => [lot.commodity, lot.extraDays])).toEqual([[commodity, extraDays]]);
    expect(asked(text)).toContain("how old");
  });

  it("leaves alone what is whole, and what is parted from it by another lot", () => {
    expect(lotsIn("2 apples, detergent")).toHaveLength(1);
    expect(lotsIn("cut melon, 2 apples, flurbs").map(({ lot }) => lot.commodity)).toEqual([
      "cantaloupe",
      "apple",
    ]);
  });

  it.each([
    ["200 g cut melon", 200],
    ["cut melon 200 g", 200],
    ["sliced mushrooms, 8 oz", 226.8],
    ["2 x 200 g cut melon", 400],
    ["1/2 watermelon", 3000],
    ["200 g de melón cortado", 200],
    ["melón cortado, 1/2 kg", 500],
  ])("reads amounts as before: %s", (text, grams) => {
    expect(lotsIn(text)).toMatchObject([{ lot: { grams, form: "cut" } }]);
  });
});

describe("what is cut, without a word of time", () => {
  it.each([
    "cut melon",
    "melón cortado",
    "leftover half onion",
    "200 g leftover pineapple",
    "half a melon",
    "200 g cut mango by Friday",
  ])("is planned, and said to be taken for cut today: %s", (text) => {
    expect(lotsIn(text)[0]!.assumed).toContain("cut today");
    expect(lotsIn(text)[0]!.lot).toMatchObject({ form: "cut", extraDays: 0 });
  });

  it.each(["cut melon today", "melón cortado hoy", "cut melon 2 days ago", "2 whole apples", "spinach"])(
    "takes nothing for granted where the time was told, or nothing is cut: %s",
    (text) => expect(lotsIn(text)[0]!.assumed).not.toContain("cut today"),
  );
});

describe("leftovers and pieces", () => {
  it.each([
    ["sobras de sandía de hoy", "watermelon", 0],
    ["las sobras de la sandía de ayer", "watermelon", 1],
    ["restos de melón de ayer", "cantaloupe", 1],
    ["el resto del melón de hoy", "cantaloupe", 0],
    ["leftovers of watermelon from yesterday", "watermelon", 1],
    ["leftovers of pineapple", "pineapple", 0],
  ])("%s: one lot, cut, its amount asked", (text, commodity, extraDays) => {
    expect(lotsIn(text)).toMatchObject([{ lot: { commodity, form: "cut", extraDays } }]);
    expect(asked(text)).toContain("how much");
  });

  it.each([
    "pedazo de sandía",
    "pedazos de sandía",
    "trozo de sandía",
    "trozos de melón",
    "rebanada de sandía",
    "rebanadas de sandía",
    "piece of watermelon",
    "pieces of watermelon",
    "slice of watermelon",
    "slices of watermelon",
  ])("%s: never a whole one", (text) => {
    expect(lotsIn(text)).toEqual([]);
    expect(asked(text)).toEqual(["how much"]);
  });

  it("of what is light, the usual amount is taken, cut", () => {
    expect(lotsIn("trozos de manzana")).toMatchObject([{ lot: { commodity: "apple", form: "cut" } }]);
  });
});

describe("any words around something cut", () => {
  const unread = fc.oneof(
    fc.constantFrom(
      ..."old viejo Mon Monday's lun junio June jun sept wks wk h d hr ages ago fridge nevera".split(" "),
    ),
    fc.constantFrom("9/6", "09.06", "9-6", "12/06/26", "48h", "3d", "(3d)", "del 9", "on 9", "vzqk"),
    fc.string({ unit: fc.constantFrom(..."bcdfghjkqvwxz"), minLength: 5, maxLength: 8 }),
  );
  const filler = fc.constantFrom(
    "",
    "the",
    "our",
    "some",
    "nice",
    "la",
    "el",
    "fresh",
    "with",
    "and",
    "y",
    ",",
    "de",
  );
  const cut = fc.constantFrom(
    "cut melon",
    "melón cortado",
    "200 g cut melon",
    "opened melon",
    "sobras de melón",
  );

  it("hold it back, or it is not of today", () => {
    fc.assert(
      fc.property(cut, filler, unread, filler, fc.boolean(), (what, one, word, other, ahead) => {
        const said = [one, word, other].join(" ");
        const text = ahead ? `${said} ${what}` : `${what} ${said}`;
        const young = lotsIn(text).filter(({ lot }) => lot.form === "cut" && lot.extraDays === 0);
        expect(young, text).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });

  it("give it no count that was a number of days or a day", () => {
    const tail = fc.constantFrom(
      "",
      "h",
      "d",
      " days",
      " días",
      "/6",
      " june",
      " de junio",
      " old",
      " in fridge",
    );
    fc.assert(
      fc.property(cut, fc.integer({ min: 1, max: 60 }), tail, (what, number, behind) => {
        const lots = lotsIn(`${what} ${number}${behind}`).filter(({ lot }) => lot.form === "cut");
        for (const { lot } of lots) expect(lot.extraDays).toBe(number);
      }),
    );
  });
});
