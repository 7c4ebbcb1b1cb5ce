import { catalogue } from "@keepwright/catalogue";
import {
  englishLanguage,
  handoutContext,
  spanishLanguage,
  twoWaysText,
  twoWaysView,
} from "@keepwright/handout";
import { layTwoWays, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

/** Invented. */
const made = layTwoWays({
  haul: {
    lots: [
      { id: "lot-1", commodity: "banana", grams: 900, pieces: 6, ripeness: "unripe" },
      { id: "lot-2", commodity: "romaine", grams: 600 },
      { id: "lot-3", commodity: "apple", grams: 1200 },
    ],
  },
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, days: 5 },
  from: "2026-06-13",
  catalogue: catalogue(),
  habit: "counter",
  draws: 12,
});
const english = twoWaysView(handoutContext(catalogue()), made);
const spanish = twoWaysView(handoutContext(catalogue(), { language: spanishLanguage }), made);

describe("one haul laid two ways, in words", () => {
  it("says the rule it was laid by, that it is declared, what both sides share, and that it is a model", () => {
    const notes = english.notes.join(" ");
    expect(notes).toContain("everything lies on the counter");
    expect(notes).toContain("declared and has no source");
    expect(notes).toContain("one portion in 5 is eaten 3 days late");
    expect(notes).toContain("not measured in a real kitchen");
    expect(notes).toContain("12 times");
    expect(spanish.notes.join(" ")).toContain("es declarada y no tiene fuente");
  });

  it("keeps the figures of the comparison", () => {
    expect(english.evenings.length).toBe(made.evenings.length);
    for (const [at, evening] of english.evenings.entries()) {
      for (const side of ["unsorted", "planned"] as const) {
        const { eaten, lost, left } = evening[side];
        expect(eaten.grams + lost.grams + left.grams).toBeCloseTo(english.brought, 6);
        expect(lost.grams).toBe(made.evenings[at]![side].lost);
        const ofRows = evening.rows.reduce((sum, row) => sum + row[side].lost, 0);
        expect(ofRows).toBeCloseTo(lost.grams, 6);
      }
    }
  });

  it("says that all of a thing is eaten only where next to none of it is lost or left", () => {
    const cells = english.evenings.flatMap(({ rows }) =>
      rows.flatMap(({ unsorted, planned }) => [unsorted, planned]),
    );
    const done = cells.filter(({ state }) => state === "eaten");
    const share = ({ eaten, lost, left }: (typeof cells)[number]) => eaten / (eaten + lost + left);
    expect(new Set(done.map(({ words }) => words))).toEqual(new Set(["eaten", "mostly eaten"]));
    for (const cell of done) expect(cell.words).toBe(share(cell) < 0.95 ? "mostly eaten" : "eaten");
  });

  it("keeps its rows in one order, what gains most by the plan first", () => {
    const names = english.evenings.map(({ rows }) => rows.map(({ name }) => name).join());
    expect(new Set(names).size).toBe(1);
    const { rows } = english.evenings.at(-1)!;
    const gains = rows.map(({ unsorted, planned }) => unsorted.lost - planned.lost);
    expect(gains).toEqual([...gains].sort((one, other) => other - one));
  });

  it("names the state of each thing, why, and where it lies", () => {
    const cells = english.evenings.flatMap(({ rows }) => rows.map(({ unsorted }) => unsorted));
    const gone = cells.filter(({ state }) => state === "past its best");
    expect(gone.length).toBeGreaterThan(0);
    for (const { words } of gone) expect(words).toMatch(/^gone: \p{L}/u);
    expect(cells.some(({ places }) => places === "Counter")).toBe(true);
    expect(cells.find(({ state }) => state === "not ripe")?.words).toBe("not ripe yet");
  });
});

describe("the same as text", () => {
  it("tells everything on the first evening, and then what has changed", () => {
    const text = twoWaysText(english);
    const evenings = text.split(/\n\n(?=Evening|After)/u).slice(1);
    expect(evenings.length).toBe(made.evenings.length);
    for (const { name } of english.evenings[0]!.rows) expect(evenings[0]).toContain(name);
    const lines = evenings.map((evening) => evening.split("\n").length);
    // An evening on which everything changes is as long as the first, never longer; most are shorter.
    expect(Math.max(...lines.slice(1))).toBeLessThanOrEqual(lines[0]!);
    expect(lines.slice(1).filter((count) => count < lines[0]!).length).toBeGreaterThan(lines.length / 2);
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(88);
  });

  it("is wholly in the language asked for", () => {
    expect(twoWaysText(spanish)).not.toMatch(/\b(Unsorted|Planned|evening|eaten|gone)\b/u);
    expect(spanish.sides).not.toEqual(english.sides);
    expect(englishLanguage.messages["twoWays.title"]).toBe(english.title);
  });
});
