import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weekdays } from "../../src/problem/wanted.js";
import { readHaul } from "../../src/reading/readHaul.js";

const spanish = ["domingo", "lunes", "martes", "miércoles", "jueves", "viernes", "sábado"];
const things = ["avocados", "pears", "mangoes", "peaches", "kiwis", "plums", "apples", "oranges"];
const day = fc.nat(6);
const count = fc.integer({ min: 2, max: 9 });
const thing = fc.constantFrom(...things);

const lots = (text: string) =>
  readHaul(text, catalogue()).items.flatMap((item) => (item.kind === "lot" ? [item] : []));

const links = fc.constantFrom(
  { words: "by", when: "by" },
  { words: ", ripe by", when: "by" },
  { words: "for", when: "on" },
  { words: ", wanted on", when: "on" },
  { words: "not before", when: "from" },
  { words: "after", when: "after" },
);

describe("days wanted, whatever the day, the count and the kind", () => {
  it("a weekday is carried as it is, and the amount is that of the same words without it", () => {
    fc.assert(
      fc.property(
        count,
        thing,
        links,
        day,
        fc.boolean(),
        (pieces, name, { words, when }, number, capital) => {
          const weekday = weekdays[number]!;
          const written = capital ? weekday[0]!.toUpperCase() + weekday.slice(1) : weekday;
          const [read, ...more] = lots(`${pieces} ${name} ${words} ${written}`);
          const [bare] = lots(`${pieces} ${name}`);
          expect(more).toEqual([]);
          const { wanted, typed: _, ...rest } = read!.lot;
          const { typed: __, ...without } = bare!.lot;
          expect(wanted).toEqual({ when, day: weekday });
          expect(rest).toEqual(without);
          expect(read!.questions).toEqual(bare!.questions);
        },
      ),
    );
  });

  it("says the same in Spanish", () => {
    fc.assert(
      fc.property(
        count,
        day,
        fc.constantFrom("para el", "maduros para el", "los quiero para el"),
        (pieces, number, words) => {
          const [read] = lots(`${pieces} aguacates ${words} ${spanish[number]}`);
          expect(read!.lot).toMatchObject({ pieces, wanted: { when: "on", day: weekdays[number] } });
        },
      ),
    );
  });

  it("days from now are counted, and more than can be planned for are asked about", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (days) => {
        const [read] = lots(`3 mangoes wanted in ${days} days`);
        const asked = read!.questions.some(({ ask }) => ask === "when wanted");
        expect(read!.lot.wanted).toEqual(days <= 60 ? { when: "on", day: days } : undefined);
        expect(asked).toBe(days > 60);
      }),
    );
  });

  it("parts for days of their own add up to the whole", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 8 }), thing, day, (pieces, name, number) => {
        const read = lots(`${pieces} ${name}, 1 by ${weekdays[number]}, the rest later`);
        expect(read.map(({ lot }) => lot.pieces)).toEqual([pieces - 1, 1]);
        expect(read.map(({ lot }) => lot.wanted?.when)).toEqual(["after", "by"]);
      }),
    );
  });
});
