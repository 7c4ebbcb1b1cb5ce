import { catalogue, kindNames, namesOf, suggestKinds } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const kinds = kindNames();
const ids = (text: string, language: "en" | "es" = "en") =>
  suggestKinds(kinds, text, { language }).map(({ id }) => id);

describe("kinds suggested as one types", () => {
  it.each([
    ["avo", "avocado"],
    ["Aguac", "avocado"],
    ["cilan", "cilantro"],
    ["brocolli", "broccoli"],
    ["zanaoria", "carrot"],
    ["limón", "lemon"],
    ["lettuce", "head-lettuce"],
  ])("%s brings %s", (text, id) => {
    expect(ids(text)).toContain(id);
  });

  it("offers nothing for other foods, nor names that only begin with “fresh”", () => {
    expect(ids("milk")).toEqual([]);
    for (const { name } of suggestKinds(kinds, "fre", { language: "es" })) expect(name).not.toMatch(/^fresh/);
    expect(ids("fresh bas")).toContain("basil");
  });

  it("puts a kind first by any of its whole names", () => {
    for (const { id, names } of kinds.values())
      for (const language of ["en", "es"] as const) {
        const { many } = names[language];
        const first = suggestKinds(kinds, many, { language })[0];
        const sharers = [...kinds.values()].filter(
          (other) =>
            other.id !== id &&
            [other.names.en, other.names.es].some((own) => [own.one, own.many, ...own.also].includes(many)),
        );
        if (sharers.length === 0) expect(first?.id, many).toBe(id);
      }
  });

  it("names each kind once, and no more than asked for, whatever is typed", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "binary", maxLength: 80 }),
        fc.integer({ min: 1, max: 9 }),
        (text, most) => {
          const found = suggestKinds(kinds, text, { most });
          expect(found.length).toBeLessThanOrEqual(most);
          expect(new Set(found.map(({ id }) => id)).size).toBe(found.length);
        },
      ),
      { numRuns: 50 },
    );
  });

  it("puts what kinds are mostly called, in the language in use, before other names", () => {
    for (const language of ["en", "es"] as const)
      for (const { id, name } of suggestKinds(kinds, "ca", { language })) {
        const own = kinds.get(id)?.names[language];
        expect([own?.one, own?.many]).toContain(name);
      }
  });

  it("suggests nothing for nothing", () => {
    expect(ids("  ")).toEqual([]);
    expect(ids("qqqqxx")).toEqual([]);
  });
});

const first = (text: string) => suggestKinds(kindNames(), text)[0]?.id;

describe("any name, with slips", () => {
  it.each([
    ["avo", "avocado"],
    ["AGUAC", "avocado"],
    ["palta", "avocado"],
    ["brocolli", "broccoli"],
    ["brocl", "broccoli"],
    ["tomatoe", "tomato"],
    ["jitomate", "tomato"],
    ["lettuce roma", "romaine"],
    ["zanahoria", "carrot"],
    ["pina", "pineapple"],
    ["bannana", "banana"],
  ])("%j leads to %s", (text, id) => {
    expect(first(text)).toBe(id);
  });

  it.each([
    ["sanahoria", "carrot"],
    ["xitomate", "tomato"],
    ["hitomate", "tomato"],
    ["gitomate", "tomato"],
    ["kebolla", "onion"],
  ])(
    "%j, whose first letter is wrong, leads to %s, with words for several kinds at hand or not",
    (text, id) => {
      expect(first(text)).toBe(id);
      expect(suggestKinds(kindNames(), text, { groups: catalogue().groups })[0]?.id).toBe(id);
    },
  );

  it("every name of every kind, in both languages, finds its kind when it is typed out", () => {
    const missed = [...kindNames().values()].flatMap((kind) =>
      namesOf(kind).filter((name) => !suggestKinds(kindNames(), name).some(({ id }) => id === kind.id)),
    );
    expect(missed).toEqual([]);
  });

  it("a usual name finds its kind when its second half is still missing, or one letter of it is wrong", () => {
    for (const { id, names } of kindNames().values()) {
      for (const language of ["en", "es"] as const) {
        const { one } = names[language];
        const found = (text: string) =>
          suggestKinds(kindNames(), text, { most: 20, language }).map((each) => each.id);
        expect(found(one.slice(0, Math.max(4, Math.ceil(0.75 * one.length)))), one).toContain(id);
        if (one.length < 6) continue;
        const middle = Math.floor(one.length / 2);
        expect(found(`${one.slice(0, middle)}x${one.slice(middle + 1)}`), `${one} misspelt`).toContain(id);
      }
    }
  });

  it("a word for several kinds suggests each of them, the usual one first", () => {
    const ids = suggestKinds(kindNames(), "lettuce", { groups: catalogue().groups }).map(({ id }) => id);
    expect(ids[0]).toBe("head-lettuce");
    expect(ids).toEqual(expect.arrayContaining(["leaf-lettuce", "romaine"]));
  });

  it.each(["", "  ", "qqqq", "old bread", "x".repeat(500), "(*[\\"])("%j suggests nothing", (text) => {
    expect(suggestKinds(kindNames(), text)).toEqual([]);
  });
});
