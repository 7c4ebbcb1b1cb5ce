import { describe, expect, it } from "vitest";
import { keptAlone } from "../../src/alone/index.js";
import { checkPlan } from "../../src/check/index.js";
import { cautions } from "../../src/rules/cautions.js";
import { allowedPlaces } from "../../src/rules/cutInRefrigerator.js";
import { safeDaysLeft } from "../../src/rules/safeTime.js";
import { standsThere } from "../../src/rules/suitableWraps.js";
import { singleStays } from "../../src/search/candidates.js";
import { planHaul } from "../../src/search/planHaul.js";
import { bound, lot, request, smallKitchen } from "../support.js";

const cold = (id: string, kitchen = smallKitchen()) => {
  const problem = bound([lot(id, 200)], kitchen);
  return { problem, places: allowedPlaces(problem.lots[0]!, problem.places).map((place) => place.cold) };
};

describe("sold under time and temperature control", () => {
  it.each(["salad-leaves", "bean-sprouts", "alfalfa-sprouts"])(
    "%s go into the refrigerator whole, for seven days with the first counted",
    (id) => {
      const { problem, places } = cold(id);
      expect(places.length).toBeGreaterThan(0);
      expect(places.every(Boolean)).toBe(true);
      const { index } = problem.places.find((place) => place.cold && place.place.temperature <= 5)!;
      const programme = {
        leavesOff: false,
        dried: false,
        stays: [{ place: index, wrap: "none", until: "never" }],
      } as const;
      expect(safeDaysLeft(problem, problem.lots[0]!, programme, [0])).toBe(6);
      expect(cautions(problem)).toContain("cut-ready-to-eat");
    },
  );

  it("leaves whole heads and loose spinach without a safe time", () => {
    for (const id of ["head-lettuce", "spinach"]) expect(cold(id).places).toContain(false);
  });

  it("does not dry again what the packer has spun dry, but dries washed spinach", () => {
    const washed = (id: string) => bound([{ ...lot(id, 200), washed: true }]).lots[0]!.form.wet;
    expect(washed("salad-leaves")).toBe(false);
    expect(washed("spinach")).toBe(true);
  });

  it("tells the ready-washed of the date on the bag", () => {
    expect(cautions(cold("salad-leaves").problem)).toContain("washed-greens");
    expect(cautions(cold("spinach").problem)).not.toContain("washed-greens");
  });
});

describe("dry bulbs", () => {
  it.each(["onion", "shallot", "garlic"])("%s alone are told to lie outside the refrigerator", (id) => {
    const { best, inEachKind } = keptAlone(request([lot(id, 200)]));
    expect(["counter", "cool dark cupboard"]).toContain(best.stays[0]!.placeKind);
    expect(inEachKind.map(({ stays }) => stays[0]!.placeKind)).toContain("refrigerator shelf");
  });
});

describe("a glass of water", () => {
  it("stands on shelves and counters, not in a drawer", () => {
    expect(standsThere("glass of water", "crisper drawer")).toBe(false);
    expect(standsThere("glass of water", "refrigerator shelf")).toBe(true);
    expect(standsThere("lidded box", "crisper drawer")).toBe(true);
    const problem = bound([lot("asparagus", 400)]);
    const glasses = singleStays(problem, problem.lots[0]!).filter(({ wrap }) => wrap === "glass of water");
    const kinds = glasses.map(({ place }) => problem.places[place]!.place.kind);
    expect(kinds).not.toContain("crisper drawer");
  });
});

describe("the checker", () => {
  it("finds salad on the counter", () => {
    const asked = request([lot("apple", 300), lot("salad-leaves", 140)]);
    const plan = planHaul(asked);
    expect(checkPlan({ ...asked, plan })).toEqual([]);
    const moved = structuredClone(plan);
    const stay = moved.lots.find(({ commodity }) => commodity === "salad-leaves")!.stays[0]!;
    Object.assign(stay, { place: "counter", placeKind: "counter" });
    expect(checkPlan({ ...asked, plan: moved }).map(({ rule }) => rule)).toContain("cut in the refrigerator");
  });
});
