import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  type Catalogue,
  type Commodity,
  catalogue,
  loadGuidance,
  relativesSource,
} from "@keepwright/catalogue";
import { referenceEthylene } from "@keepwright/physics";
import { beforeAll, describe, expect, it } from "vitest";
// @ts-expect-error: a plain script without types
import { cataloguePages } from "../catalogue-pages/cataloguePages.mjs";
// @ts-expect-error: a plain script without types
import { curvesOf, stretches } from "../catalogue-pages/curves.mjs";
// @ts-expect-error: a plain script without types
import { placedWords } from "../catalogue-pages/endingStrip.mjs";
// @ts-expect-error: a plain script without types
import { bringUpToDate, differences } from "../catalogue-pages/files.mjs";
// @ts-expect-error: a plain script without types
import { indexPage } from "../catalogue-pages/index.mjs";
// @ts-expect-error: a plain script without types
import { daysText, twoDigits } from "../catalogue-pages/numbers.mjs";
// @ts-expect-error: a plain script without types
import { kindPage } from "../catalogue-pages/page.mjs";
// @ts-expect-error: a plain script without types
import { portionsOf } from "../catalogue-pages/portions.mjs";
// @ts-expect-error: a plain script without types
import { seasonWords } from "../catalogue-pages/season.mjs";
// @ts-expect-error: a plain script without types
import { plantParts, wrapNames } from "../catalogue-pages/words.mjs";
import { root } from "./sourceFiles.js";

const all = catalogue();
const kinds = [...all.commodities.values()];
const kindOf = (id: string): Commodity => all.commodities.get(id)!;
const fromRelatives = kinds.find(({ respiration }) => respiration[0]?.source === relativesSource)!.id;
const samples = ["apple", "broccoli", "avocado", "potato", fromRelatives];

let guidance: Record<"en" | "es", Awaited<ReturnType<typeof loadGuidance>>>;
let pages: Map<string, string>;
beforeAll(async () => {
  guidance = { en: await loadGuidance("en"), es: await loadGuidance("es") };
  pages = cataloguePages(all, guidance, samples);
});

const lone = new Set(["meta", "link", "path", "line", "rect"]);

