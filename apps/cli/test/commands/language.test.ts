import { ordinaryKitchens } from "@keepwright/planner";
import { parse } from "csv-parse/sync";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { spanishEase } from "../../../../scripts/lib/readingLevel.mjs";
import { run } from "../../src/run.js";
import { fakeDoor } from "../support/fakeDoor.js";
import { englishIn, keysIn, printedSentences, wordsOf } from "../support/languageOf.js";

const haul = "1 kg tomates, 2 aguacates, 1 kg papas, 500 g fresas, medio melón para el lunes, 3 zorbulones";
const household = ["--from", "2026-06-13", "--days", "5", "--portions", "3"];
const arrangement = JSON.stringify({
  version: 1,
  lots: [
    { lot: "fresas", place: "counter" },
    { lot: "papas", place: "left drawer" },
    { lot: "tomates", place: "counter" },
  ],
});

function tried(words: readonly string[], files: Record<string, string> = {}) {
  const door = fakeDoor({ files });
  return { code: run(words, door), ...door.printed };
}

const files = {
  "mine.json": arrangement,
  "plan.json": tried(["plan", haul, ...household, "--json"]).out,
};
const spanish = (words: readonly string[]) => tried([...words, "--language", "es"], files);

/** What is cited stands in the language it was published in, and is left out: the last section of an item, and sources of rules. */
const uncited = (text: string): string =>
  text
    .replace(/\nDE DÓNDE SALEN LAS CIFRAS\n[\s\S]*$/, "\n")
    .replace(/Fuente:(?:[^\n]|\n(?!\s*- |\n))*/g, "");

const account = [
  "--on",
  "2026-06-15",
  "--happened",
  "comí 2 aguacates; tiré las fresas; compré 1 kg manzanas",
];
const prose = [
  ["plan", ["plan", haul, ...household, "--why", "--draws", "20"]],
  ["judge", ["judge", haul, ...household, "--arrangement", "mine.json"]],
  ["improve", ["improve", haul, ...household]],
  ["buy", ["buy", haul, ...household]],
  ["carry-on", ["carry-on", "plan.json", ...account]],
  ["item", ["item", "jitomate", "--at", "8"]],
  ["item of an onion", ["item", "cebolla", "--units", "us"]],
] as const;

const eventWords = (text: string): string =>
  new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents("vevent")
    .map((one) => new ICAL.Event(one))
    .map(({ summary, description }) => `${summary}. ${description}`)
    .join("\n");
const rowWords = (text: string): string =>
  (parse(text, { columns: true }) as { name: string; place_name: string }[])
    .map(({ name, place_name }) => `${name}. ${place_name}`)
    .join("\n");
const labelWords = (text: string): string =>
  [...text.matchAll(/<(?:text|title)[^>]*>([^<]*)</g)].map(([, words]) => words).join("\n");

const others = [
  ["kitchen", ["kitchen", "cellar"], (text: string) => text.replace(/^cellar\n/, "")],
  ["calendar", ["calendar", "plan.json"], eventWords],
  ["labels", ["labels", "plan.json"], labelWords],
  ["rows", ["rows", "plan.json"], rowWords],
  ["sheet", ["sheet", "plan.json"], (text: string) => text.replace("sheet.pdf", "")],
] as const;

