import { catalogue } from "@keepwright/catalogue";
import { type ClassRequest, classDeck, classTopics, type DeckSlide, makeKit } from "@keepwright/handout";
import { describe, expect, it } from "vitest";

/** Invented. */
const request = (language: "en" | "es"): ClassRequest => ({
  version: 1,
  audience: { language, print: "ordinary", paper: "a4", units: "metric" },
  items: ["bananas", "romaine", "potatoes"],
  household: { kitchen: "ordinary", people: 2, portions: 5, days: 6 },
  minutes: 45,
  topics: classTopics,
  seed: 3,
});
const kit = makeKit(request("en"), catalogue());
const deck = classDeck(kit, catalogue());
const spanish = classDeck(makeKit(request("es"), catalogue()), catalogue());
const slide = (id: string): DeckSlide => deck.slides.find((one) => one.id === id)!;

describe("the slides of a kit", () => {
  it("begin with its title, have kinds in the kit's order, and end with what to take care of", () => {
    expect(deck.slides[0]).toMatchObject({ sort: "opening", title: kit.title });
    const kinds = deck.slides.filter(({ id }) => id.startsWith("answer-")).map(({ title }) => title);
    expect(kinds.length).toBeGreaterThan(1);
    expect(kinds).toEqual(kit.items.slice(0, kinds.length).map(({ name }) => name));
    expect(JSON.stringify(deck.slides.at(-1))).toContain("local food-safety authority");
    expect(new Set(deck.slides.map(({ id }) => id)).size).toBe(deck.slides.length);
    for (const { notes } of deck.slides) expect(notes.length).toBeGreaterThan(0);
  });

  it("say of a kind what its printed page says, with its sources", () => {
    const page = kit.documents.find(({ id }) => id === "answer-banana")!;
    const pairs = page.blocks.find((block) => block.block === "pairs");
    const [shown] = slide("answer-banana").parts;
    // On paper a figure has the number of its source; a slide names its sources at its foot.
    const rows = (pairs?.block === "pairs" ? pairs.rows : []).map(({ name, text }) => ({
      name,
      text: text.replace(/ \(\d+\)$/, ""),
    }));
    expect(shown?.part === "pairs" && shown.rows.slice(0, 3)).toEqual(rows);
    expect(slide("answer-banana").sources).toEqual(
      expect.arrayContaining(page.sources.map(({ text }) => text)),
    );
    expect(slide("answer-banana").sources.length).toBeGreaterThan(0);
  });

  it("compare with the very figures of the comparison", () => {
    const { twoWays } = kit.household;
    const { chart } = slide("two-ways-lost");
    expect(chart?.categories.length).toBe(twoWays.evenings.length);
    const lost = twoWays.evenings.map(({ unsorted }) => Math.round(unsorted.lost / 10) / 100);
    expect(chart?.series[0]?.values).toEqual(lost);
    const fate = slide("two-ways-fate").chart!;
    const last = twoWays.evenings.at(-1)!;
    for (const [at, side] of [last.unsorted, last.planned].entries()) {
      const sum = fate.series.reduce((total, { values }) => total + values[at]!, 0);
      expect(sum).toBeCloseTo((side.eaten + side.lost + side.left) / 1000, 1);
    }
    expect(JSON.stringify(slide("two-ways").parts)).toContain("declared and has no source");
  });

  it("name no date: the worked household's days are nobody's", () => {
    const compared = deck.slides.filter(({ id }) => id.startsWith("two-ways"));
    const paper = kit.documents.find(({ sort }) => sort === "comparison");
    expect(compared.length).toBe(4);
    expect(JSON.stringify([compared, paper])).not.toMatch(/2001|January/);
  });

  it("are in the class's language throughout", () => {
    expect(spanish.language.startsWith("es")).toBe(true);
    expect(spanish.slides.length).toBe(deck.slides.length);
    const words = JSON.stringify(
      spanish.slides.map(({ title, parts, notes, chart }) => [title, parts, notes, chart]),
    );
    expect(words).not.toMatch(/\b(Where|until|evening|Unsorted|eaten|Lost)\b/);
  });
});
