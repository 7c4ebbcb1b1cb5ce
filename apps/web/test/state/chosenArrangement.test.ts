import { ordinaryKitchens, type Plan } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { chosenLots, withChosen } from "../../src/state/chosenArrangement.js";
import type { ReadLine } from "../../src/state/readLots.js";

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

  it("puts all of a lot there that the plan parts", () => {
    const { lots } = withChosen(plan, new Map([["carrots", at]]));
    expect(lots.filter(({ lot }) => lot === "carrots")).toEqual([{ lot: "carrots", ...at, done: [] }]);
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
  const line = { key: "2 kg apples#0", lot: { id: "lot-7" } } as ReadLine;

  it("is found by the line, whatever number its lot has now", () => {
    expect(chosenLots({ "2 kg apples#0": at }, [line], kitchen)).toEqual(new Map([["lot-7", at]]));
  });

  it("passes over lines that are gone and places that the kitchen no longer has", () => {
    expect(chosenLots({ "3 pears#0": at }, [line], kitchen).size).toBe(0);
    const gone = { place: "balcony of before", wrap: "none" } as const;
    expect(chosenLots({ "2 kg apples#0": gone }, [line], kitchen).size).toBe(0);
    expect(chosenLots({ "2 kg apples#0": "as planned" }, [line], kitchen).size).toBe(0);
  });
});