describe("every command in Spanish", () => {
  it.each(prose)("%s: no English word, no bare key, and easy to read", (_, words) => {
    const { code, out, err } = spanish(words);
    expect(code).toBeOneOf([0, 3]);
    const told = uncited(out);
    expect(wordsOf(told).length).toBeGreaterThan(100);
    expect(englishIn(told + err)).toEqual([]);
    expect(keysIn(out + err)).toEqual([]);
    expect(spanishEase(printedSentences(told))).toBeGreaterThanOrEqual(70);
  });

  it.each(others)("%s: no English word and no bare key", (_, words, wordsIn) => {
    const { code, out, err } = spanish(words);
    expect(code).toBe(0);
    const told = wordsIn(out);
    expect(wordsOf(told).length).toBeGreaterThan(3);
    expect(englishIn(told + err)).toEqual([]);
    expect(keysIn(told)).toEqual([]);
  });

  it("is English where nothing is said, also of a haul in Spanish", () => {
    const { out, err } = tried(["plan", haul, ...household], files);
    expect(out).toMatch(/^Where everything goes/);
    expect(englishIn(out).length).toBeGreaterThan(100);
    expect(err).toMatch(/^Haul read from the words given/);
  });

  it("names the languages there are when asked for another", () => {
    const { code, err } = tried(["item", "apple", "--language", "fr"]);
    expect([code, err]).toEqual([
      2,
      "--language: “fr”. Give one of: en, es. A region may stand behind it, for its words: es-MX, en-US.\n",
    ]);
  });
});

describe("a region beside the language", () => {
  const plan = (language: string) => tried(["plan", "2 tomates, 1 kg papas", ...household, "-l", language]);

  it("chooses its words, whatever the units", () => {
    expect(plan("es-MX").out).toMatch(/[Jj]itomate/);
    expect(plan("es").out).not.toMatch(/[Jj]itomate/);
    expect(plan("es-ES").out).toMatch(/[Pp]atatas/);
    expect(tried(["item", "eggplant", "-l", "en-GB"]).out).toMatch(/aubergine/i);
    expect(tried(["item", "eggplant", "-l", "EN-us"]).out).toMatch(/eggplant/i);
  });

  it("is the language of what is wrong too", () => {
    const { err } = tried(["carry-on", "plan.json", "--happened", "comí 2 zorbs", "-l", "es-MX"], files);
    expect(err).toMatch(/Escribe/);
  });

  it.each(["es-", "fr", "es-ZZ1", "es-ZY", "mx"])("is refused where it is none: %s", (language) => {
    expect(plan(language).err).toMatch(/--language: “.*”\. Give one of: en, es\. A region.*es-MX/);
  });

  const bought = (account: string, language: string) =>
    tried(["carry-on", "plan.json", "--on", "2026-06-14", "--happened", account, "-l", language], files);

  it("makes a word for several kinds plain in an account, and says which was taken", () => {
    expect(bought("compré 2 plátanos", "es-MX").out).toMatch(/“plátanos” se toma como\s+plátano.*\n?.*macho/);
    expect(bought("bought 2 plátanos", "en").err).toMatch(/“?"?plátanos"?”? may be more than one kind/);
  });

  it("tells what is wrong with files, arrangements and kitchens in the language", () => {
    const bad = {
      "twice.json": JSON.stringify({ version: 1, lots: [{ lot: "papas", place: "counter", share: 0.5 }] }),
      "shape.json": JSON.stringify({ version: 1, lots: [{ lot: "papas", place: 3 }] }),
      "warm.json": JSON.stringify({
        ...ordinaryKitchens.ordinary,
        refrigerators: ordinaryKitchens.ordinary.refrigerators.map((one) => ({ ...one, temperature: 7 })),
      }),
    };
    const judge = (file: string) =>
      tried(["judge", "1 kg papas", ...household, "--arrangement", file, "-l", "es"], bad).err;
    expect(judge("twice.json")).toMatch(/sus partes suman 0\.5\. Di dónde está todo/);
    expect(judge("shape.json")).toMatch(
      /cómo está todo lots\[1\] place: 3\. Debe ser un texto entre comillas\./,
    );
    expect(tried(["kitchen", "--check", "warm.json", "-l", "es"], bad).out).toMatch(
      /Aviso: Refrigerador .* 7 °C\. Ponlo/,
    );
    const json = tried(["kitchen", "--check", "warm.json", "--json", "-l", "es"], bad).out;
    expect(Object.keys(JSON.parse(json).warnings[0])).toEqual(["thing", "value", "remedy"]);
  });
});
