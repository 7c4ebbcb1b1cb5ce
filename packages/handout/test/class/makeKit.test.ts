import { catalogue } from "@keepwright/catalogue";
import {
  askView,
  type ClassKit,
  type ClassRequest,
  classReader,
  documentLines,
  makeKit,
  seasonItems,
} from "@keepwright/handout";
import { planFrom } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { englishGrade, spanishEase } from "../../../../scripts/lib/readingLevel.mjs";
import { laterStays } from "../../src/view/laterStays.js";
import { documentSentences } from "./documentSentences.js";
import { classRequest, contextOf, spanish } from "./support.js";

const items = ["banana", "spinach", "potato", "cantaloupe"];
const made = (changes: Partial<ClassRequest> = {}): ClassKit =>
  makeKit(classRequest({ items, ...changes }), catalogue());
const kits = { en: made(), es: made({ audience: spanish }) };
const document = (kit: ClassKit, id: string) => kit.documents.find((one) => one.id === id)!;

describe("a kit", () => {
  it("has an answer sheet for exactly its kinds, saying what is answered to whoever asks", () => {
    const { documents } = kits.en;
    expect(documents.filter(({ sort }) => sort === "answer").map(({ id }) => id)).toEqual(
      items.map((id) => `answer-${id}`),
    );
    const context = contextOf(items);
    for (const id of items) {
      const view = askView(context.handout, context.answer(id), context.guidance.get(id));
      const said = documentLines(document(kits.en, `answer-${id}`)).join("\n");
      for (const part of [view.where, view.how, view.until, ...view.sections.flatMap(({ lines }) => lines)])
        expect(said).toContain(part);
      expect(document(kits.en, `answer-${id}`).sources.length).toBeGreaterThan(3);
    }
  });

  it("is the same when it is made again, whatever was made between", () => {
    const few = { topics: ["signs"] as const, items: ["apple", "kale", "beet"] };
    const first = JSON.stringify(made(few).documents);
    expect(JSON.stringify(made({ ...few, seed: 2 }).documents)).not.toBe(first);
    expect(JSON.stringify(made(few).documents)).toBe(first);
  });

  it.each(Object.keys(kits) as ("en" | "es")[])(
    "in %s is easy to read, every document by itself",
    (language) => {
      for (const one of kits[language].documents) {
        const sentences = documentSentences(one);
        expect(sentences.length, one.id).toBeGreaterThan(3);
        if (language === "en") expect(englishGrade(sentences), one.id).toBeLessThanOrEqual(6);
        else expect(spanishEase(sentences), one.id).toBeGreaterThanOrEqual(70);
      }
    },
  );

  it("sends everyone who may come to harm to the local authority, in every document but the sheet to fill in", () => {
    for (const { id, blocks } of kits.en.documents.filter(({ sort }) => sort !== "exercise"))
      expect(JSON.stringify(blocks), id).toMatch(/local food-safety authority/);
  });

  it("has sums on the exercise's answer that are those of its sheet", () => {
    const tables = document(kits.en, "exercise").blocks.flatMap((block) =>
      block.block === "table" ? [block.rows] : [],
    );
    const [things, places] = tables as [string[][], string[][]];
    const sum = (rows: string[][], column: number) =>
      Math.round(rows.reduce((all, row) => all + (Number.parseFloat(row[column]!) || 0), 0) * 10) / 10;
    const answer = documentLines(document(kits.en, "exercise-answer")).join("\n");
    expect(answer).toContain(`The list makes ${sum(things, 2)} portions. They eat ${4 * 5 * 7}.`);
    expect(answer).toContain(`The list takes up ${sum(things, 3)} L. All places hold ${sum(places, 1)} L.`);
  });

  it("has a worked household that is a plan, made up and said to be so", () => {
    const { household } = kits.en;
    expect(household.invented).toBe(true);
    expect(planFrom(household.plan)).toEqual(household.plan);
    expect(documentLines(document(kits.en, "household"))).toContain("Made up for this class: no real home.");
    expect(new Set(household.plan.lots.map(({ commodity }) => commodity))).toEqual(new Set(items));
  });

  it("tells moves of the worked household by the calendar's days, as meals are", () => {
    const { plan } = kits.en.household;
    const told = documentLines(document(kits.en, "household"))
      .flatMap((line) => [...line.matchAll(/(?:about|before|On) day (\d+)/g)])
      .map(([, day]) => Number(day));
    const moved = plan.lots
      .flatMap(laterStays)
      .map(({ stay }) => 1 + (Date.parse(stay.from) - Date.parse(plan.from)) / 86_400_000);
    expect(moved.length).toBeGreaterThan(0);
    expect(told.sort()).toEqual(moved.sort());
  });

  it("names no day of anybody's calendar", () => {
    const all = kits.en.documents.flatMap(documentSentences).join("\n");
    expect(all).not.toMatch(/\b2001\b|\b(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day\b/);
  });
});

const reader = classReader(classRequest().audience, catalogue());

describe("kinds by season", () => {
  const chosen = (seed: number) => seasonItems(reader, { month: 6, region: "northern", kinds: 8 }, seed);

  it("are those harvested in that month on that side, chosen by the seed", () => {
    expect(chosen(1)).toHaveLength(8);
    expect(chosen(1)).toEqual(chosen(1));
    expect(chosen(2)).not.toEqual(chosen(1));
    const south = seasonItems(reader, { month: 12, region: "southern", kinds: 8 }, 1);
    expect(south.length).toBe(8);
  });

  it("are refused where fewer are known than are asked for", () => {
    expect(() => seasonItems(reader, { month: 6, region: "northern", kinds: 500 }, 1)).toThrow(
      /500 are asked for\. Ask for fewer kinds/,
    );
  });
});
