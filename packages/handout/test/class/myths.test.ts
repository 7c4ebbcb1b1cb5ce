import { catalogue, type Evidence } from "@keepwright/catalogue";
import { classTopics } from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { allMyths, mythsDocument, mythsFor } from "../../src/class/myths/mythsDocument.js";
import { contextOf, spanish } from "./support.js";

const items =
  "tomato banana potato onion strawberry avocado apple garlic cucumber cantaloupe carrot spinach lemon".split(
    " ",
  );
const contexts = [contextOf(items), contextOf(items, { audience: spanish })] as const;

/** Numbers of a text. */
const numbersIn = (text: string): number[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((number) => Number(number.replace(",", ".")));

/** Numbers that the evidence holds: its figures, those named in its place, rounded, in either unit; and years of publications. */
function numbersOf(evidence: readonly Evidence[]): Set<number> {
  const citations = evidence.map(({ source }) => catalogue().sources.get(source)?.citation ?? "").join(" ");
  const told = numbersIn(`${JSON.stringify(evidence)} ${citations}`);
  const fahrenheit = told.map((celsius) => (celsius * 9) / 5 + 32);
  return new Set(
    [...told, ...fahrenheit].flatMap((one) => [one, Math.round(one), Math.round(one * 10) / 10]),
  );
}

/** Figures that are worked out of two others, or are the same in another unit, or plain counting. */
const derived: Readonly<Record<string, readonly number[]>> = {
  gas: [Math.round(0.2 / 0.029)],
  "mould-firm": [1],
  "looks-fine": [1],
  "fridge-cold": [30, 100, 1991],
};

describe("sayings", () => {
  it.each(allMyths.map((myth) => [myth.id, myth] as const))(
    "%s: has its sources and no other number",
    (id, myth) => {
      for (const context of contexts) {
        const about = myth.about(context);
        expect(about.length).toBeGreaterThan(0);
        expect(items).toEqual(expect.arrayContaining([...about]));
        const evidence = myth.evidence(context, about);
        expect(evidence.length).toBeGreaterThan(0);
        for (const { source } of evidence) expect(catalogue().sources.has(source), source).toBe(true);
        const known = numbersOf(evidence);
        const told = myth.tell(context, about);
        const strange = numbersIn(Object.values(told).join(" ")).filter(
          (number) => !known.has(number) && !derived[id]?.includes(number),
        );
        expect(strange, `${told.true} (${[...known].join(" ")})`).toEqual([]);
      }
    },
  );

  it("carry along how well each source is known", () => {
    const [context] = contexts;
    const blocks = mythsDocument(context).blocks.flatMap((block) =>
      block.block === "sources" ? [block.sources] : [],
    );
    const told = mythsFor(context);
    expect(blocks.length).toBe(told.length);
    told.forEach(({ myth, about }, index) => {
      const evidence = myth.evidence(context, about);
      const standings = blocks[index]!.map(({ standing }) => standing);
      const has = (holds: (one: Evidence) => boolean) => evidence.some(holds);
      const ordinary = ({ kind }: Evidence) => kind === "measured" || kind === "recommended";
      expect(standings.includes("memory")).toBe(has((one) => ordinary(one) && one.fromMemory));
      expect(standings.includes("read")).toBe(has((one) => ordinary(one) && !one.fromMemory));
      expect(standings.includes("common practice")).toBe(has(({ kind }) => kind === "common practice"));
      for (const { text, standing } of blocks[index]!)
        if (standing === "memory") expect(text).toMatch(/recalled, not checked in print/);
    });
  });

  it("are told only where they bear on the kinds and topics", () => {
    const ids = (kinds: readonly string[], topics = [...classTopics]) =>
      mythsFor(contextOf(kinds, { topics })).map(({ myth }) => myth.id);
    expect(ids(["kale"])).not.toContain("cold-tomato");
    expect(ids(["garlic"], ["saving"])).toContain("garlic-oil");
    expect(ids(["garlic"], ["apart"])).toEqual([]);
    expect(JSON.stringify(mythsDocument(contextOf(["garlic"], { topics: ["apart"] })))).toMatch(
      /None of the sayings/,
    );
  });

  it("say nothing against the cold of a kind that the worked household has there", () => {
    const [context] = contexts;
    const stays = [{ placeKind: "refrigerator door" }];
    const plan = { lots: [{ commodity: "tomato", stays }] } as unknown as Plan;
    const ids = (own?: Plan) => mythsFor(context, own).map(({ myth }) => myth.id);
    expect(ids()).toContain("cold-tomato");
    expect(ids(plan)).not.toContain("cold-tomato");
  });

  it("never advise the cold against an answer sheet that has the kind in the cold", () => {
    const [context] = contexts;
    for (const { myth, about } of mythsFor(context))
      if (["cold-tomato", "cold-for-all", "cold-potato"].includes(myth.id))
        for (const id of about)
          for (const { placeKind } of context.answer(id).belongs.stays)
            expect(placeKind, `${myth.id} ${id}`).not.toMatch(/refrigerator|crisper/);
  });
});