/** Reads a page strictly: every element is closed in its turn, and text holds no sign that should have been escaped. Returns the elements' names. */
function elementsOf(page: string): string[] {
  const found: string[] = [];
  const open: string[] = [];
  const body = page.replace(/^<!doctype html>\n/, "");
  const tokens = body.match(/<\/?[a-z][a-z0-9]*(?: [a-zA-Z][\w:-]*="[^"<>]*")*\/?>|[^<]+|</g) ?? [];
  for (const token of tokens) {
    const tag = /^<(\/?)([a-z0-9]+)/.exec(token);
    if (!tag) {
      expect(token, "unescaped text").not.toMatch(/[<>]|&(?!amp;|lt;|gt;|quot;)/);
    } else if (tag[1]) {
      expect(open.pop(), token).toBe(tag[2]);
    } else {
      found.push(tag[2]!);
      if (!token.endsWith("/>")) open.push(tag[2]!);
      else expect(lone).toContain(tag[2]);
    }
  }
  expect(open).toEqual([]);
  return found;
}

const count = (page: string, pattern: RegExp) => [...page.matchAll(pattern)].length;
const idsOf = (page: string) => [...page.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!);

describe("every page", () => {
  it.each([...samples, "index"])("%s: one heading, closed elements, escaped text", (id) => {
    const elements = elementsOf(pages.get(`${id}.html`)!);
    expect(elements.filter((name) => name === "h1")).toHaveLength(1);
    expect(elements.filter((name) => name === "main")).toHaveLength(1);
    expect(elements).not.toContain("script");
    expect(elements).not.toContain("style");
  });

  it.each(samples)("%s: drawings have a name and a description, in whole units", (id) => {
    const page = pages.get(`${id}.html`)!;
    const drawings = page.match(/<svg[\s\S]*?<\/svg>/g)!;
    expect(drawings).toHaveLength(2);
    for (const drawing of drawings) {
      const [, named] = /aria-labelledby="([^"]+)"/.exec(drawing)!;
      for (const part of named!.split(" ")) expect(idsOf(drawing)).toContain(part);
      expect(drawing).toMatch(/<title [^>]*>[^<]{10,}<\/title>/);
      expect(drawing).toMatch(/<desc [^>]*>[^<]{30,}<\/desc>/);
      const places = [...drawing.matchAll(/ (?:d|x|y|x1|x2|y1|y2|width|height)="([^"]+)"/g)];
      expect(places.filter((place) => place[1]!.includes(".") || place[1]!.includes("NaN"))).toEqual([]);
    }
  });

  it.each(samples)("%s: tables have a caption and headers of columns and rows", (id) => {
    const tables = pages.get(`${id}.html`)!.match(/<table[\s\S]*?<\/table>/g)!;
    expect(tables.length).toBeGreaterThanOrEqual(4);
    for (const table of tables) {
      expect(count(table, /<caption>/g)).toBe(1);
      expect(count(table, /scope="col"/g)).toBeGreaterThanOrEqual(3);
      const rows = table.match(/<tr[\s\S]*?<\/tr>/g)!.slice(1);
      for (const row of rows) expect(count(row, /scope="row(group)?"/g)).toBe(1);
    }
  });

  it.each([...samples, "index"])("%s: every link leads somewhere", (id) => {
    const page = pages.get(`${id}.html`)!;
    const ids = idsOf(page);
    expect(new Set(ids).size).toBe(ids.length);
    const known = new Set([...kinds.map((kind) => `${kind.id}.html`), "index.html"]);
    for (const [, target] of page.matchAll(/ href="([^"]+)"/g)) {
      if (target!.startsWith("#")) expect(ids).toContain(target!.slice(1));
      else if (!known.has(target!))
        expect(existsSync(join(root, "docs/catalogue", target!)), target).toBe(true);
    }
    for (const [, named] of page.matchAll(/aria-labelledby="([^"]+)"/g))
      for (const part of named!.split(" ")) expect(ids).toContain(part);
  });

  it("says how it is known: from memory, inferred from relatives, and where sources disagree", () => {
    expect(pages.get(`${fromRelatives}.html`)).toContain("Inferred from relatives");
    expect(pages.get("broccoli.html")).toContain("from memory: recalled, not checked in print");
    expect(pages.get("broccoli.html")).toContain("Sources disagree");
    expect(pages.get("broccoli.html")).not.toContain("the rule errs");
  });

  it("tells every source of the kind's figures and of their rivals at the end", () => {
    const ids = new Set(JSON.stringify(kindOf("avocado")).match(/(?<="source":")[^"]+/g));
    const list = pages.get("avocado.html")!.split('id="sources"')[1]!;
    const told = list.replaceAll("&amp;", "&").replaceAll("&quot;", '"');
    for (const id of ids) expect(told).toContain(all.sources.get(id)!.citation);
  });
});

describe("the list of kinds", () => {
  it("has every kind in its plant part and again with its names", () => {
    const page: string = indexPage(all);
    for (const { id } of kinds) expect(count(page, new RegExp(` href="${id}\\.html"`, "g")), id).toBe(2);
    const parts = plantParts.map(([part]: string[]) => part);
    expect(kinds.filter(({ organ }) => !parts.includes(organ))).toEqual([]);
  });

  it("has a page for every kind, whether or not its guidance is written", () => {
    const few = { ...all, commodities: new Map([["apple", kindOf("apple")]]) };
    const made: Map<string, string> = cataloguePages(few, { en: new Map(), es: new Map() });
    expect([...made.keys()]).toEqual(["index.html", "apple.html"]);
    expect(made.get("apple.html")).toContain("No guidance has been written");
  });

  it("has words for every wrap", () => {
    for (const wrap of all.wraps.keys())
      for (const language of ["en", "es"]) expect(wrapNames[language][wrap], wrap).toBeTruthy();
  });
});

describe("text from the data", () => {
  it("is escaped wherever it comes from", () => {
    const nasty = `<b onclick="x">'&amp; </script>`;
    const apple = kindOf("apple");
    const names = { one: nasty, many: nasty, also: [nasty] };
    const temperature = { ...apple.storage.temperature, place: nasty, note: nasty };
    const kind = { ...apple, names: { en: names, es: names }, storage: { ...apple.storage, temperature } };
    const page: string = kindPage(kind, all as Catalogue, {});
    elementsOf(page);
    expect(page).not.toContain("<b onclick");
    expect(page).toContain("&lt;b onclick=&quot;x&quot;&gt;'&amp;amp; &lt;/script&gt;");
  });
});

