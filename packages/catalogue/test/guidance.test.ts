import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import {
  englishGrade,
  guidanceTexts,
  spanishEase,
  spanishSyllables,
} from "../../../scripts/lib/readingLevel.mjs";
import {
  bundledData,
  CatalogueError,
  type CommodityFile,
  kindNames,
  loadCatalogue,
  loadGuidance,
} from "../src/index.js";

const folder = fileURLToPath(new URL("../data/commodities/", import.meta.url));
const files = readdirSync(folder).map(
  (name): CommodityFile => JSON.parse(readFileSync(folder + name, "utf8")),
);
const guided = files.filter(({ guidance }) => guidance !== undefined);

function faults(commodities: unknown): readonly string[] {
  try {
    loadCatalogue({ ...bundledData(), commodities });
  } catch (error) {
    if (error instanceof CatalogueError) return error.problems;
    throw error;
  }
  return [];
}

describe("the guidance that comes with the program", () => {
  it("there is some for every kind", () => {
    expect(files.filter(({ guidance }) => guidance === undefined).map(({ id }) => id)).toEqual([]);
  });

  it("is accepted with its kind by every check", () => expect(faults(files)).toEqual([]));

  it("is loaded in either language as the files have it, and names alone as well", async () => {
    const [english, spanish] = await Promise.all([loadGuidance("en"), loadGuidance("es")]);
    expect([...english.keys()]).toEqual(guided.map(({ id }) => id));
    for (const { id, guidance } of guided) {
      expect(english.get(id)).toMatchObject({ words: guidance?.words.en, season: guidance?.season });
      expect(spanish.get(id)?.words).toEqual(guidance?.words.es);
    }
    expect([...kindNames().values()]).toEqual(files.map(({ id, names }) => ({ id, names })));
  });

  it.each(guided.map(({ id, guidance }) => [id, guidance!.words] as const))(
    "%s is read at grade 6 or below in English, and at an ease of 70 (sixth grade) or above in Spanish",
    (_, { en, es }) => {
      expect(englishGrade(guidanceTexts(en))).toBeLessThanOrEqual(6);
      expect(spanishEase(guidanceTexts(es))).toBeGreaterThanOrEqual(70);
    },
  );
});

describe("faults of guidance", () => {
  const spoiled = (spoil: (guidance: NonNullable<CommodityFile["guidance"]>) => void) => {
    const copy = structuredClone(files);
    spoil(copy.find(({ id }) => id === "avocado")!.guidance!);
    return faults(copy);
  };
  it("languages that do not answer each other", () => {
    expect(spoiled(({ words }) => words.es.going.pop())).toEqual([
      "avocado: guidance.words.going has 2 lines in English and 1 in Spanish; write as many in both.",
    ]);
  });
  it("plastic only", () => {
    expect(spoiled(({ wraps }) => Object.assign(wraps, { suit: ["lidded box", "perforated bag"] }))).toEqual([
      "avocado: guidance.wraps.suit has 0 without plastic (lidded box, perforated bag); name at least two.",
    ]);
  });
  it("a source that nobody has, and hazards without one", () => {
    expect(spoiled(({ basis }) => Object.assign(basis.save, { source: "nowhere" }))[0]).toContain(
      'names the source "nowhere"',
    );
    expect(spoiled(({ basis }) => Reflect.deleteProperty(basis, "hazards"))).toEqual([
      "avocado: guidance.basis.hazards is missing; say where its facts come from.",
    ]);
  });
});

describe("how hard a text is to read", () => {
  it.each([
    ["aguacate", 4],
    ["queso", 2],
    ["pingüino", 3],
    ["día", 2],
    ["ciudad", 2],
    ["leer", 2],
    ["refrigerador", 5],
    ["muy", 1],
  ])("%s has %d syllables", (word, syllables) => expect(spanishSyllables(word)).toBe(syllables));

  it("long words and long sentences are harder, in both languages", () => {
    expect(englishGrade(["Eat it soon."])).toBeLessThan(
      englishGrade(["Immediate consumption is recommended, considering its accelerated deterioration."]),
    );
    expect(spanishEase(["Come esto hoy."])).toBeGreaterThan(
      spanishEase(["Se recomienda su consumo inmediato considerando el deterioro acelerado."]),
    );
  });
});
