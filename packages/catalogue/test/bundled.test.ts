import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkDefaults } from "../src/check/defaults.js";
import {
  bundledData,
  catalogue,
  findKind,
  findKinds,
  loadCatalogue,
  loadGuidance,
  type Source,
  unusedSources,
} from "../src/index.js";

/** Our own code and manual, where relations cite their sources; the bundled data aside. */
const textsOf = (folders: readonly string[]): string[] =>
  folders.flatMap((folder) => {
    const path = fileURLToPath(new URL(`../../../${folder}/`, import.meta.url));
    return readdirSync(path, { recursive: true, encoding: "utf8" })
      .filter((name) => /^(?!.*(?:node_modules|dist\/|generated|test\/)).*\.(?:ts|md)$/.test(name))
      .map((name) => readFileSync(path + name, "utf8"));
  });

/** By its id, or as prose does: first author and year ("Wills et al. 1999"). */
function isCited(texts: readonly string[], source: Source): boolean {
  const [, author, year] = /^([A-Z][\p{L}-]+),.*?\b((?:19|20)\d\d)\b/u.exec(source.citation) ?? [];
  const inProse = author && year ? new RegExp(`${author}[^\\n]{0,60}${year}`) : undefined;
  return texts.some((text) => text.includes(`"${source.id}"`) || inProse?.test(text));
}

/** Kinds the catalogue must have, by the names people use. */
const required =
  "apple, pear, quince, banana, plantain, orange, clementine, mandarin, lemon, lime, grapefruit, grape, strawberry, raspberry, blueberry, blackberry, cherry, peach, nectarine, plum, apricot, mango, papaya, pineapple, kiwifruit, avocado, cantaloupe, honeydew, watermelon, pomegranate, fig, tomato, cherry tomato, cucumber, sweet pepper, chilli, eggplant, zucchini, winter squash, pumpkin, broccoli, cauliflower, Brussels sprouts, cabbage, Chinese cabbage, bok choy, kale, chard, spinach, arugula, head lettuce, romaine, leaf lettuce, celery, fennel, asparagus, artichoke, green bean, pea in pod, sweet corn, okra, mushroom, beet, carrot, parsnip, radish, turnip, celeriac, potato, sweet potato, onion, green onion, leek, shallot, garlic, ginger, basil, parsley, cilantro, mint, dill, rosemary, thyme, tomatillo, nopal, chayote, jicama, yuca, taro, lychee, longan, rambutan, dragon fruit, guava, passion fruit, persimmon, fuyu persimmon, starfruit, cherimoya, tamarillo, kumquat, bitter melon, luffa, long bean, edamame, daikon, lotus root, water chestnut, gai lan, choy sum, mizuna, Thai basil, lemongrass, curry leaf, epazote, sorrel, ramps, fiddlehead, kohlrabi, salsify, sunchoke, cardoon, radicchio, microgreens, bean sprouts, wild mushrooms, edible flowers, turmeric, horseradish, summer apple, new potato, Asian pear";

describe("the catalogue that comes with the program", () => {
  it("is accepted by every check", () => {
    expect(() => loadCatalogue(bundledData())).not.toThrow();
  });

  it("is the same when trusted as when checked", () => {
    expect(catalogue()).toEqual(loadCatalogue(bundledData()));
  });

  it("names no source that nothing uses: no figure, no guidance, no relation, no page of the manual", async () => {
    const guidance = [...(await loadGuidance("en")).values()];
    const written = textsOf(["packages", "docs"]);
    expect(
      unusedSources(catalogue(), guidance).filter((id) => !isCited(written, catalogue().sources.get(id)!)),
    ).toEqual([]);
  });

  it("takes the default among rivals by the rule, or says why not", () => {
    expect(checkDefaults(catalogue())).toEqual([]);
  });

  it("has at least 170 kinds", () => {
    expect(catalogue().commodities.size).toBeGreaterThanOrEqual(170);
  });

  it.each(required.split(", "))("has %s", (name) => {
    expect(findKind(catalogue(), name)).toBeDefined();
  });
});

describe("words that name several kinds, or another one in another country", () => {
  it.each([
    ["pomelo", ["pomelo", "grapefruit"]],
    ["endive", ["endive", "belgian-endive"]],
  ])("%s is asked about", (name, kinds) => {
    expect(findKind(catalogue(), name)).toBeUndefined();
    expect(findKinds(catalogue(), name).map(({ id }) => id)).toEqual(expect.arrayContaining(kinds));
  });
});

describe("every name of every kind finds that kind", () => {
  it.each([...catalogue().commodities.values()].map((kind) => [kind.id, kind] as const))("%s", (id, kind) => {
    for (const { one, many, also } of Object.values(kind.names)) {
      for (const name of [one, many, ...also]) {
        expect(
          findKinds(catalogue(), name).map((candidate) => candidate.id),
          name,
        ).toContain(id);
      }
      expect(findKinds(catalogue(), one)[0]?.id, one).toBe(id);
    }
  });
});

