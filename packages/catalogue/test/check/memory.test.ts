import { describe, expect, it } from "vitest";
import { checkMemory } from "../../src/check/memory.js";
import { catalogue, loadCatalogue } from "../../src/index.js";
import { smallCatalogue } from "../fixtures/kinds.js";

const standings = { handbook: "a-handbook", paper: "a-paper", "public authority": "an-authority" } as const;

/** The faults of a small catalogue in which the evidence of one figure is written as given. */
function faultsOf(
  evidence: { source?: string; place: string; kind: string; note?: string },
  fromMemory = false,
) {
  const small = loadCatalogue(smallCatalogue());
  const apple = small.commodities.get("apple")!;
  const figure = { ...apple.water.maximumLoss, source: "fixture", ...evidence, fromMemory };
  const sources = new Map(small.sources);
  for (const [standing, id] of Object.entries(standings)) {
    sources.set(id, { id, citation: "Invented.", standing: standing as keyof typeof standings });
  }
  const spoiled = { ...apple, water: { ...apple.water, maximumLoss: figure } } as typeof apple;
  return checkMemory({ ...small, sources, commodities: new Map([["apple", spoiled]]) });
}

describe("what is inferred from memory is from memory", () => {
  it.each(["from memory", "16 %, recalled", "as far as remembered", "Recalled with little certainty"])(
    'a place that says "%s"',
    (place) => {
      const [fault] = faultsOf({ place, kind: "inferred" });
      expect(fault).toMatch(/^apple: water\.maximumLoss says ".*"; write fromMemory true/);
      expect(faultsOf({ place, kind: "inferred" }, true)).toEqual([]);
    },
  );

  it("a note that says so", () => {
    expect(faultsOf({ place: "as pear", note: "its class is from memory", kind: "inferred" })).toHaveLength(
      1,
    );
  });

  it.each([
    "Robinson's lettuce (3 %)",
    "after Sastry et al.",
    "skin after Chau et al. 1987",
    "Becker & Fricke's correlation",
    "edible 69 g (FoodData Central) over 0.86",
    "Kader's class high",
    "the household portions",
  ])("a publication known from memory only: %s", (place) => {
    expect(faultsOf({ place, kind: "inferred" })[0]).toContain("known from memory only");
    expect(faultsOf({ place, kind: "inferred" }, true)).toEqual([]);
    expect(faultsOf({ place: `${place}, as quoted on a page that was read`, kind: "inferred" })).toEqual([]);
  });

  it("a figure read in print may compare itself with a recalled one", () => {
    const place = "row pear (page read)";
    expect(
      faultsOf({ source: "a-handbook", place, note: "Robinson, recalled: 7", kind: "measured" }),
    ).toEqual([]);
  });
});

describe("a figure that was read says how", () => {
  it.each(Object.entries(standings))("of a %s", (_, source) => {
    expect(faultsOf({ source, place: "table 3, row pear", kind: "measured" })[0]).toContain(
      "add how it was read",
    );
    expect(faultsOf({ source, place: "table 3, row pear", kind: "measured" }, true)).toEqual([]);
  });

  it.each(["(page read)", "(copy read)", "(abstract read)", "(search excerpt read)"])("%s", (how) => {
    expect(faultsOf({ source: "a-paper", place: `row pear ${how}`, kind: "measured" })).toEqual([]);
  });

  it("does not take spread, bread or ready for read", () => {
    const place = "the spread on bread is ready";
    expect(faultsOf({ source: "a-paper", place, kind: "measured" })).toHaveLength(1);
  });
});

describe("the catalogue that comes with the program", () => {
  it("lets no recalled figure pass for a read one", () => {
    expect(checkMemory(catalogue())).toEqual([]);
  });

  it("says of the ripe banana's chilling threshold that it was fitted, not measured", () => {
    const { thresholdWhenRipe } = catalogue().commodities.get("banana")!.chilling!;
    expect(thresholdWhenRipe?.place).toMatch(/fitted.*not measured.*common practice/);
  });
});
