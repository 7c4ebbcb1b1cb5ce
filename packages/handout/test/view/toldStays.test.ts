import {
  calendarEvents,
  handoutContext,
  labelRows,
  planRows,
  planView,
  sheetView,
} from "@keepwright/handout";
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
    inPlacesOfSheet: sheet.places.flatMap(({ later }) => later).length,
    onLabels: labelRows(context, plan)[0]?.places.filter((line) => line.startsWith("When ripe")).length,
    inCalendar: calendarEvents(context, plan, succession).filter(({ sort }) => sort === "move").length,
    inRows: planRows(context, plan).stays.length - 1,
  };
}
const everywhere = (count: number) => ({
  view: count,
  inPlaces: count,
  onSheet: count,
  inPlacesOfSheet: count,
  onLabels: count,
  inCalendar: count,
  inRows: count,
});
const [meal] = fruit.eatOn;

describe("a move", () => {
  it("is told where something is eaten after it", () => {
    expect(told({})).toEqual(everywhere(1));
  });
  it("is told where something is left over", () => {
    expect(told({ eatOn: [meal!], leftPortions: 2 })).toEqual(everywhere(1));
    expect(told({ eatOn: [], leftPortions: 3 })).toEqual(everywhere(1));
  });
  it("is not told for the day on which the last of it is eaten, nor for a later one", () => {
    expect(told({ eatOn: [meal!] })).toEqual(everywhere(0));
    expect(told({ eatOn: [{ ...meal!, day: 2, date: "2026-06-15" }] })).toEqual(everywhere(0));
  });
  it("that waits for ripeness is told on the label of the fruit, for if it gets ripe sooner", () => {
    const lots = [{ ...fruit, eatOn: [meal!] }];
    const line = labelRows(context, { ...handMadePlan, lots })[0]?.places.at(-1);
    expect(line?.replaceAll("\u00a0", " ")).toBe("If ripe before Tue 16 June: Right drawer");
  });
  it("that is not told leaves one stay, to the day after the last meal", () => {
    const lots = [{ ...fruit, eatOn: [meal!] }];
    const [row] = planRows(context, { ...handMadePlan, lots }).stays;
    expect(row).toMatchObject({ from: "2026-06-13", to: "2026-06-17", moves_when: null });
  });
});