describe("names people say and misspell", () => {
  it.each([
    ["aple", "apple"],
    ["brocolli", "broccoli"],
    ["tomatos", "tomato"],
    ["potatos", "potato"],
    ["courgette", "zucchini"],
    ["aubergine", "eggplant"],
    ["rocket", "arugula"],
    ["coriander", "cilantro"],
    ["spring onions", "green-onion"],
    ["scallions", "green-onion"],
    ["ají", "chilli"],
    ["zanahoria", "carrot"],
    ["peppers, red", "sweet-pepper"],
    ["red bell peppers", "sweet-pepper"],
    ["bananna", "banana"],
    ["avacado", "avocado"],
    ["zuchini", "zucchini"],
    ["cauliflour", "cauliflower"],
    ["brussel sprouts", "brussels-sprouts"],
    ["cantalope", "cantaloupe"],
    ["rasberries", "raspberry"],
    ["strawberrys", "strawberry"],
    ["asparagas", "asparagus"],
    ["parsely", "parsley"],
    ["rosemarry", "rosemary"],
    ["pinapple", "pineapple"],
    ["manzanas", "apple"],
    ["aguacate", "avocado"],
    ["espinacas", "spinach"],
    ["cebolla", "onion"],
    ["jitomates", "tomato"],
    ["lechuga romana", "romaine"],
    ["Swiss chard", "chard"],
    ["beetroot", "beet"],
    ["swede", "rutabaga"],
    ["mange tout", "snow-pea"],
    ["kiwis", "kiwifruit"],
    ["clementines", "mandarin"],
  ])("%s → %s", (text, id) => {
    expect(findKind(catalogue(), text)?.id).toBe(id);
  });

  it.each(["greens", "squash", "melon", "berries", "pepper", "lettuce", "peas"])(
    "%s may be several kinds, none for certain",
    (text) => {
      expect(findKinds(catalogue(), text).length).toBeGreaterThan(1);
      expect(findKind(catalogue(), text)).toBeUndefined();
    },
  );

  it.each(["xyzzy", "bread", "milk", "eggs", "rice", "chicken", "soap"])("%s is none of ours", (text) => {
    expect(findKind(catalogue(), text)).toBeUndefined();
  });
});

describe("wraps", () => {
  const wrap = (id: Parameters<ReturnType<typeof catalogue>["wraps"]["get"]>[0]) =>
    catalogue().wraps.get(id)!;

  it("are all nine, each figure with where it was taken from and with a range about it", () => {
    expect(catalogue().wraps.size).toBe(9);
    for (const { vapourExchange, ethyleneExchange } of catalogue().wraps.values()) {
      for (const figure of [vapourExchange, ethyleneExchange]) {
        expect(figure.place.length).toBeGreaterThan(20);
        expect(figure.low).toBeDefined();
        expect(figure.high).toBeDefined();
      }
    }
  });

  it("let ethylene through no faster than vapour: it diffuses more slowly", () => {
    for (const { vapourExchange, ethyleneExchange } of catalogue().wraps.values()) {
      expect(ethyleneExchange.value).toBeLessThanOrEqual(vapourExchange.value);
    }
  });

  it("the perforated bag follows from twenty holes of 5.5 mm in 30 µm film, within 10 %", () => {
    const hole = (diffusivity: number) =>
      (diffusivity * (Math.PI / 4) * 0.0055 ** 2) / (0.00003 + 0.8 * 0.0055);
    const litresAnHour = (diffusivity: number) => 20 * hole(diffusivity) * 3.6e6;
    expect(wrap("perforated bag").vapourExchange.value / litresAnHour(2.4e-5)).toBeCloseTo(1.08, 1);
    expect(wrap("perforated bag").ethyleneExchange.value / litresAnHour(1.4e-5)).toBeCloseTo(1.02, 1);
  });

  it("hold moisture in this order: film, lidded box, perforated bag, paper", () => {
    const exchange = (["closed film bag", "lidded box", "perforated bag", "paper bag", "none"] as const).map(
      (id) => wrap(id).vapourExchange.value,
    );
    expect(exchange).toEqual([...exchange].sort((one, other) => one - other));
  });
});

describe("safety limits and smells", () => {
  it("have the limits that others stand on, on the safe side of their sources", () => {
    const value = (id: string) => catalogue().safety.get(id)?.value;
    expect(value("refrigerator-at-most")).toBeLessThanOrEqual((40 - 32) / 1.8);
    expect(value("controlled-cold-holding-at-most")).toBe(5);
    expect(value("refrigerate-cut-within")).toBe(2);
    expect(value("cut-ready-to-eat-days")).toBe(7);
    expect(value("mould-on-firm-cut-around")).toBe(2.5);
    expect(value("potato-glycoalkaloids")).toBe(200);
    expect(value("garlic-in-oil-refrigerated-days")).toBe(4);
  });

  it("no kind takes its own smell, and no pair stands twice", () => {
    const pairs = catalogue().odours.map((pair) => `${pair.giver}>${pair.taker}`);
    expect(new Set(pairs).size).toBe(pairs.length);
    expect(catalogue().odours.filter((pair) => pair.giver === pair.taker)).toEqual([]);
  });
});
