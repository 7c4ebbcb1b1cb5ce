import { kindNames, suggestKinds } from "@keepwright/catalogue";
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
