import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RipenessWord } from "../../src/problem/lot.js";
import { readHaul } from "../../src/reading/index.js";

const read = (text: string) => readHaul(text, catalogue()).items;
const lotsIn = (text: string) => read(text).flatMap((item) => (item.kind === "lot" ? [item.lot] : []));
const questionsIn = (text: string) => read(text).flatMap((item) => item.questions);

const words: readonly (readonly [string, RipenessWord])[] = [
  ["hard", "unripe"],
  ["unripe", "unripe"],
  ["nearly ripe", "turning"],
  ["ripe", "ripe"],
  ["soft", "ripe"],
  ["very ripe", "very ripe"],
  ["overripe", "very ripe"],
];
const kind = fc.constantFrom(
  ["avocado", "avocados"],
  ["mango", "mangoes"],
  ["banana", "bananas"],
  ["pear", "pears"],
  ["tomato", "tomatoes"],
);
const count = fc.integer({ min: 2, max: 30 });
const twoStates = fc
  .tuple(fc.constantFrom(...words), fc.constantFrom(...words))
  .filter(([one, other]) => one[1] !== other[1]);
const joint = fc.constantFrom(" and ", ", ", " plus ", ", and ", " & ");
const forms = fc.constantFrom(
  (first: string, second: string, name: string, join: string) => {
    const [amount, state] = [first.split(" ")[0], first.slice(first.indexOf(" ") + 1)];
    return `${amount} ${state} ${name}${join}${second}`;
  },
  (first: string, second: string, name: string, join: string) => `${first}${join}${second} ${name}`,
  (first: string, second: string, name: string, join: string) => `${name}: ${first}${join}${second}`,
  (first: string, second: string, name: string, join: string) => `${name} (${first}${join}${second})`,
);

const piecesOf = (text: string) => lotsIn(text).reduce((sum, { pieces }) => sum + (pieces ?? 0), 0);
const gramsOf = (text: string) => lotsIn(text).reduce((sum, { grams }) => sum + grams, 0);

describe("amounts of one kind", () => {
  it("in two states add up, each in its own state", () => {
    fc.assert(
      fc.property(
        kind,
        count,
        count,
        twoStates,
        joint,
        forms,
        ([id, name], first, second, [one, other], join, form) => {
          const text = form(`${first} ${one[0]}`, `${second} ${other[0]}`, name!, join);
          expect(
            lotsIn(text).map(({ commodity, pieces, ripeness }) => [commodity, pieces, ripeness]),
            text,
          ).toEqual([
            [id, first, one[1]],
            [id, second, other[1]],
          ]);
          expect(gramsOf(text)).toBeCloseTo(gramsOf(`${first + second} ${name}`), 1);
          expect(questionsIn(text)).toEqual([]);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("of which one tells a state keep the whole, or ask", () => {
    fc.assert(
      fc.property(
        kind,
        count,
        count,
        fc.constantFrom(...words),
        joint,
        ([, name], all, some, [word, ripeness], join) => {
          const text = `${all} ${name}${join}${some} ${word}`;
          const whole = gramsOf(`${all} ${name}`);
          expect(gramsOf(text), text).toBeCloseTo(whole, 1);
          expect(piecesOf(text), text).toBe(all);
          if (some >= all) expect(questionsIn(text).length, text).toBe(1);
          else expect(lotsIn(text), text).toMatchObject([{ pieces: all - some }, { pieces: some, ripeness }]);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("told as a share keep the whole", () => {
    const share = fc.constantFrom<readonly [string, number]>(
      ["half of them", 0.5],
      ["50%", 0.5],
      ["50 % of them", 0.5],
      ["a quarter of them", 0.25],
      ["three quarters of them", 0.75],
      ["10 percent", 0.1],
    );
    fc.assert(
      fc.property(kind, fc.integer({ min: 1, max: 20 }), share, ([, name], kilograms, [words, part]) => {
        const text = `${kilograms} kg ${name}, ${words} ripe`;
        expect(lotsIn(text), text).toMatchObject([
          { grams: expect.closeTo(kilograms * 1000 * (1 - part), 1) },
          { grams: expect.closeTo(kilograms * 1000 * part, 1), ripeness: "ripe" },
        ]);
      }),
    );
  });
});

describe("an amount told for each", () => {
  const names = fc.uniqueArray(fc.constantFrom("apples", "pears", "plums", "limes", "lemons", "mangoes"), {
    minLength: 1,
    maxLength: 5,
  });
  it("goes to every name of the list, whether it stands before or behind", () => {
    fc.assert(
      fc.property(
        names,
        fc.integer({ min: 1, max: 9 }),
        fc.boolean(),
        fc.boolean(),
        (list, kilograms, isBefore, and) => {
          const last = list.at(-1)!;
          const joined =
            list.length > 1 && and ? `${list.slice(0, -1).join(", ")} and ${last}` : list.join(", ");
          const text = isBefore ? `${kilograms} kg each of ${joined}` : `${joined}, ${kilograms} kg each`;
          expect(
            lotsIn(text).map(({ grams }) => grams),
            text,
          ).toEqual(list.map(() => kilograms * 1000));
          expect(questionsIn(text), text).toEqual([]);
        },
      ),
    );
  });
});

describe("a name that is denied", () => {
  it("is never planned, and always asked about", () => {
    const denial = fc.constantFrom("not", "without", "no", "instead of", "sin", "except", "not the", "not 3");
    fc.assert(
      fc.property(kind, denial, joint, fc.integer({ min: 2, max: 9 }), ([id, name], word, join, limes) => {
        const text = `${limes} limes${join}${word} ${name}`;
        expect(
          lotsIn(text).map(({ commodity, pieces }) => [commodity, pieces]),
          text,
        ).toEqual([["lime", limes]]);
        expect(lotsIn(text).some(({ commodity }) => commodity === id)).toBe(false);
        expect(questionsIn(text), text).toMatchObject([{ ask: "how much", reason: "zero" }]);
      }),
    );
  });
});
