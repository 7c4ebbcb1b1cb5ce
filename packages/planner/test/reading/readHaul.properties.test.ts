import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lotSchema } from "../../src/problem/lot.js";
import { readHaul } from "../../src/reading/index.js";
import { phrases } from "./phrases.js";

/** Words that may be left out of every item: written out here, so that the reader cannot excuse itself. */
const small = new Set(
  (
    "and plus also then of the with for in en on at from to or y e o u de del la el las los con i ive we weve got bought have had there is are was were " +
    "its it some that this these those my our a an please all them so like um uh er ok okay yeah well they theyre theres thats only think but pero"
  ).split(" "),
);
const words = phrases.flatMap(([text]) => text.split(/\s+/));
const strange = [
  "<b>",
  "</script>",
  "€5",
  "7",
  "½",
  "0",
  "-2",
  "1,2,3",
  "xyzzy",
  "quite",
  "🍎",
  "\u0000",
  "\u202e",
  "\u001b[0m",
  "\u001b[1;31m",
  "rotten",
  "bean sprouts",
  "<script>alert(1)</script>",
  "halves",
  "1 000",
  "a\u0301",
  "(",
  ")",
  ",",
  ";",
  "\n",
  "- ",
  "1. ",
  "#",
  "×",
  ..."50 %|50%|@|2.99|1.500 g|not|without|sin|or|each|2 each|half of them|la mitad|the rest|some ripe|of which|half ripe".split(
    "|",
  ),
  ..."bagged|in a clamshell|in 2 bags|en bolsa|cubes|slices|en trozos|leaves|hojas de|leaves of|tops|flowers|peel|olives|savory".split(
    "|",
  ),
  ...'red|green|small|large|hard|ripe|1 ripe|2 hard|and 1 green|but|instead of|1e-5|with leaves|€|"|percent'.split(
    "|",
  ),
];
const haulText = fc
  .array(
    fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...words) },
      { weight: 1, arbitrary: fc.constantFrom(...strange) },
      { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 8 }) },
    ),
    { maxLength: 25 },
  )
  .map((parts) => parts.join(" "));
const anyText = fc.oneof(
  haulText,
  fc.string({ unit: "binary", maxLength: 300 }),
  fc.string({ maxLength: 200 }),
);

const read = (text: string) => readHaul(text, catalogue()).items;

/** Letters, digits and signs of a text that no item covers, small words and the bullets of lists aside. */
function uncovered(text: string): string[] {
  const covered = new Uint8Array(text.length);
  for (const { from, to } of read(text)) covered.fill(1, from, to);
  const bulletsAt = new Set<number>();
  for (const line of text.matchAll(
    /(?:^|[\n\r\f\v\u0085\u2028\u2029])((?:\s*(?:[-–—*•·‣◦▪○●☐☑✓>]+\s+|[•·‣◦▪○●☐☑✓]|\(?\d{1,3}[.)]\s+|\[[ xX]?\]\s*))+)/gu,
  )) {
    for (let at = 0; at < line[0].length; at++) bulletsAt.add(line.index + at);
  }
  // Terminal control sequences carry nothing; they are left out here by a pattern of the test's own.
  const sequences =
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
    /(?:\u001b\[|\u009b)[\x30-\x3f]*[\x20-\x2f]*[\x40-\x7e]|(?:\u001b\]|\u009d)[^\u0007\u001b\u009c\n\r]{0,200}(?:\u0007|\u001b\\|\u009c)/g;
  for (const sequence of text.matchAll(sequences))
    covered.fill(1, sequence.index, sequence.index + sequence[0].length);
  const missed: string[] = [];
  for (const piece of text.matchAll(/\p{L}[\p{L}\p{M}'’]*|\p{N}+|\p{S}/gu)) {
    const plain = piece[0]
      .normalize("NFD")
      .replace(/\p{M}+/gu, "")
      .replace(/['’]/g, "")
      .toLowerCase();
    if (small.has(plain) || "+|=".includes(piece[0]) || bulletsAt.has(piece.index)) continue;
    if (!covered[piece.index]) missed.push(piece[0]);
  }
  return missed;
}

describe("any text at all", () => {
  it("is read without a throw, twice the same", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(read(text)).toEqual(read(text));
      }),
      { numRuns: 400 },
    );
  });

  it("is covered: nothing that carries meaning is dropped", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(uncovered(text)).toEqual([]);
      }),
      { numRuns: 600 },
    );
  });

  it("comes back word for word, in its order, mark-up and control characters unchanged", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        let last = 0;
        for (const item of read(text)) {
          expect(item.typed).toBe(text.slice(item.from, item.to));
          expect(item.from).toBeGreaterThanOrEqual(last);
          expect(item.to).toBeGreaterThan(item.from);
          last = item.from;
        }
      }),
      { numRuns: 300 },
    );
  });

  it("reads the same whatever was read before it", () => {
    const unread = () => ({ ...catalogue() });
    fc.assert(
      fc.property(anyText, anyText, (before, text) => {
        const used = unread();
        readHaul(`${before}\n${text}`, used);
        readHaul(before, used);
        expect(readHaul(text, used)).toEqual(readHaul(text, unread()));
      }),
      { numRuns: 40 },
    );
  });

  it("looks up as many words whatever was read before it", () => {
    const letters = "bcdfghjklm";
    const noWord = (index: number) => [...String(index)].map((figure) => letters[Number(figure)]).join("q");
    const lines = Array.from(
      { length: 120 },
      (_, index) => `x${noWord(index)}z y${noWord(index)}x w${noWord(index)}`,
    );
    const used = { ...catalogue() };
    const text = lines.join("\n");
    readHaul(lines.slice(60).join("\n"), used);
    expect(readHaul(text, used)).toEqual(readHaul(text, { ...catalogue() }));
  });

  it("gives only lots that the planner accepts, and each question-item asks something", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const item of read(text)) {
          if (item.kind === "lot") expect(lotSchema.safeParse({ id: "1", ...item.lot }).success).toBe(true);
          else expect(item.questions.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 400 },
    );
  });
});

describe("a lot's own words", () => {
  it("read again, give the same lots", () => {
    for (const [text] of phrases) {
      const items = read(text);
      for (const item of items) {
        const same = items.filter((other) => other.from === item.from);
        const again = read(item.typed);
        expect(
          again.map((other) => other.kind === "lot" && other.lot),
          item.typed,
        ).toEqual(same.map((other) => other.kind === "lot" && other.lot));
      }
    }
  });

  it("joined by lines or by commas, phrases give the lots of each", () => {
    const single = phrases.filter(([text]) => !/[,;:.\n-]/.test(text));
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...single), { minLength: 1, maxLength: 6 }),
        fc.constantFrom("\n", "; ", "\r\n- ", ", ", " and "),
        (chosen, joint) => {
          const lots = (text: string) =>
            read(text).flatMap((item) => (item.kind === "lot" ? [item.lot] : []));
          const all = chosen.flatMap(([text]) => lots(text));
          // A time told of one may be that of what is cut beside it: that is asked, and not planned.
          const timed = [", ", " and "].includes(joint) && all.some(({ extraDays }) => extraDays > 0);
          const sure = all.filter(({ form, extraDays }) => !timed || form === "whole" || extraDays > 0);
          expect(lots(chosen.map(([text]) => text).join(joint))).toEqual(sure);
        },
      ),
    );
  });
});
