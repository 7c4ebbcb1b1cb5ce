import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { happenedFrom } from "../../src/carryOn/checkHappened.js";
import { readHappened } from "../../src/carryOn/readHappened.js";
import { InputError } from "../../src/problem/inputError.js";
import { accountContext } from "./accountContext.js";

const read = (text: string) => readHappened(text, accountContext);
const lots = (text: string) => read(text).lots;

describe("readHappened", () => {
  it.each<[string, Record<string, unknown>[]]>([
    ["ate 2 apples", [{ lot: "apple", eaten: { pieces: 2 } }]],
    ["We ate 200 g kale.", [{ lot: "kale", eaten: { grams: 200 } }]],
    ["threw out the spinach", [{ lot: "lot-2", thrownOut: "all" }]],
    ["threw out 1 apple yesterday", [{ lot: "apple", thrownOut: { pieces: 1 } }]],
    ["threw the kale away", [{ lot: "kale", thrownOut: "all" }]],
    ["avocados ripe", [{ lot: "avocado", ripeness: "ripe" }]],
    ["the avocados are not ripe yet", [{ lot: "avocado", ripeness: "unripe" }]],
    ["the tomatoes are very ripe now", [{ lot: "tomato", ripeness: "very ripe" }]],
    ["gave away 3 apples", [{ lot: "apple", givenAway: { pieces: 3 } }]],
    ["ate half of the melon", [{ lot: "cantaloupe", eaten: { share: 0.5 } }]],
    ["did not eat the kale", [{ lot: "kale", eaten: "none" }]],
    ["4 apples left", [{ lot: "apple", left: { pieces: 4 } }]],
    ["kale still good", [{ lot: "kale", seenGood: true }]],
    ["moved the tomatoes to the counter", [{ lot: "tomato", place: "counter" }]],
    ["put the kale in the fridge in a paper bag", [{ lot: "kale", place: "shelf", wrap: "paper bag" }]],
    [
      "moved the tomatoes to the left drawer yesterday",
      [{ lot: "tomato", place: "left-drawer", since: "2026-06-15" }],
    ],
    ["cut the melon", [{ lot: "cantaloupe", cut: "day not told" }]],
    ["corté el melón", [{ lot: "cantaloupe", cut: "day not told" }]],
    ["cut the melon today", [{ lot: "cantaloupe", cut: "2026-06-16" }]],
    ["ate 2 portions of cantaloupe", [{ lot: "cantaloupe", eaten: { portions: 2 } }]],
    ["ate 0 portions of kale", [{ lot: "kale", eaten: "none" }]],
    ["ate half a portion of the kale", [{ lot: "kale", eaten: { portions: 0.5 } }]],
    ["comí 2 porciones de melón", [{ lot: "cantaloupe", eaten: { portions: 2 } }]],
    ["comimos una porción de espinaca", [{ lot: "spinach", eaten: { portions: 1 } }]],
    ["3 servings of kale left", [{ lot: "kale", left: { portions: 3 } }]],
    ["sliced the melon yesterday", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["chopped the kale today", [{ lot: "kale", cut: "2026-06-16" }]],
    ["opened the melon yesterday", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["partí el melón ayer", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["rebané los tomates ayer", [{ lot: "tomato", cut: "2026-06-15" }]],
    ["piqué la espinaca", [{ lot: "spinach", cut: "day not told" }]],
    ["cut the melon two days ago", [{ lot: "cantaloupe", cut: "2026-06-14" }]],
    ["cut the melon a week ago", [{ lot: "cantaloupe", cut: "2026-06-09" }]],
    ["cut the melon yesterday morning", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["cut the melon the day before yesterday", [{ lot: "cantaloupe", cut: "2026-06-14" }]],
    ["cut the melon on Monday", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["corté el melón antier", [{ lot: "cantaloupe", cut: "2026-06-14" }]],
    ["corté el melón anoche", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["corté el melón hace dos días", [{ lot: "cantaloupe", cut: "2026-06-14" }]],
    ["corté el melón el lunes", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["the kale is on the counter since Sunday", [{ lot: "kale", place: "counter", since: "2026-06-14" }]],
    ["ate the rest of the melon", [{ lot: "cantaloupe", eaten: "all" }]],
    ["comimos el resto del melón", [{ lot: "cantaloupe", eaten: "all" }]],
    ["cut the melon 2 days ago", [{ lot: "cantaloupe", cut: "2026-06-14" }]],
    ["left the melon out for 3 hours", [{ lot: "cantaloupe", hoursOut: 3 }]],
    ["comimos 2 manzanas", [{ lot: "apple", eaten: { pieces: 2 } }]],
    ["tiré la espinaca", [{ lot: "spinach", thrownOut: "all" }]],
    ["los aguacates están maduros", [{ lot: "avocado", ripeness: "ripe" }]],
    ["cooked the spinach", [{ lot: "lot-2", eaten: "all" }]],
    ["froze half of the spinach", [{ lot: "lot-2", frozen: { share: 0.5 } }]],
    ["comimos la mitad del melón", [{ lot: "cantaloupe", eaten: { share: 0.5 } }]],
    ["made a soup with the kale", [{ lot: "kale", eaten: "all" }]],
    ["used 3 apples", [{ lot: "apple", eaten: { pieces: 3 } }]],
    ["the spinach went bad", [{ lot: "lot-2", thrownOut: "all" }]],
    ["2 avocados are rotten", [{ lot: "avocado", thrownOut: { pieces: 2 } }]],
    ["kale has gone slimy", [{ lot: "kale", thrownOut: "all" }]],
    ["tossed 1 tomato", [{ lot: "tomato", thrownOut: { pieces: 1 } }]],
    ["the kale is gone", [{ lot: "kale", left: "none" }]],
    ["gave 2 tomatoes to my neighbour", [{ lot: "tomato", givenAway: { pieces: 2 } }]],
    ["the kale is on the counter", [{ lot: "kale", place: "counter" }]],
    ["the kale is still in the left drawer", [{ lot: "kale", place: "left-drawer" }]],
    [
      "left the kale on the counter since yesterday",
      [{ lot: "kale", place: "counter", since: "2026-06-15" }],
    ],
    ["left the melon on the table for 3 hours", [{ lot: "cantaloupe", hoursOut: 3 }]],
    ["left the melon out on the counter for 2 hours", [{ lot: "cantaloupe", hoursOut: 2 }]],
    ["usé 3 manzanas", [{ lot: "apple", eaten: { pieces: 3 } }]],
    ["cociné las espinacas", [{ lot: "spinach", eaten: "all" }]],
    ["congelé la mitad de las espinacas", [{ lot: "spinach", frozen: { share: 0.5 } }]],
    ["se acabó la espinaca", [{ lot: "spinach", eaten: "all" }]],
    ["se echaron a perder las espinacas", [{ lot: "spinach", thrownOut: "all" }]],
    ["las espinacas se pudrieron", [{ lot: "spinach", thrownOut: "all" }]],
    ["los aguacates siguen duros", [{ lot: "avocado", ripeness: "unripe" }]],
    ["regalé 2 tomates a mi vecina", [{ lot: "tomato", givenAway: { pieces: 2 } }]],
    ["puse las espinacas en el cajón izquierdo", [{ lot: "spinach", place: "left-drawer" }]],
    ["moví los tomates a la barra", [{ lot: "tomato", place: "counter" }]],
    [
      "ate 2 apples and threw out the spinach",
      [
        { lot: "apple", eaten: { pieces: 2 } },
        { lot: "lot-2", thrownOut: "all" },
      ],
    ],
    [
      "ate 2 apples, 1 avocado",
      [
        { lot: "apple", eaten: { pieces: 2 } },
        { lot: "avocado", eaten: { pieces: 1 } },
      ],
    ],
  ])("understands “%s”", (text, expected) => {
    expect(lots(text)).toMatchObject(expected);
    expect(lots(text)).toHaveLength(expected.length);
    expect(() => happenedFrom(read(text))).not.toThrow();
  });

  it("understands what came home by the reader of hauls, and that nothing was eaten", () => {
    const { cameHome, followed } = read("bought 1 lb peas, 2 lemons\nate nothing");
    expect(cameHome).toMatchObject([{ grams: 453.59 }, { commodity: "lemon", pieces: 2 }]);
    expect(followed).toBe(false);
  });

  it.each<[string, number]>([
    ["bought 200 g cut watermelon today", 0],
    ["bought 200 g watermelon cut 2 days ago", 2],
    ["bought 200 g watermelon, cut 2 days ago", 2],
    ["bought 200 g melon, cut today", 0],
    ["bought 200 g melon cut yesterday", 1],
    ["found 200 g melon cut 3 days ago", 3],
    ["compré 200 g de melón cortado hoy", 0],
    ["encontré 200 g de melón cortado hace 3 días", 3],
    ["bought a bag of salad leaves today", 0],
    ["bought 1 lb peas", 0],
  ])("takes what came home as old as it is told to be: “%s”", (text, extraDays) => {
    expect(read(text).cameHome).toMatchObject([{ extraDays }]);
  });

  it.each<[string, RegExp]>([
    ["ate 2 pears", /"2 pears" is not in the plan.*apple.*bought/],
    ["ate 2 slices of melon", /tells no amount/],
    ["comí 2 rebanadas de melón", /tells no amount/],
    ["kale is limp", /how it looks.*still good/],
    ["la espinaca está marchita", /how it looks/],
    ["moved 2 portions of kale to the shelf", /tells an amount/],
    ["200 g watermelon left", /^(?!.*bought).*"200 g watermelon" is not in the plan.*when it was cut/],
    ["bought 200 g cut watermelon", /how old "200 g cut watermelon" is.*cut 2 days ago/],
    ["bought 200 g watermelon", /how old "200 g watermelon" is/],
    ["compré 200 g de sandía en trozos", /how old "200 g de sandía en trozos" is/],
    ["bought a bag of salad leaves", /how old .*salad leaves/],
    ["ate some kale", /tells no amount.*half of the kale/],
    ["moved the kale to the loft", /names no place.*shelf/],
    ["the dog barked", /not understood|names no kind/],
    ["left the melon out", /how many hours/],
    ["left the melon on the counter", /since when, or for how many hours.*since yesterday/],
    ["the spinach is not bad", /what is not so/],
    ["put the kale in the drawer", /names no place.*left-drawer.*right-drawer/],
    ["cut the melon a few days ago", /not clear since which day/],
    ["cut the melon and sliced the tomatoes a few days ago", /"cut the melon a few[\s\S]*"sliced the tom/],
    ["the spinach is not frozen", /what is not so/],
    ["cut the melon last monday", /not clear since which day/],
    ["cut the melon since tuesday", /not clear since which day/],
    ["corté el melón la semana pasada", /not clear since which day/],
    ["dejé el kale en la mesa desde hace unos días", /not clear since which day/],
    ["bought 200 g cut mango a few days ago", /not clear since which day/],
    ["left the melon out for an hour and a half", /how many hours/],
    ["left the melon out for 1 hour 50 minutes", /how many hours/],
    ["left the melon out for 2 hours, then another 2 hours", /how many hours/],
    ["the spinach is no longer good", /what is not so/],
    ["none of the kale is good", /what is not so/],
    ["the kale is barely good", /what is not so/],
    ["nada de kale está bien", /what is not so/],
    ["the avocados are no longer hard", /what is not so/],
    ["none of the avocados are ripe", /what is not so/],
    ["ate the spinach but not the kale", /a line for each thing/],
    ["ate all but 2 apples", /a line for each thing/],
    ["comimos todo menos 2 manzanas", /a line for each thing/],
    ["one avocado is ripe", /tells an amount/],
    ["moved 2 tomatoes to the counter", /tells an amount/],
    ["ate 2 apples and 3 wibbles", /wibbles.*not understood/],
    ["bought 1 lb peas, 3 frobs", /frobs.*not understood/],
    ["cut the melon tomorrow", /"tomorrow" is not understood/],
    ["ate 2 apples for friday", /day to come.*happened by now/],
    ["ate 2 wibbly apples", /"wibbly" is not understood/],
  ])("says why “%s” cannot be read, and what would work", (text, message) => {
    expect(() => read(text)).toThrow(message);
  });

  describe("a word for several kinds", () => {
    const having = (...kinds: string[]) => ({
      ...accountContext,
      lots: kinds.map((commodity, index) => ({ id: `lot-${index + 1}`, commodity })),
    });

    it.each<[string, string, Record<string, unknown>]>([
      ["banana", "comí 2 plátanos", { lot: "banana", eaten: { pieces: 2 } }],
      ["plantain", "comí 2 plátanos", { lot: "plantain", eaten: { pieces: 2 } }],
      ["salad-leaves", "moved the salad to the shelf", { lot: "salad-leaves", place: "shelf" }],
      ["romaine", "lettuce still good", { lot: "romaine", seenGood: true }],
      ["honeydew", "ate half of the melon", { lot: "honeydew", eaten: { share: 0.5 } }],
    ])("means the only one in the plan (%s): “%s”", (kind, text, expected) => {
      expect(readHappened(text, having("apple", kind)).lots).toMatchObject([expected]);
    });

    it("is weighed as the kind that is meant", () => {
      const eaten = (text: string) => readHappened(text, having("romaine")).lots[0]!.eaten;
      expect(eaten("ate 2 lettuces")).toEqual(eaten("ate 2 romaine lettuces"));
    });

    it.each<[string[], string, RegExp]>([
      [["banana", "plantain"], "comí 2 plátanos", /"plátanos" may be more than one.*bananas, plantains/],
      [["head-lettuce", "romaine"], "ate the lettuce", /"lettuce" may be more than one/],
      [["apple"], "comí 2 plátanos", /"2 plátanos" is not in the plan/],
      [["apple"], "compré 2 plátanos", /"plátanos" may be more than one/],
    ])("is asked about where more, or none, of %s are in the plan: “%s”", (kinds, text, message) => {
      expect(() => readHappened(text, having(...kinds))).toThrow(message);
    });
  });

  it("asks how old leaves are that were found, though the plan has none", () => {
    const found = (text: string) => () => readHappened(text, { ...accountContext, lots: [] });
    expect(found("found 100 g salad leaves")).toThrow(/how old "100 g salad leaves" is/);
    expect(found("bought 100 g salad leaves")).not.toThrow();
  });

  it("reads any text, or names each line it cannot read", () => {
    const phrase = fc.constantFrom(
      "ate",
      "threw out",
      "moved",
      "to",
      "the",
      "kale",
      "2",
      "apples",
      "ripe",
      "left",
      "cut",
      "\n",
      ";",
      "half of",
      "bought",
      "on",
      "zorb",
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(phrase, { maxLength: 9 }).map((all) => all.join(" ")),
        ),
        (text) => {
          try {
            read(text);
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
            expect((error as InputError).findings.every(({ remedy }) => remedy.length > 5)).toBe(true);
          }
        },
      ),
      { numRuns: 300, seed: 4 },
    );
  });
});
