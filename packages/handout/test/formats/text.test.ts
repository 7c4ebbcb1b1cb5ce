import { wrapped } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("breaking lines", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "ö"), minLength: 1, maxLength: 30 });
  it("keeps every word, in order, and no line is wider than 88 unless one word is", () => {
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 60 }), (words) => {
        const lines = wrapped(words.join(" "), "  ");
        expect(lines.join(" ").split(/\s+/).filter(Boolean)).toEqual(words);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(88);
      }),
    );
  });
});
