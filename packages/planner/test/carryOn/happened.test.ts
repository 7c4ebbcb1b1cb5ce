import { addDays } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { weights } from "../../src/rules/weights.js";
import { lot, request } from "../support.js";
import { again, begin, carriedOf, changeOf, faultsOf, later, partOf } from "./support.js";

const haul = () => [
  lot("apple", 1200, { pieces: 8 }),
  lot("avocado", 600, { pieces: 3, ripeness: "turning" }),
  lot("carrot", 800, { tops: true }),
  lot("spinach", 300, { washed: true }),
  lot("potato", 2000),
];
const begun = begin(request(haul(), undefined, { people: 2, portionsPerPersonPerDay: 2, days: 10 }));
const gramsOf = (after: ReturnType<typeof later>, id: string) =>
  after.haul.lots.filter((one) => one.carried?.origin === id).reduce((sum, { grams }) => sum + grams, 0);

describe("what happened", () => {
  it("takes what was eaten, thrown out and given away from what there was", () => {
    const after = later(begun, 2, {
      lots: [
        { lot: "apple", eaten: { pieces: 2 }, givenAway: { pieces: 1 } },
        { lot: "spinach", thrownOut: "all" },
        { lot: "potato", left: { grams: 900 } },
        { lot: "carrot", eaten: { share: 0.25 } },
      ],
    });
    expect(gramsOf(after, "apple")).toBeCloseTo(750, 6);
    expect(gramsOf(after, "potato")).toBeCloseTo(900, 6);
    expect(gramsOf(after, "carrot")).toBeCloseTo(600, 6);
    expect(after.changes.find(({ part }) => part === "spinach")).toMatchObject({
      change: "gone",
      reasons: [{ because: "thrown out" }],
    });
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("takes what was frozen for neither eaten nor wasted, and says how much", () => {
    const after = later(begun, 2, {
      lots: [
        { lot: "spinach", frozen: "all" },
        { lot: "apple", eaten: "none", frozen: { share: 0.5 }, thrownOut: { pieces: 1 } },
      ],
    });
    expect(after.changes.find(({ part }) => part === "spinach")).toMatchObject({
      change: "gone",
      reasons: [{ because: "frozen" }],
    });
    expect(gramsOf(after, "apple")).toBeCloseTo(450, 6);
    const taken = after.changes
      .filter(({ commodity }) => commodity === "apple")
      .flatMap(({ taken = [] }) => taken);
    const sum = (way: string) =>
      taken.filter((one) => one.way === way).reduce((total, { grams }) => total + grams.value, 0);
    expect([sum("frozen"), sum("thrown out"), sum("given away")]).toEqual([
      expect.closeTo(600, 6),
      expect.closeTo(150, 6),
      0,
    ]);
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("takes what is left as of now, in whatever order it is told", () => {
    const told = [
      { lot: "potato", left: { grams: 500 } },
      { lot: "potato", frozen: { grams: 600 } },
    ];
    for (const lots of [told, told.toReversed()]) {
      const after = later(begun, 2, { lots });
      expect(gramsOf(after, "potato")).toBeCloseTo(500, 6);
      const taken = after.changes.flatMap(({ taken = [] }) => taken);
      expect(taken.reduce((sum, { grams }) => sum + grams.value, 0)).toBeCloseTo(600, 6);
    }
  });

  it("takes the plan's own meals as eaten where nothing is said, unless the plan was not followed", () => {
    const grams = (day: number) =>
      begun.plan.lots
        .flatMap(({ eatOn }) => eatOn.filter((meal) => meal.day < day))
        .reduce((sum, meal) => sum + meal.grams, 0);
    const all = begun.plan.lots.reduce((sum, part) => sum + part.grams, 0);
    const left = (after: ReturnType<typeof later>) =>
      after.haul.lots.reduce((sum, one) => sum + one.grams, 0);
    expect(left(later(begun, 2))).toBeCloseTo(all - grams(2), 6);
    expect(left(later(begun, 2, { followed: false }))).toBeCloseTo(all, 6);
  });

  it("sees what is ripe sooner, and says so", () => {
    const before = begun.plan.lots.find(({ lot: id }) => id === "avocado")!;
    const after = later(begun, 1, { lots: [{ lot: "avocado", eaten: "none", ripeness: "ripe" }] });
    expect(carriedOf(after, "avocado").state.ripeness).toBe(1);
    expect(partOf(after, "avocado").readyOnDay).toBe(0);
    expect(before.readyOnDay!).toBeGreaterThan(1);
    const { change, reasons } = changeOf(after, "avocado");
    expect(change).not.toBe("stays");
    expect(reasons[0]).toEqual({ because: "ripe sooner", days: before.readyOnDay! - 1 });
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("does nothing a second time: leaves off, drying, wrapping; and only once is a wrap paid for", () => {
    const after = later(begun, 1, { lots: [{ lot: "spinach", eaten: "none" }] });
    for (const part of after.plan.lots) {
      const before = begun.plan.lots.find(({ id }) => id === part.id)!;
      expect(part.preparation).toEqual([]);
      expect(part.tops).toBe(before.tops);
      expect(part.stays[0]!.wrap).toBe(before.stays[0]!.wrap);
    }
    expect(carriedOf(after, "spinach").dry).toBe(
      begun.plan.lots.find(({ id }) => id === "spinach")!.preparation.includes("dry well"),
    );
    const moves = after.plan.lots.reduce((sum, { stays }) => sum + stays.length - 1, 0);
    // Nothing but later moves and meals ahead of pace is left to do.
    expect(after.plan.objective.effort - moves * weights.move).toBeLessThan(
      begun.plan.objective.effort - moves * weights.move,
    );
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("keeps what was moved by hand where it is only where that serves", () => {
    const after = later(begun, 1, { lots: [{ lot: "spinach", eaten: "none", place: "counter" }] });
    const { from, change, gain, reasons } = changeOf(after, "spinach");
    expect(from!.place).toBe("counter");
    expect(change).toBe("moves");
    expect(gain!.value).toBeGreaterThan(0);
    expect(reasons[0]).toEqual({ because: "moved by hand" });
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("knows a day on the warm counter from one in the refrigerator", () => {
    const since = addDays(begun.plan.from, 0);
    const warm = later(begun, 2, { lots: [{ lot: "spinach", eaten: "none", place: "counter", since }] });
    const cold = later(begun, 2, { lots: [{ lot: "spinach", eaten: "none" }] });
    const aged = (after: typeof warm) => carriedOf(after, "spinach").state.senescence;
    expect(aged(warm)).toBeGreaterThan(2 * aged(cold));
  });

  it("gives what came home a place, the rest its reasons, and vents as they stand", () => {
    const after = later(begun, 2, {
      cameHome: [{ commodity: "watermelon", grams: 6000, pieces: 1 }],
      vents: [{ place: "left-drawer", setting: "closed" }],
    });
    expect(changeOf(after, "lot-1")).toMatchObject({ change: "new", reasons: [{ because: "came home" }] });
    expect(after.haul.standing!.vents.find(({ place }) => place === "left-drawer")!.setting).toBe("closed");
    for (const change of after.changes.filter((one) => !["stays", "moves as planned"].includes(one.change)))
      expect(change.reasons.length, JSON.stringify(change)).toBeGreaterThan(0);
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("tells peaches that never went to the refrigerator from some that came back", () => {
    const ripening = begin(
      request([lot("peach", 1200, { ripeness: "unripe" }), lot("kale", 500)], undefined, {
        people: 1,
        portionsPerPersonPerDay: 1,
      }),
    );
    const part = ripening.plan.lots.find(({ stays }) => stays.length > 1)!;
    const [first, second] = part.stays;
    expect(first!.moveWhen).toBe("ripe");
    const day = Math.ceil(first!.toDay!) + 1;
    const stayed = later(ripening, day, { lots: [{ lot: part.id, eaten: "none", place: first!.place }] });
    const change = stayed.changes.find((one) => one.part === part.id)!;
    const meant = carriedOf(stayed, change.lot!);
    expect([meant.place, meant.foreseen[0]!.place]).toEqual([first!.place, second!.place]);
    expect(change.change).toBe("moves as planned");
    expect(stayed.plan.objective.effort).toBeGreaterThanOrEqual(weights.move);
    expect(faultsOf(ripening, stayed)).toEqual([]);
    const moved = later(ripening, day, { lots: [{ lot: part.id, eaten: "none" }] });
    expect(carriedOf(moved, change.lot!).place).toBe(second!.place);
    expect(carriedOf(moved, change.lot!).foreseen).toEqual([]);
  });

  it("is told again and again, and every lot keeps its name and the days it has lain", () => {
    let now = begun;
    for (let day = 1; day <= 3; day++) {
      const next = later(now, 1, day === 2 ? { cameHome: [{ commodity: "green-bean", grams: 400 }] } : {});
      expect(carriedOf(next, "potato").daysBefore).toBe(day);
      expect(faultsOf(now, next)).toEqual([]);
      now = again(now, next);
    }
    expect(now.plan.lots.some(({ lot: id }) => id === "lot-1")).toBe(true);
    expect(now.plan.from).toBe(addDays(begun.plan.from, 3));
  });
});
