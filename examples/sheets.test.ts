import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { catalogue } from "@keepwright/catalogue";
import {
  type CountedLots,
  calendarEvents,
  englishLanguage,
  type HandoutContext,
  handoutContext,
  labelRows,
  pageWords,
  type SheetView,
  sheetView,
  spanishLanguage,
} from "@keepwright/handout";
import { sheetPdf } from "@keepwright/paper";
import { ordinaryKitchens, type Plan, planHaul, readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { fortyLots } from "../packages/paper/test/fixtures/fortyLots.js";
import { readPdf } from "../packages/paper/test/support/readPdf.js";
import { englishGrade, spanishEase } from "../scripts/lib/readingLevel.mjs";
import { example, exampleNames } from "./example.js";

/** Where the pages lie to be looked at; never committed. */
const shown = fileURLToPath(new URL("../test-artefacts/sheets/", import.meta.url));

interface Planned {
  readonly plan: Plan;
  readonly counted: CountedLots;
}

function plannedExample(name: string): Planned {
  const { request, lots } = example(name);
  return { plan: planHaul(request), counted: new Map(lots.map((lot) => [lot.id, lot])) };
}

function plannedForty(): Planned {
  const items = readHaul(fortyLots, catalogue()).items;
  const lots = items.flatMap((item, index) =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}`, typed: item.typed }] : [],
  );
  const household = { people: 6, portionsPerPersonPerDay: 5, daysAway: [], days: 10 };
  const request = { haul: { lots }, kitchen: ordinaryKitchens.ordinary, household, from: "2026-07-04" };
  const plan = planHaul({ ...request, seed: 1, catalogue: catalogue() });
  return { plan, counted: new Map(lots.map((lot) => [lot.id, lot])) };
}

const languages = [
  ["en", { ...englishLanguage, tag: "en-GB" }, "metric", "a4"],
  ["en", { ...englishLanguage, tag: "en-US" }, "us", "letter"],
  ["es", { ...spanishLanguage, tag: "es-419" }, "metric", "a4"],
  ["es", { ...spanishLanguage, tag: "es-US" }, "us", "letter"],
] as const;

/** All that is said, a line a sentence or more, as it stands on the page. */
const sentences = (view: SheetView): string[] => [
  ...view.pressing,
  ...view.eating.days.flatMap(({ words, lines }) => [`${words}: ${lines.join(" ")}`]),
  ...view.eating.cutOpen,
  ...view.eating.left,
  ...view.moves.flatMap(({ when, name, what }) => [`${when}: ${name}. ${what}`]),
  ...view.tasks.flatMap(({ task, names }) => [task.replace(" *", ""), names]),
  ...view.places.flatMap(({ rows, later }) => [
    ...rows.flatMap(({ name, amount, wrap, ready = "", until }) => [
      `${name}, ${amount}: ${wrap}.`,
      `${ready} ${until}`,
    ]),
    ...later,
  ]),
  ...view.cautions,
  view.note,
];

const ended = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** All that the events of a calendar say, a line of a list a sentence. */
const calendarSentences = (context: HandoutContext, plan: Plan): string[] =>
  calendarEvents(context, plan, { began: plan.from, name: "" }).flatMap(({ summary, description }) =>
    [summary, ...description.split("\n")].filter((line) => line !== "").map(ended),
  );

/** All that labels say, a line a sentence. */
const labelSentences = (context: HandoutContext, { plan, counted }: Planned): string[] =>
  labelRows(context, plan, counted).flatMap(({ name, until, putAway, places, how }) =>
    [name, until, putAway, ...places, ...(how === undefined ? [] : [how])].map(ended),
  );

/** Grade 6 or below in English, 70 or easier in Spanish. */
function expectPlain(language: "en" | "es", texts: readonly string[]): void {
  if (language === "en") expect(englishGrade(texts)).toBeLessThanOrEqual(6);
  else expect(spanishEase(texts)).toBeGreaterThanOrEqual(70);
}

/** Every string of a sheet that is printed. */
function everyString(view: SheetView): string[] {
  const { pressing, eating, moves, tasks, places, cautions } = view;
  return [
    ...pressing,
    ...eating.days.flatMap(({ words, lines }) => [words, ...lines]),
    ...eating.cutOpen,
    ...eating.left,
    ...moves.flatMap(({ when, name, what }) => [when, name, what]),
    ...tasks.flatMap(({ task, names }) => [task, names]),
    ...places.flatMap(({ name, temperature, vent, rows, later }) => [
      name,
      ...(vent ? [vent.words] : []),
      temperature,
      ...rows.flatMap(({ name: own, amount, wrap, ready, until }) => [
        own,
        amount,
        wrap,
        ...(ready ? [ready] : []),
        until,
      ]),
      ...later,
    ]),
    ...cautions,
    view.note,
  ];
}

const bare = (text: string): string => text.replace(/\s+/g, "");

/** Whether each text stands in the whole, one after the other. */
function inOrder(whole: string, texts: readonly string[]): string | undefined {
  let at = 0;
  for (const text of texts) {
    const found = whole.indexOf(bare(text), at);
    if (found < 0) return text;
    at = found + bare(text).length;
  }
  return undefined;
}

/** Lots up to which one page has to do. With more, a second is better than type too small to read from a metre away. */
const mostOnOnePage = 20;
const forty = "more than forty lots";

describe.each([...exampleNames.map((name) => [name] as const), [forty] as const])(
  "the sheet of %s",
  (name) => {
    const planned = name === forty ? plannedForty() : plannedExample(name);
    const mostPages = planned.plan.lots.length <= mostOnOnePage ? 1 : 2;
    mkdirSync(shown, { recursive: true });

    it.each(languages)("in %s, %#", async (key, language, units, paper) => {
      const context = handoutContext(catalogue(), { units, language });
      const view = sheetView(context, planned.plan, planned.counted);
      expectPlain(key, sentences(view));
      expectPlain(key, calendarSentences(context, planned.plan));
      expectPlain(key, labelSentences(context, planned));
      for (const large of [false, true]) {
        const { bytes, pages, textSize } = sheetPdf(view, {
          paper,
          large,
          pageWords: (page, of) => pageWords(context, page, of),
        });
        const file = `${name.replaceAll(" ", "-")}-${paper}-${key}${large ? "-large" : ""}.pdf`;
        writeFileSync(shown + file, bytes);
        const found = await readPdf(bytes);
        expect(found.pages).toBe(pages);
        if (!large) expect(pages, `text of ${textSize} pt`).toBeLessThanOrEqual(mostPages);
        expect(textSize).toBeGreaterThanOrEqual(large ? 18 : 9);
        expect(found.language).toBe(language.tag === "es-419" ? "es" : language.tag);
        expect(found.title).toBe(`${view.title}, ${view.dates}`);
        expect(found.farthest).toBeLessThan(0.99);
        expect(inOrder(bare(found.spoken), everyString(view)), "lost, or out of order").toBeUndefined();
      }
    });
  },
);