describe("what is computed", () => {
  it("keeps the three lives in order and names an ending at every point", () => {
    const { byTemperature, byHumidity } = curvesOf(kindOf("avocado"));
    expect(byTemperature.map(({ temperature }: { temperature: number }) => temperature)).toEqual(
      Array.from({ length: 32 }, (_, index) => index - 1),
    );
    expect(byHumidity).toHaveLength(2);
    for (const point of [
      ...byTemperature,
      ...byHumidity.flatMap(({ points }: { points: object[] }) => points),
    ]) {
      expect(point.early).toBeLessThanOrEqual(point.middle);
      expect(point.middle).toBeLessThanOrEqual(point.late);
      expect(point.endedBy).toBeTruthy();
    }
  });

  it("calls it freezing only below the freezing point", () => {
    const broccoli = kindOf("broccoli");
    const ends = curvesOf(broccoli).byTemperature.filter(
      ({ endedBy }: { endedBy: string }) => endedBy === "freezing",
    );
    expect(ends.map(({ temperature }: { temperature: number }) => temperature)).toEqual([-1]);
    expect(broccoli.storage.freezingPoint.value).toBeGreaterThan(-1);
  });

  it("tells the ethylene that the physics uses for ordinary stores", () => {
    expect(pages.get("apple.html")).toContain(`${referenceEthylene} µL/L of ethylene`);
  });

  it("shows the same numbers in the table as the model gives", () => {
    const page = pages.get("apple.html")!;
    for (const point of curvesOf(kindOf("apple")).byTemperature) {
      const cells = [point.early, point.middle, point.late].map((days) => `<td>${daysText(days)}</td>`);
      expect(page.replaceAll("\n", "")).toContain(cells.join(""));
    }
  });

  it("rounds so that a small change is none", () => {
    expect([twoDigits(93.7), twoDigits(94.2), twoDigits(0.4712), twoDigits(-1.04), twoDigits(191.4)]).toEqual(
      ["94", "94", "0.47", "−1", "190"],
    );
    expect([daysText(0.49), daysText(0.5), daysText(11.49)]).toEqual(["under 0.5", "0.5", "11"]);
  });

  it("puts words over stretches so that none lies on another", () => {
    const points = ["freezing", "chilling", "chilling", "senescence", "decay", "decay"].map(
      (endedBy, at) => ({
        endedBy,
        at,
      }),
    );
    const runs = stretches(points, ({ at }: { at: number }) => at);
    expect(runs.map(({ from, to }: { from: number; to: number }) => [from, to])).toEqual([
      [0, 0],
      [1, 2],
      [3, 3],
      [4, 5],
    ]);
    const placed = placedWords(runs, (at: number) => 200 + 12 * at);
    for (const one of placed)
      for (const other of placed)
        if (one !== other && one.row === other.row)
          expect(Math.abs(one.x - other.x)).toBeGreaterThan(3.5 * (one.words.length + other.words.length));
  });
});

describe("season and portions", () => {
  it("says spans of months in words, and all year for all months", () => {
    expect(
      seasonWords("en", [
        [12, 5],
        [6, 7],
      ]),
    ).toBe("December to May, June to July");
    expect(
      seasonWords("es", [
        [10, 4],
        [5, 9],
      ]),
    ).toBe("todo el año");
  });

  it("divides the grams of a unit by those of a portion, ranges at their far ends", () => {
    const units = [
      { name: "head", grams: 350, low: 200, high: 500 },
      { name: "cup", grams: 80 },
    ];
    const [head, cup] = portionsOf({ units, portion: { value: 80, low: 50, high: 100 } });
    expect(head.portions).toEqual({ value: 4.375, low: 2, high: 10 });
    expect(cup.portions).toEqual({ value: 1, low: 0.8, high: 1.6 });
  });
});

describe("pages in a folder", () => {
  it("are told to be missing, stale or left over, and are brought up to date", () => {
    const folder = mkdtempSync(join(tmpdir(), "catalogue-pages-"));
    writeFileSync(join(folder, "old.html"), "old");
    writeFileSync(join(folder, "kept.html"), "kept");
    writeFileSync(join(folder, "changed.html"), "before");
    writeFileSync(join(folder, "catalogue.css"), "");
    const wanted = new Map(
      Object.entries({ "kept.html": "kept", "changed.html": "after", "new.html": "new" }),
    );
    const expected = { missing: ["new.html"], stale: ["changed.html"], leftOver: ["old.html"] };
    expect(differences(folder, wanted)).toEqual(expected);
    expect(readFileSync(join(folder, "changed.html"), "utf8")).toBe("before");
    expect(bringUpToDate(folder, wanted)).toEqual(expected);
    expect(differences(folder, wanted)).toEqual({ missing: [], stale: [], leftOver: [] });
    expect(readdirSync(folder).sort()).toEqual(["catalogue.css", "changed.html", "kept.html", "new.html"]);
    rmSync(folder, { recursive: true });
  });
});
