import { catalogue } from "@keepwright/catalogue";
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

  it("tells from when it is cut, until when it is safe, and what is planned for later or left", () => {
    const [first] = melon(plan).eatOn;
    const late = melon(plan).eatOn.filter(({ day }) => day > first!.day + 6);
    const portions = late.reduce((sum, meal) => sum + meal.portions, melon(plan).leftPortions);
    expect(portions).toBeGreaterThan(0);
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
