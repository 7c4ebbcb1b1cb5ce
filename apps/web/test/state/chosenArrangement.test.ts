import { ordinaryKitchens, type Plan } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { chosenOf, meant, withChosen } from "../../src/state/chosenArrangement.js";

const kitchen = ordinaryKitchens.ordinary;
const [here, there] = kitchen.places.map(({ id }) => id) as [string, string];
const part = (id: string, stays: readonly object[], portions = 4) => ({
  id,
  lot: id.split("/")[0],
  stays,
  preparation: [],
  eatOn: [{ portions }],
  leftPortions: 0,
});
const plan = {
  lots: [
    part("apples", [{ place: here, wrap: "none" }]),
    part("avocados", [
      { place: here, wrap: "none", moveWhen: "ripe" },
      { place: there, wrap: "none" },
    ]),
    part("carrots", [{ place: here, wrap: "none" }], 1),
    part("carrots/2", [{ place: there, wrap: "none" }], 3),
  ],
  vents: [],
} as unknown as Plan;
const at = { place: there, wrap: "paper bag" } as const;

describe("a plan with what the person would have elsewhere", () => {
  it("leaves everything else as planned", () => {
    const { lots } = withChosen(plan, new Map([["apples", at]]));
    expect(lots.find(({ lot }) => lot === "apples")).toEqual({ lot: "apples", ...at, done: [] });
    expect(lots.slice(1)).toEqual(withChosen(plan, new Map()).lots.slice(1));
  });

  it("puts one part of a lot there, and the others stay", () => {
    const { lots } = withChosen(plan, new Map([["carrots/2", at]]));
    expect(lots.filter(({ lot }) => lot === "carrots")).toEqual([
      { lot: "carrots", place: here, wrap: "none", done: [], share: 0.25 },
      { lot: "carrots", ...at, done: [], share: 0.75 },
    ]);
  });

  it("makes a lot one again whose parts all come to lie alike", () => {
    const all = new Map([
      ["carrots", at],
      ["carrots/2", at],
    ]);
    expect(withChosen(plan, all).lots.filter(({ lot }) => lot === "carrots")).toEqual([
      { lot: "carrots", ...at, done: [] },
    ]);
  });

  it("still moves on what moves on later, unless it lies there already", () => {
    const elsewhere = { place: kitchen.places[2]!.id, wrap: "none" } as const;
    const later = (to: typeof at | typeof elsewhere) =>
      withChosen(plan, new Map([["avocados", to]])).lots.find(({ lot }) => lot === "avocados")?.later;
    expect(later(elsewhere)).toMatchObject({ place: there, moveWhen: "ripe" });
    expect(later(at)).toBeUndefined();
  });
});

describe("what the person would have elsewhere", () => {
  const keyOf = (lot: string) => `2 kg ${lot}#0`;
  const whole = { key: "2 kg carrots#0", lot: "carrots", parts: ["carrots", "carrots/2"] };
  const second = { key: "2 kg carrots#0/2", lot: "carrots", parts: ["carrots/2"] };

  it("is found by the line: a lot, or one part of it; all of it where all of it is meant", () => {
    expect(chosenOf({ "2 kg apples#0": at }, keyOf, plan, kitchen)).toEqual([
      { key: "2 kg apples#0", lot: "apples", parts: ["apples"], at },
    ]);
    expect(chosenOf({ [second.key]: at }, keyOf, plan, kitchen)).toEqual([{ ...second, at }]);
    const both = { [whole.key]: at, [second.key]: { place: here, wrap: "none" } } as const;
    expect(chosenOf(both, keyOf, plan, kitchen)).toEqual([{ ...whole, at }]);
  });

  it("means the part that is touched where the lot lies in parts, else all of it", () => {
    expect(meant(plan, keyOf, "carrots", "carrots/2")).toEqual(second);
    expect(meant(plan, keyOf, "carrots", "carrots").key).toBe("2 kg carrots#0/1");
    expect(meant(plan, keyOf, "carrots")).toEqual(whole);
    expect(meant(plan, keyOf, "apples", "apples").key).toBe("2 kg apples#0");
  });

  it("passes over lines that are gone and places that the kitchen no longer has", () => {
    expect(chosenOf({ "3 pears#0": at }, keyOf, plan, kitchen)).toEqual([]);
    const gone = { place: "balcony of before", wrap: "none" } as const;
    expect(chosenOf({ "2 kg apples#0": gone }, keyOf, plan, kitchen)).toEqual([]);
    expect(chosenOf({ "2 kg apples#0": "as planned" }, keyOf, plan, kitchen)).toEqual([]);
  });
});
