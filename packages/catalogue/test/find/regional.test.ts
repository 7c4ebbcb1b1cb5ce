import { catalogue, catalogueFor, findKind, findKinds, namesFor } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";

const shown = (id: string, tag: string) => namesFor(catalogue().commodities.get(id)!, tag).many;

describe("a kind is called what the region of its reader calls it", () => {
  it.each([
    ["tomato", "es-MX", "jitomates"],
    ["tomato", "es-ES", "tomates"],
    ["tomato", "es-419", "tomates"],
    ["avocado", "es-AR", "paltas"],
    ["beet", "es-ES", "remolachas"],
    ["sweet-corn", "es-AR", "choclos"],
    ["green-bean", "es-ES", "judías verdes"],
    ["pea-in-pod", "es-ES", "guisantes"],
    ["potato", "es-ES", "patatas"],
    ["peach", "es-ES", "melocotones"],
    ["banana", "es-MX", "plátanos"],
    ["eggplant", "en-GB", "aubergines"],
    ["eggplant", "en-US", "eggplants"],
    ["zucchini", "en-GB", "courgettes"],
    ["cilantro", "en-GB", "coriander"],
    ["arugula", "en-GB", "rocket"],
    ["arugula", "en-US", "arugula"],
    ["sweet-pepper", "en-US", "bell peppers"],
  ])("%s in %s: %s", (id, tag, many) => {
    expect(shown(id, tag)).toBe(many);
  });

  it("and what it is called elsewhere stands among its other names", () => {
    expect(namesFor(catalogue().commodities.get("tomato")!, "es-MX").also).toContain("tomate");
  });

  it("by names it is found by, of no other kind in any region", () => {
    for (const { id, names } of catalogue().commodities.values())
      for (const [language, set] of Object.entries(names))
        for (const { of, one, many } of set.regional ?? [])
          for (const region of of) {
            const here = catalogueFor(catalogue(), `${language}-${region}`);
            for (const name of [one, many])
              expect(findKinds(here, name)[0]?.id, `${name}, ${region}`).toBe(id);
          }
  });

  it("no two kinds alike", () => {
    for (const tag of [
      "en-GB",
      "en-US",
      "en-AU",
      "en-IN",
      "en-ZA",
      "es-MX",
      "es-ES",
      "es-AR",
      "es-CL",
      "es-PE",
      "es-CO",
    ]) {
      const all = [...catalogue().commodities.keys()].map((id) => shown(id, tag));
      expect(new Set(all).size, tag).toBe(all.length);
    }
  });
});

describe("a word for several kinds", () => {
  it.each([
    ["plátanos", "es-MX", "banana"],
    ["limones", "es-MX", "lime"],
    ["limones", "es-ES", "lemon"],
  ])("%s in %s is %s before another, and still asked about", (word, tag, id) => {
    const here = catalogueFor(catalogue(), tag);
    expect(findKinds(here, word)[0]?.id).toBe(id);
    expect(findKind(here, word)).toBeUndefined();
  });

  it("is the same catalogue where a region has nothing of its own", () => {
    expect(catalogueFor(catalogue(), "es-419")).toBe(catalogue());
    expect(catalogueFor(catalogue(), "es-MX")).toBe(catalogueFor(catalogue(), "es-MX"));
  });
});
