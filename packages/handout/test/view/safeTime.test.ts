import { handoutContext, planText, planView } from "@keepwright/handout";
import type { Plan, PlannedLot } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const melon = handMadePlan.lots.find(({ id }) => id === "e")!;

/** The hand-made plan with only its cut melon, changed; every place as warm as told [°C]. */
function viewOf(changes: Partial<PlannedLot>, temperature = 4) {
  const places = handMadePlan.places.map((place) => ({ ...place, temperature }));
  const plan: Plan = { ...handMadePlan, places, lots: [{ ...melon, ...changes }] };
  const view = planView(context, plan);
  return { view, text: planText(context, view) };
}
const life = (days: number) => ({ early: days, middle: days, late: days, unit: "d" as const });

describe("cut produce past its safe time", () => {
  const { view, text } = viewOf({ safeUntil: "past", life: life(0), eatOn: [], leftPortions: 4 });
  it("is to be thrown away: first of all, pressing, and where its life is told", () => {
    expect(view.throwAway[0]).toMatch(/^Throw away: duskmelon, cut/i);
    expect(view.pressing).toContain(view.throwAway[0]);
    expect(view.cautions).toContain(view.throwAway[0]);
    expect(view.lives[0]?.lookByLine).toMatch(/^Throw it away/);
    expect(text.indexOf("THROW AWAY")).toBeGreaterThan(0);
    expect(text.indexOf("THROW AWAY")).toBeLessThan(text.indexOf("WHERE EACH THING GOES"));
  });
  it("has no place, no meal, no move and nothing left at the end", () => {
    expect(view.places.flatMap(({ entries, later }) => [...entries, ...later])).toEqual([]);
    expect(view.eating.days.flatMap(({ entries }) => entries)).toEqual([]);
    expect([...view.eating.left, ...view.eating.ready, ...view.moves]).toEqual([]);
    expect(text).not.toMatch(/Still there|same day/);
  });
});

describe("cut produce with a safe time still to run", () => {
  it("says until when at most, and that the rest is thrown away then", () => {
    const { view } = viewOf({ safeUntil: "2026-06-16", leftPortions: 2 });
    expect(view.lives[0]?.lookByLine).toMatch(/At most until Tue 16 June, for food safety/);
    expect(view.eating.left[0]).toMatch(/^Throw away what is left of duskmelon, cut after Tue 16 June/);
  });
  it("is still there at the end where it is safe for longer than is planned", () => {
    expect(viewOf({ safeUntil: "2026-06-19", leftPortions: 2 }).view.eating.left[0]).toMatch(/^Still there/);
  });
  it("in a warm refrigerator says one thing: within two hours, and the rest away", () => {
    const { view, text } = viewOf({ safeUntil: handMadePlan.from, life: life(0.17), leftPortions: 2 }, 8);
    expect(view.lives[0]?.span).toBe("two hours at most");
    expect(view.lives[0]?.lookByLine).toMatch(/^Eat within two hours .* throw the rest away/);
    expect(text).not.toMatch(/up to \d+ day|do not keep it|Still there/);
  });
});

describe("a meal more likely past its best than not", () => {
  const eaten = (chancePastBest: number) =>
    viewOf({ eatOn: [{ ...melon.eatOn[0]!, chancePastBest }] }).view.eating.days[0]?.line;
  it("is not told as a plain one", () => {
    expect(eaten(0.6)).toMatch(/may not last: eat sooner, freeze, or give away/);
    expect(eaten(0.4)).not.toMatch(/may not last/);
  });
});
