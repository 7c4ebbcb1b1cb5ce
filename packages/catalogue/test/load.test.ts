import { describe, expect, it } from "vitest";
import { CatalogueError, loadCatalogue, type RawCatalogue } from "../src/index.js";
import { kind, smallCatalogue } from "./fixtures/kinds.js";

function faults(raw: RawCatalogue): readonly string[] {
  try {
    loadCatalogue(raw);
  } catch (error) {
    if (error instanceof CatalogueError) return error.problems;
    throw error;
  }
  return [];
}

/** The small catalogue with its apple spoiled. */
function spoiled(spoil: (apple: Record<string, never>) => void): RawCatalogue {
  const raw = smallCatalogue();
  spoil(raw.commodities[0] as unknown as Record<string, never>);
  return raw;
}

describe("a catalogue in order", () => {
  it("is accepted, and what was left out is filled in", () => {
    const apple = loadCatalogue(smallCatalogue()).commodities.get("apple");
    expect(apple?.names.en.also).toEqual([]);
    expect(apple?.ethylene.injuries).toEqual([]);
    expect(apple?.sprouting).toEqual([]);
  });
});

// biome-ignore lint/suspicious/noExplicitAny: the point is to break the shape
const cases: [string, (apple: any) => void, string][] = [
  [
    "a figure in words",
    (a) => {
      a.storage.life.low = "ten";
    },
    'kind "apple": storage.life.low is "ten"; write a number.',
  ],
  [
    "a figure left out",
    (a) => {
      delete a.water.maximumLoss.value;
    },
    'kind "apple": water.maximumLoss.value is missing; write a number.',
  ],
  [
    "a figure too large",
    (a) => {
      a.storage.relativeHumidity.high = 120;
    },
    'kind "apple": storage.relativeHumidity.high is 120; write a number of at most 100.',
  ],
  [
    "a figure too small",
    (a) => {
      a.storage.temperature.low = -9;
    },
    'kind "apple": storage.temperature.low is -9; write a number of at least -3.',
  ],
  [
    "another unit",
    (a) => {
      a.household.portion.unit = "oz";
    },
    'kind "apple": household.portion.unit is "oz"; write "g".',
  ],
  [
    "a class that is none",
    (a) => {
      a.decay.proneness.class = "huge";
    },
    'kind "apple": decay.proneness.class is "huge"; write "very low" or "low" or "moderate" or "high" or "very high".',
  ],
  [
    "a range upside down",
    (a) => {
      a.storage.life.low = 30;
    },
    "the low end is above the high end; write low ≤ value ≤ high",
  ],
  [
    "a field unknown",
    (a) => {
      a.colour = "red";
    },
    'remove or respell "colour"',
  ],
  [
    "no source",
    (a) => {
      delete a.storage.life.source;
    },
    'kind "apple": storage.life.source is missing; write a string.',
  ],
  [
    "an id that is no file name",
    (a) => {
      a.id = "Big Apple";
    },
    "use lower-case words joined by hyphens, as in the file name",
  ],
  [
    "a source unknown",
    (a) => {
      a.storage.life.source = "hearsay";
    },
    'apple: storage.life names the source "hearsay"; use the id of a source in data/sources, or add it there.',
  ],
  [
    "a count unit unknown",
    (a) => {
      a.household.countUnit = "head";
    },
    'apple: household.countUnit is "head"; write one of "each", "bag", "bunch".',
  ],
  [
    "a unit twice",
    (a) => {
      a.household.units[1].name = "each";
    },
    'apple: household.units has "each" twice; keep one.',
  ],
  [
    "respiration out of order",
    (a) => {
      a.respiration.reverse();
    },
    "apple: respiration.1.temperature is 0; write the table in ascending temperature, each once.",
  ],
  [
    "respiration that falls",
    (a) => {
      a.respiration[1].low = 1;
      a.respiration[1].high = 2;
    },
    "apple: respiration.1 falls from 5–7 to 1–2; check the figures, rates rise with temperature.",
  ],
  [
    "ripening in a kind that is not climacteric",
    (a) => {
      const of = (value: number, unit: string) => ({ ...a.storage.freezingPoint, value, unit });
      a.ripening = {
        arrives: of(0, "ripeness"),
        daysToRipe: of(5, "d at 20 °C"),
        minimum: of(5, "°C"),
        maximum: of(30, "°C"),
        ripeLife: { ...of(3, "d"), temperature: 5 },
        ethyleneResponse: { ...a.ethylene.sensitivity },
      };
    },
    "apple: climacteric is false and ripening is given; leave it out, only climacteric kinds ripen after harvest.",
  ],
  [
    "a name of another kind",
    (a) => {
      a.names.en.also = ["Carrots"];
    },
    'carrot: names has "carrots", which apple has too; drop it from one, or declare the group in data/groups.json.',
  ],
];

describe("a catalogue with a fault is refused, and the message says where and what to do", () => {
  it.each(cases)("%s", (_, spoil, message) => {
    expect(faults(spoiled(spoil)).join("\n")).toContain(message);
  });

  it("names every fault at once", () => {
    const raw = spoiled((apple) => {
      Object.assign(apple, { family: "", organ: "wing" });
    });
    expect(faults(raw)).toHaveLength(2);
  });

  it.each([null, 7, "text", {}])("a list that is %j", (value) => {
    expect(faults({ ...smallCatalogue(), commodities: value }).join()).toContain("write a list, [ … ]");
  });

  it.each([null, 7, "text", []])("a record that is %j", (value) => {
    expect(faults({ ...smallCatalogue(), commodities: [value] })[0]).toContain(
      "kind number 1: the record is",
    );
  });

  it("an id used twice", () => {
    const raw = smallCatalogue();
    raw.commodities.push(
      kind("apple", { one: "apple", many: "apples" }, { one: "manzana", many: "manzanas" }),
    );
    expect(faults(raw)).toContain('kind "apple": the id is used twice; keep one.');
  });

  it("a smell between kinds that are not there", () => {
    const raw = smallCatalogue();
    const pair = {
      giver: "apple",
      taker: "moon",
      source: "fixture",
      place: "none",
      kind: "inferred",
      fromMemory: false,
    };
    expect(faults({ ...raw, odours: [pair] })[0]).toContain('there is no kind "moon"');
  });

  it("a group of kinds that are not there", () => {
    expect(faults({ ...smallCatalogue(), groups: [{ word: "greens", kinds: ["moon"] }] })[0]).toContain(
      'group "greens"',
    );
  });

  it("a shared name is accepted where a group declares it", () => {
    const raw = smallCatalogue();
    raw.commodities[0]!.names.en.also = ["root"];
    raw.commodities[1]!.names.en.also = ["root"];
    expect(faults(raw)).toHaveLength(1);
    expect(faults({ ...raw, groups: [{ word: "root", kinds: ["apple", "broccoli"] }] })).toEqual([]);
  });
});
