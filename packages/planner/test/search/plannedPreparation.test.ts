import { describe, expect, it } from "vitest";
import type { Programme, ProgrammeStay } from "../../src/problem/programme.js";
import { planHaul } from "../../src/search/planHaul.js";
import { agreeingPreparation, plannedPreparation } from "../../src/search/plannedPreparation.js";
import { bound, lot, request } from "../support.js";

const stay = (more: Partial<ProgrammeStay> = {}): ProgrammeStay => ({
  place: 0,
  wrap: "none",
  until: "never",
  ...more,
});
const programme = (...stays: ProgrammeStay[]): Programme => ({ leavesOff: false, dried: false, stays });
const preparation = (kind: string, more: object, ...stays: ProgrammeStay[]): string[] =>
  plannedPreparation(bound([lot(kind, 400, more)]).lots[0]!, programme(...stays));

describe("what to do before putting away", () => {
  it("wraps no crown in a bag that holds the gas, nor while bananas are to ripen", () => {
    expect(preparation("banana", {}, stay())).toContain("wrap crown");
    expect(preparation("banana", {}, stay({ wrap: "paper bag" }))).not.toContain("wrap crown");
    expect(preparation("banana", {}, stay({ until: "ripe" }), stay({ place: 1 }))).not.toContain(
      "wrap crown",
    );
    const plan = planHaul(request([lot("banana", 960, { pieces: 8 })]));
    for (const { preparation: told, stays } of plan.lots) {
      if (stays.some(({ wrap, moveWhen }) => wrap === "paper bag" || moveWhen === "ripe")) {
        expect(told).not.toContain("wrap crown");
      }
    }
  });

  it("says one thing about washing", () => {
    const berries = preparation("raspberry", {}, stay());
    expect(berries).toContain("keep dry and unwashed");
    expect(berries).not.toContain("wash just before use");
    expect(preparation("broccoli", {}, stay())).toContain("wash just before use");
  });

  it("leaves on the vine only what was said to have come on it", () => {
    expect(preparation("tomato", {}, stay())).not.toContain("keep on the vine");
    expect(preparation("tomato", { typed: "5 tomatoes on the vine" }, stay())).toContain("keep on the vine");
    expect(preparation("tomato", { typed: "500 g tomates de rama" }, stay())).toContain("keep on the vine");
  });

  it("trims stems that stand in water and keeps dry what does not", () => {
    expect(preparation("asparagus", {}, stay({ wrap: "glass of water" }))).toContain("trim stem ends");
    expect(preparation("asparagus", {}, stay({ wrap: "perforated bag" }))).not.toContain("trim stem ends");
    const names = ["keep dry and unwashed", "wash just before use"];
    const standing = [{ wrap: "glass of water", ripensHere: false } as const];
    expect(agreeingPreparation(names, standing)).toEqual(["wash just before use"]);
  });

  it("takes nothing out of a bag that it is then shut in", () => {
    const shut = [{ wrap: "closed film bag", ripensHere: false } as const];
    expect(agreeingPreparation(["remove from sealed bag"], shut)).toEqual([]);
  });
});

describe("the dates of a move when ripe", () => {
  it("are the first whole day it is ripe, never the day it is put away unripe", () => {
    for (const [kind, grams] of [
      ["tomato", 700],
      ["cantaloupe", 1500],
      ["peach", 900],
      ["banana", 960],
    ] as const) {
      for (const { stays, readyOnDay, eatOn } of planHaul(request([lot(kind, grams)])).lots) {
        const [first, second] = stays;
        if (first?.moveWhen !== "ripe") continue;
        expect(first.to).not.toBe(first.from);
        expect(second?.from).toBe(first.to);
        expect(first.to).toBe(`2026-06-${13 + readyOnDay!}`);
        for (const { date } of eatOn) expect(date >= first.to!).toBe(true);
      }
    }
  });
});
