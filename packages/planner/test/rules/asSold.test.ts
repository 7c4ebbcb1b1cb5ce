import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import type { PlannedLot } from "../../src/problem/plan.js";
import { cautions } from "../../src/rules/cautions.js";
import { allowedPlaces } from "../../src/rules/cutInRefrigerator.js";
import { safeDaysLeft } from "../../src/rules/safeTime.js";
import { standsThere } from "../../src/rules/suitableWraps.js";
import { singleStays } from "../../src/search/candidates.js";
import { planHaul } from "../../src/search/planHaul.js";
import { bound, lot, request, smallKitchen } from "../support.js";

type Stay = PlannedLot["stays"][number];

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
  it.each(["onion", "shallot", "garlic"])(
    "%s lie outside the refrigerator where there is anywhere else",
    (id) => {
      const { places } = cold(id);
      expect(places.length).toBeGreaterThan(0);
      expect(places).not.toContain(true);
      const kitchen = smallKitchen();
      const only = {
        ...kitchen,
        places: kitchen.places.filter(({ refrigerator }) => refrigerator !== undefined),
      };
      expect(cold(id, only).places.length).toBe(only.places.length);
    },
  );

  it("go into the refrigerator once cut", () => {
    const problem = bound([{ ...lot("onion", 200), form: "cut" }]);
    expect(allowedPlaces(problem.lots[0]!, problem.places).every((place) => place.cold)).toBe(true);
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
  it("finds an onion in the refrigerator and salad on the counter", () => {
    const asked = request([lot("onion", 300), lot("salad-leaves", 140)]);
    const plan = planHaul(asked);
    expect(checkPlan({ ...asked, plan })).toEqual([]);
    const swapped = structuredClone(plan);
    const [onion, salad] = ["onion", "salad-leaves"].map(
      (kind) => swapped.lots.find(({ commodity }) => commodity === kind)!.stays[0]!,
    ) as [Stay, Stay];
    [onion.place, salad.place] = [salad.place, onion.place];
    [onion.placeKind, salad.placeKind] = [salad.placeKind, onion.placeKind];
    const rules = checkPlan({ ...asked, plan: swapped }).map(({ rule }) => rule);
    expect(rules).toContain("dry out of the refrigerator");
    expect(rules).toContain("cut in the refrigerator");
  });
});
