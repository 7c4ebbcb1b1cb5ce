import { describe, expect, it } from "vitest";
import { catalogue, folded, stemKey } from "../../src/index.js";

describe("folding", () => {
  it.each([
    ["Ají (picante)", "aji picante"],
    ["  Brussels   SPROUTS ", "brussels sprouts"],
    ["lady's finger", "ladys finger"],
    ["pe-tsai", "pe tsai"],
    ["échalote", "echalote"],
  ])("%j becomes %j", (text, result) => {
    expect(folded(text)).toBe(result);
  });

  it.each([
    ["apple", "apples"],
    ["tomato", "tomatoes"],
    ["tomato", "tomatos"],
    ["cherry", "cherries"],
    ["peach", "peaches"],
    ["radish", "radishes"],
    ["grape", "grapes"],
    ["naranja", "naranjas"],
    ["melón", "melones"],
    ["kiwi", "kiwis"],
    ["red pepper", "peppers, red"],
  ])("%s and %s are one", (one, many) => {
    expect(stemKey(one)).toBe(stemKey(many));
  });

  it("brings no two kinds together by their usual names", () => {
    const owners = new Map<string, string>();
    for (const { id, names } of catalogue().commodities.values()) {
      for (const name of [names.en.one, names.en.many]) {
        const key = stemKey(name);
        expect(owners.get(key) ?? id, name).toBe(id);
        owners.set(key, id);
      }
    }
  });
});
