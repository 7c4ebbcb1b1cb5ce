import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { confident, findKind, findKinds, loadCatalogue } from "../src/index.js";
import { smallCatalogue } from "./fixtures/kinds.js";

const catalogue = loadCatalogue(smallCatalogue());

describe("a name finds its kind", () => {
  it.each([
    ["apple", "apple", "exact"],
    ["APPLES", "apple", "exact"],
    ["  apples. ", "apple", "exact"],
    ["courgettes", "zucchini", "word order"],
    ["scallions", "green-onion", "word order"],
    ["spring onions", "green-onion", "word order"],
    ["peppers, red", "pepper", "word order"],
    ["pepper hot", "chilli", "word order"],
    ["aji", "chilli", "exact"],
    ["AJÍ", "chilli", "exact"],
    ["zanahoria", "carrot", "exact"],
    ["calabacin", "zucchini", "exact"],
    ["organic gala apples", "apple", "name and more"],
    ["sweet red pepper", "pepper", "name and more"],
    ["sweet pepper", "pepper", "exact"],
  ])("%s → %s (%s)", (text, id, by) => {
    expect(findKind(catalogue, text)).toMatchObject({ id, by });
  });
});

describe("a misspelt name still finds its kind, and says so", () => {
  it.each([
    ["aple", "apple"],
    ["appel", "apple"],
    ["brocolli", "broccoli"],
    ["brocoli", "broccoli"],
    ["brocc oli", "broccoli"],
    ["tomatos", "tomato"],
    ["tomatoe", "tomato"],
    ["zuchini", "zucchini"],
    ["zuccini", "zucchini"],
    ["carots", "carrot"],
    ["cherrys", "cherry"],
    ["cherry tomatos", "cherry-tomato"],
    ["sping onions", "green-onion"],
    ["zanaoria", "carrot"],
  ])("%s → %s", (text, id) => {
    expect(findKind(catalogue, text)?.id).toBe(id);
  });

  it("a closer spelling scores higher", () => {
    const score = (text: string) => findKinds(catalogue, text)[0]?.score ?? 0;
    expect(score("broccoli")).toBeGreaterThan(score("brocolli"));
    expect(score("zanahorla")).toBeGreaterThan(score("zanaorla"));
  });
});

describe("what is uncertain is never taken for granted", () => {
  it.each([
    ["squash", ["pumpkin", "zucchini"]],
    ["pepper", ["chilli", "pepper"]],
    ["lettuce", ["head-lettuce", "leaf-lettuce"]],
  ])("%s may be any of %j", (text, ids) => {
    const found = findKinds(catalogue, text);
    expect(found.map((candidate) => candidate.id).sort()).toEqual(expect.arrayContaining(ids));
    expect(findKind(catalogue, text)).toBeUndefined();
  });

  it.each(["xyzzy", "", " ", "…", "ab", "motor oil", "<script>", "12", "🍎", "constructor", "__proto__"])(
    "%j names nothing",
    (text) => {
      expect(findKinds(catalogue, text)).toEqual([]);
    },
  );
});

describe("any text", () => {
  it("never throws, gives the same answer twice, scores in 0…1 in falling order, and is sure of one kind at most", () => {
    const names = catalogue.commodities.size;
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary", maxLength: 200 }),
          fc.string({ unit: fc.constantFrom(..."aeplomtcr n") }),
        ),
        (text) => {
          const found = findKinds(catalogue, text);
          expect(findKinds(catalogue, text)).toEqual(found);
          expect(found.length).toBeLessThanOrEqual(Math.min(12, names));
          expect(found.filter((candidate) => candidate.score >= confident).length).toBeLessThanOrEqual(1);
          found.forEach((candidate, index) => {
            expect(candidate.score).toBeGreaterThanOrEqual(0);
            expect(candidate.score).toBeLessThanOrEqual(found[index - 1]?.score ?? 1);
          });
        },
      ),
    );
  });
});
