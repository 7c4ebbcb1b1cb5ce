import { handoutContext, lotReasonLines, whyText, whyViews } from "@keepwright/handout";
import type { Alternative, LotReason, Neighbour } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

/** Invented figures throughout. */
const days = (value: number) => ({ value, unit: "d" as const });
const grams = (value: number) => ({ value, unit: "g" as const });
const life = (early: number, middle: number, late: number) => ({ early, middle, late, unit: "d" as const });
const noCost = { waste: 0, qualityLost: 0, lifeLost: 0, effort: 0, overflow: 0, total: 0 };

const fate = (place: string) => ({
  place,
  placeKind: "crisper drawer" as const,
  wrap: "none" as const,
  life: life(2, 3, 4),
  endedBy: "senescence" as const,
  readyOnDay: 0,
});
const rival = (place: string, more: Partial<Alternative> = {}): Alternative => ({
  ...fate(place),
  worseBy: grams(10),
  cost: { ...noCost, waste: 12, effort: -2, total: 10 },
  grounds: ["lasts less"],
  effects: [],
  smellsOf: [],
  harmed: [],
  lostToNeighbours: days(0),
  ...more,
});
const neighbour = (lot: string, [without, gas, damp]: [number, number, number], more = {}): Neighbour => ({
  lot,
  commodity: "dawnfruit",
  lifeWithout: days(without),
  daysLost: days(without - 10),
  byEthylene: days(gas),
  byVapour: days(damp),
  jointMeans: false,
  daysLostBesideItAlone: days(without - 10),
  ...more,
});
const nobody = {
  lifeAlone: days(10),
  lostToNeighbours: days(0),
  lostByEthylene: days(0),
  lostByVapour: days(0),
  neighbours: [],
  helpers: [],
  lostToRest: days(0),
  joint: false,
};
const reason = (more: Partial<LotReason["here"]["neighbourhood"]> = {}): LotReason => ({
  part: "a",
  lot: "a",
  commodity: "moonleaf",
  here: { ...fate("left"), life: life(8, 10, 12), neighbourhood: { ...nobody, ...more } },
  elsewhere: [
    rival("right", { lostToNeighbours: days(3) }),
    rival("shelf", { grounds: ["no room"], cost: { ...noCost, overflow: 1e6, total: 1e6 } }),
    rival("counter", { readyOnDay: null, grounds: ["not ripe", "harms others"], harmed: [harmed] }),
    rival("cupboard"),
  ],
  wraps: [rival("left", { wrap: "foil", grounds: ["more to do"], worseBy: grams(3) })],
  ruledOut: [
    { wrap: "lidded box", rule: "must breathe" },
    { place: "counter", rule: "cut out of refrigerator" },
  ],
});
const harmed = { lot: "b", commodity: "dawnfruit", daysLost: days(2), worseBy: grams(4) };
const context = handoutContext(inventedCatalogue);
const lines = (one: LotReason): string[] => lotReasonLines(context, handMadePlan, one);

describe("why here, in few lines", () => {
  it("speaks of the nearest other places and the nearest wrap, and what each would cost", () => {
    expect(lines(reason())).toEqual([
      "Right drawer (loose, no wrap): 2 to 4 days, ended by ageing. A shorter life. Neighbours take about 3 days there. All in all it costs as much as 10 g of waste.",
      "Shelves (loose, no wrap): 2 to 4 days, ended by ageing. There is no room.",
      "Counter (loose, no wrap): 2 to 4 days, ended by ageing. No ripening there. Others lose by it: dawnfruits. All in all it costs as much as 10 g of waste.",
      "Wrapped another way (wrapped in foil): 2 to 4 days, ended by ageing. More to do. All in all it costs as much as 3 g of waste.",
      "No neighbour does much to it.",
    ]);
  });

  it("tells a neighbour's ripening gas from its damp", () => {
    const told = (means: [number, number, number]): string | undefined =>
      lines(reason({ lifeAlone: days(14), neighbours: [neighbour("b", means)] })).find((line) =>
        line.startsWith("For a typical lot: without"),
      );
    const head =
      "For a typical lot: without dawnfruits in the kitchen about 14 days instead of about 10 days.";
    expect(told([14, 4, 0])).toBe(`${head} That is ripening gas (ethylene), not damp.`);
    expect(told([14, 0.1, 4])).toBe(`${head} That is damp, not ripening gas (ethylene).`);
    expect(told([14, 3, 1])).toBe(
      `${head} Ripening gas (ethylene) takes about 3 days of that, damp about a day.`,
    );
    expect(told([14, 6, -2])).toMatch(/it would be about 6 days more; the damp that comes off saves about 2/);
  });

  it("names who helps, and says that neighbours act together", () => {
    const all = lines(
      reason({
        lifeAlone: days(3),
        joint: true,
        helpers: [neighbour("b", [5, 0, -5])],
      }),
    ).slice(-3);
    expect(all[0]).toBe(
      "For a typical lot: without dawnfruits in the kitchen only about 5 days instead of about 10 days. The damp that comes off helps.",
    );
    expect(all[1]).toBe("For a typical lot: with no neighbour at all about 3 days instead of about 10 days.");
    expect(all[2]).toMatch(/act together/);
  });

  it("leaves out a neighbour where the words would tell no difference", () => {
    const all = lines(reason({ neighbours: [neighbour("b", [10.1, 0.1, 0])] }));
    expect(all.at(-1)).toBe("No neighbour does much to it.");
  });
});

describe("why here, in full", () => {
  it("has every rival with its cost term by term, and rules with their source or that there is none", () => {
    const [view] = whyViews(context, handMadePlan, [reason()], true);
    expect(view!.line).toMatch(/: “Left drawer” \(loose, no wrap\)\. 8 to 12 days, ended by ageing\.$/);
    expect(view!.reasons).toHaveLength(1 + 4 + 1 + 2);
    expect(view!.reasons[1]).toMatch(
      /as 10 g of waste\. That is 12 g more waste and less work or haste \(as good as 2 g saved\)\.$/,
    );
    expect(view!.reasons.at(-2)).toBe(
      "Not in a box with a lid: it has to breathe (common practice, no source).",
    );
    expect(view!.reasons.at(-1)).toMatch(/^Not “Counter”: cut produce .*common practice, no source/);
    expect(whyText(context, [view!])).toMatch(/^WHY THERE, AND NOT ELSEWHERE\n/);
  });

  it("names the neighbour that takes most in another place, where that was worked out", () => {
    const there = { ...nobody, neighbours: [neighbour("b", [14, 0.2, 4])] };
    const one = { ...reason(), elsewhere: [rival("right", { neighbourhood: there })] };
    const [view] = whyViews(context, handMadePlan, [one], true);
    expect(view!.reasons[1]).toMatch(/The damp from dawnfruits takes about 4 days there\./);
  });
});
