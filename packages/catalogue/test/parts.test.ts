import { readFileSync } from "node:fs";
import { brotliCompressSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parted } from "../../../scripts/lib/provenance.mjs";
import { catalogue, evidenceIn, figureCatalogue } from "../src/index.js";
import { withProvenance } from "../src/provenance.js";

const parts = ["names", "figures", "provenance", "guidance", "guidanceEnglish", "guidanceSpanish"];
const bytes = (part: string) =>
  brotliCompressSync(readFileSync(new URL(`../src/${part}.generated.ts`, import.meta.url))).length;

describe("the parts the catalogue is loaded in", () => {
  it("are under 250 kB in all, compressed by brotli as npm start serves them; the names, needed first, under 20 kB", () => {
    const sizes = Object.fromEntries(parts.map((part) => [part, bytes(part)]));
    const whole = Object.values(sizes).reduce((sum, each) => sum + each, 0);
    expect(whole, JSON.stringify(sizes)).toBeLessThan(250_000);
    expect(sizes.names, JSON.stringify(sizes)).toBeLessThan(20_000);
  });

  it("have the same kinds, with provenance and without", () => {
    expect([...figureCatalogue().commodities.keys()]).toEqual([...catalogue().commodities.keys()]);
    for (const [id, kind] of figureCatalogue().commodities) {
      const whole = catalogue().commodities.get(id)!;
      expect(kind.water.transpiration.value).toBe(whole.water.transpiration.value);
      expect(kind.respiration.map(({ low, high }) => [low, high])).toEqual(
        whole.respiration.map(({ low, high }) => [low, high]),
      );
      expect(evidenceIn(whole).length, id).toBeGreaterThan(0);
    }
  });
});

describe("provenance kept apart", () => {
  it("comes together again with what it was taken from", () => {
    const leaf = fc.oneof(fc.integer(), fc.string(), fc.boolean());
    const value = fc.letrec((tie) => ({
      record: fc.dictionary(
        fc.constantFrom("value", "note", "place", "source", "low", "rivals", "list"),
        tie("any"),
      ),
      any: fc.oneof({ depthSize: "small" }, leaf, tie("record"), fc.array(tie("record"), { maxLength: 3 })),
    }));
    fc.assert(
      fc.property(value.record, (whole) => {
        const { figures, provenance } = parted(whole);
        expect(withProvenance(figures, provenance)).toEqual(whole);
      }),
    );
  });
});
