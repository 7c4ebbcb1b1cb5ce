import { calendarEvents, handoutContext, labelRows, planView, sheetView } from "@keepwright/handout";
import type { Plan, PlannedLot } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const succession = { began: handMadePlan.from, name: "" };
const fruit = handMadePlan.lots.find(({ id }) => id === "b")!;

/** The fruit of the hand-made plan, which ripens on the counter and is moved to the right drawer on the fourth day, 16 June. */
function told(changes: Partial<PlannedLot>) {
  const plan: Plan = { ...handMadePlan, lots: [{ ...fruit, ...changes }] };
  const sheet = sheetView(context, plan);
  const view = planView(context, plan);
  return {
    view: view.moves.length,
    inPlaces: view.places.flatMap(({ later }) => later).length,
    onSheet: sheet.moves.length,
    daysOfSheet: sheet.places.flatMap(({ later }) => later).length,
    onLabels: (labelRows(context, plan)[0]?.places.length ?? 0) - 1,
    inCalendar: calendarEvents(context, plan, succession).filter(({ sort }) => sort === "move").length,
  };
}
/** As counts of `told`: where it is told at all, and where it has a day of its own. */
const counted = (told: number, dated: number) => ({
  view: told,
  inPlaces: told,
  onSheet: told,
  onLabels: told,
  inCalendar: told,
  daysOfSheet: dated,
});
const [meal] = fruit.eatOn;
const toDrawer = (moveWhen: "ripe" | "day") => [{ ...fruit.stays[0]!, moveWhen }, fruit.stays[1]!];

describe("a move when ripe", () => {
  it("is told with its day where something is eaten later", () => {
    expect(told({})).toEqual(counted(1, 1));
  });
  it("is told with its day where something is left over", () => {
    expect(told({ eatOn: [meal!], leftPortions: 2 })).toEqual(counted(1, 1));
    expect(told({ eatOn: [], leftPortions: 3 })).toEqual(counted(1, 1));
  });
  it("is told only for fruit that is ripe sooner where all is eaten up by its day", () => {
    expect(told({ eatOn: [meal!] })).toEqual(counted(1, 0));
    expect(told({ eatOn: [{ ...meal!, day: 2, date: "2026-06-15" }] })).toEqual(counted(1, 0));
    const plan: Plan = { ...handMadePlan, lots: [{ ...fruit, eatOn: [meal!] }] };
    const line = labelRows(context, plan)[0]?.places.at(-1);
    expect(line?.replaceAll("\u00a0", " ")).toBe("If ripe before Tue 16 June: Right drawer");
    expect(planView(context, plan).moves[0]?.line).toMatch(/^If ripe before Tue 16 June\. /);
    expect(sheetView(context, plan).moves[0]?.when.replaceAll("\u00a0", " ")).toBe(
      "If ripe before Tue 16 June",
    );
    const asked = calendarEvents(context, plan, succession).find(({ sort }) => sort === "move");
    expect(asked?.date).toBe("2026-06-15");
    expect(asked?.summary).toMatch(/^Ripe already\? Then move .+ to “Right drawer”$/);
    expect(asked?.description).toMatch(/Not ripe yet\? Leave it: it is to be eaten up by Tue 16 June\.$/);
  });
});

describe("a move on a day", () => {
  it("is told where something is eaten later, and not at all where all is eaten up by then", () => {
    expect(told({ stays: toDrawer("day") })).toEqual(counted(1, 1));
    expect(told({ stays: toDrawer("day"), eatOn: [meal!] })).toEqual(counted(0, 0));
  });
});
