import { catalogue } from "@keepwright/catalogue";
import { addDays } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import type { Plan } from "../../src/problem/plan.js";
import { planHaul } from "../../src/search/planHaul.js";

const request = (lots: readonly object[], people = 1, days = 14) => ({
  haul: { lots },
  kitchen: ordinaryKitchens.ordinary,
  household: { people, portionsPerPersonPerDay: people === 1 ? 2 : 10, daysAway: [], days },
  from: "2026-06-10",
  catalogue: catalogue(),
});
const watermelon = { id: "melon", commodity: "watermelon", grams: 6000, pieces: 1 };
const garlic = { id: "garlic", commodity: "garlic", grams: 90, pieces: 2 };

describe("a whole piece that is eaten over several days", () => {
  const asked = request([watermelon, garlic]);
  const plan = planHaul(asked);
  const melon = (changed: Plan) => changed.lots.find(({ lot }) => lot === "melon")!;

  it("tells from when it is cut, until when it is safe, and what is left then; no meal is later", () => {
    const [first] = melon(plan).eatOn;
    // As much as one person may eat of one thing in the seven days; the rest is left, and thrown away by then.
    expect(melon(plan).eatOn.map(({ portions }) => portions)).toEqual(Array(7).fill(2));
    const portions = melon(plan).leftPortions;
    expect(portions).toBeGreaterThan(0);
    expect(melon(plan).ifLeft!.chancePastBest).toBe(1);
    expect(first!.date).toBe("2026-06-10");
    expect(melon(plan).cutOpen).toEqual([
      { date: "2026-06-10", safeUntil: "2026-06-16", portionsAfter: portions },
    ]);
    expect(plan.cautions).toEqual(expect.arrayContaining(["cut-produce", "cut-ready-to-eat"]));
    expect(checkPlan({ ...asked, plan })).toEqual([]);
  });

  it("says nothing of cloves, which are broken off, nor of what is eaten on one day", () => {
    expect(plan.lots.find(({ lot }) => lot === "garlic")!.cutOpen).toBeUndefined();
    const many = request([{ ...watermelon, commodity: "cantaloupe", grams: 1080, ripeness: "ripe" }], 4);
    const once = planHaul(many);
    expect(once.lots[0]!.eatOn).toHaveLength(1);
    expect(once.lots[0]!.cutOpen).toBeUndefined();
    expect(once.cautions).not.toContain("cut-produce");
    expect(checkPlan({ ...many, plan: once })).toEqual([]);
  });

  it("is a fault where a meal is later, however it is told", () => {
    const changed = structuredClone(plan);
    const late = { ...melon(changed).eatOn.at(-1)!, day: 7, date: "2026-06-17", portions: 1 };
    melon(changed).eatOn.push(late);
    melon(changed).leftPortions--;
    melon(changed).cutOpen![0]!.portionsAfter--;
    expect(checkPlan({ ...asked, plan: changed })).toContainEqual({
      rule: "safety limit",
      what: "melon day 7",
      value: 7,
      limit: "the last safe day of what is begun",
      unit: "d",
    });
  });

  it.each<[string, string, (changed: Plan) => void]>([
    ["safety limit", "not told", (changed) => delete melon(changed).cutOpen],
    [
      "safety limit",
      "a later day",
      (changed) => Object.assign(melon(changed).cutOpen![0]!, { safeUntil: "2026-06-17" }),
    ],
    [
      "safety limit",
      "fewer portions",
      (changed) => Object.assign(melon(changed).cutOpen![0]!, { portionsAfter: 0 }),
    ],
    [
      "cautions",
      "no caution",
      (changed) => changed.cautions.splice(changed.cautions.indexOf("cut-produce"), 1),
    ],
  ])("the checker finds a spoilt %s: %s", (rule, _, spoil) => {
    const changed = structuredClone(plan);
    spoil(changed);
    expect(checkPlan({ ...asked, plan: changed }).map((fault) => fault.rule)).toContain(rule);
  });
});

const ordinary = ordinaryKitchens.ordinary;
const inRefrigerator = ({ refrigerator }: { refrigerator?: string | undefined }) =>
  refrigerator !== undefined;
const atDegrees = (temperature: number) => ({
  ...ordinary,
  refrigerators: ordinary.refrigerators.map((one) => ({ ...one, temperature })),
  places: ordinary.places.map((place) => (inRefrigerator(place) ? { ...place, temperature } : place)),
});
const withoutRefrigerator = {
  ...ordinary,
  refrigerators: [],
  places: ordinary.places.filter((place) => !inRefrigerator(place)),
};

describe("how long what is begun is safe is the kitchen's best, or hours", () => {
  const kitchens = [
    ["at 4 °C", atDegrees(4), 6],
    ["at 6 °C", atDegrees(6), 0],
    ["at 8 °C", atDegrees(8), 0],
    ["with no refrigerator", withoutRefrigerator, 0],
  ] as const;
  const cases = kitchens.flatMap((kitchen) =>
    ["cantaloupe", "romaine", "tomato"].map((kind) => [kind, ...kitchen] as const),
  );

  it.each(cases)("%s %s", (kind, _, kitchen, keeps) => {
    const ripe = kind === "cantaloupe" ? { ripeness: "ripe" } : {};
    const lot = { id: "begun", commodity: kind, grams: 1200, pieces: 1, ...ripe };
    const asked = { ...request([lot]), kitchen };
    const plan = planHaul(asked);
    const [part] = plan.lots;
    const [piece] = part!.cutOpen!;
    expect(piece!.safeUntil).toBe(addDays(piece!.date, keeps));
    for (const { date } of part!.eatOn) expect(date <= piece!.safeUntil!).toBe(true);
    expect(piece!.portionsAfter).toBe(part!.leftPortions);
    expect(checkPlan({ ...asked, plan })).toEqual([]);
    const told = structuredClone(plan);
    told.lots[0]!.cutOpen![0]!.safeUntil = addDays(piece!.date, 6 - keeps);
    expect(checkPlan({ ...asked, plan: told }).map(({ rule }) => rule)).toContain("safety limit");
  });

  it("says nothing of a refrigerator that is not there, whatever is begun", () => {
    const asked = {
      ...request([{ id: "pine", commodity: "pineapple", grams: 1500, pieces: 1 }]),
      kitchen: withoutRefrigerator,
    };
    const plan = planHaul(asked);
    expect(plan.lots[0]!.eatOn).toHaveLength(1);
    expect(plan.lots[0]!.cutOpen![0]!.safeUntil).toBe(plan.lots[0]!.eatOn[0]!.date);
    expect(plan.cautions).toContain("no-refrigerator-for-cut-produce");
    expect(plan.cautions).not.toContain("cut-produce");
    expect(checkPlan({ ...asked, plan })).toEqual([]);
  });

  it("eats two pieces one after the other, each while it is safe", () => {
    const asked = request([{ ...watermelon, grams: 12_000, pieces: 2 }]);
    const plan = planHaul(asked);
    const [part] = plan.lots;
    expect(part!.eatOn.reduce((sum, { portions }) => sum + portions, 0)).toBeGreaterThan(20);
    for (const { date, safeUntil } of part!.cutOpen!) expect(safeUntil).toBe(addDays(date, 6));
    expect(checkPlan({ ...asked, plan })).toEqual([]);
  });
});
