import { catalogue } from "@keepwright/catalogue";
import { type ClassAudience, ClassError, classReader, kindName, listedItems } from "@keepwright/handout";
import { describe, expect, it } from "vitest";

const audience = (tag: string): ClassAudience => {
  const [language, region] = tag.split("-") as ["en" | "es", string];
  return { language, region, print: "ordinary", paper: "a4", units: "metric" };
};
const readerOf = (tag: string) => classReader(audience(tag), catalogue());

function wrong(tag: string, names: readonly string[]) {
  try {
    listedItems(readerOf(tag), names);
  } catch (error) {
    if (error instanceof ClassError) return error.findings.map(({ value, remedy }) => `${value}. ${remedy}`);
    throw error;
  }
  return [];
}

describe("the kinds that are named for a class", () => {
  it.each(["en-GB", "en-US", "en-AU", "es-MX", "es-ES", "es-CL", "es-AR", "es-PE", "es-CO", "es-419"])(
    "in %s every kind is understood by what its readers call it, with nothing decided for them",
    (tag) => {
      const reader = readerOf(tag);
      for (const id of catalogue().commodities.keys()) {
        const name = kindName(reader.handout, id);
        expect(listedItems(reader, [name]), name).toEqual({ items: [id], taken: [] });
      }
    },
  );

  it.each([
    ["es-MX", "plátanos", "banana"],
    ["es-MX", "limones", "lime"],
    ["es-ES", "limones", "lemon"],
  ])("in %s %s are taken for what is mostly meant there: %s", (tag, word, id) => {
    expect(listedItems(readerOf(tag), [word]).items).toEqual([id]);
  });

  it("a word for several kinds that is no kind's own name is told with what it was taken for", () => {
    const { items, taken } = listedItems(readerOf("en-GB"), ["lettuce", "kale"]);
    expect(items).toEqual(["head-lettuce", "kale"]);
    expect(taken).toEqual([{ word: "lettuce", id: "head-lettuce" }]);
  });

  it("what is not known, or means none of several kinds mostly, is told in the reader's language with names of the region", () => {
    expect(wrong("en-GB", ["greens", "zorbulon"])).toEqual([
      expect.stringMatching(/^“greens”: it may be more than one kind\. Give one of: .*pak choi/),
      "“zorbulon”: no kind by this name is known. Check the spelling, or try another name.",
    ]);
    const [several, none] = wrong("es-MX", ["greens", "zorbulón"]);
    expect(several).toMatch(/^“greens”: puede ser más de una cosa\. Pon uno de estos: .*acelgas/);
    expect(none).toMatch(/^“zorbulón”: no se conoce ningún producto con este nombre\. Revisa/);
  });
});
