import { catalogue } from "@keepwright/catalogue";
import { calendarEvents, handoutContext, labelRows, sheetView } from "@keepwright/handout";
import { ordinaryKitchens, type Plan, planHaul } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { usualLot } from "../../src/class/workedHousehold.js";
import { moreLikelyThanNot } from "../../src/view/eating.js";
import { keptDays } from "../../src/view/keptDays.js";
import { isPast } from "../../src/view/safeTime.js";
import { shortDayWords } from "../../src/words/dates.js";

const known = catalogue();
const context = handoutContext(known);
const from = "2026-06-13" as CalendarDate;

/** The whole catalogue, some kinds at a time, each as it usually comes home. */
const kinds = [...known.commodities.values()];
const together = 8;
const hauls = Array.from({ length: Math.ceil(kinds.length / together) }, (_, index) =>
  kinds.slice(index * together, (index + 1) * together),
);

const planned = (of: (typeof hauls)[number]): Plan =>
  planHaul({
    haul: { lots: of.map((kind, index) => usualLot(kind, `lot-${index + 1}`)) },
    kitchen: ordinaryKitchens.ordinary,
    household: { people: 3, portionsPerPersonPerDay: 4, daysAway: [], days: 7 },
    from,
    seed: 1,
    catalogue: known,
  });

describe("what papers say of one part's days", () => {
  it.each(hauls.map((of) => [of.map(({ id }) => id).join(", "), of] as const))("agrees: %s", (_, of) => {
    const plan = planned(of);
    const sheet = sheetView(context, plan);
    const rows = new Map(sheet.places.flatMap((place) => place.rows.map((row) => [row.lot, row])));
    const labels = new Map(labelRows(context, plan).map((row) => [row.lot, row]));
    const calendar = calendarEvents(context, plan, { began: plan.from, name: "" });
    for (const lot of plan.lots.filter((one) => !isPast(one))) {
      const { ready, check } = keptDays(plan, lot);
      const row = rows.get(lot.id)!;
      const label = labels.get(lot.id)!;
      const meals = lot.eatOn.filter(({ portions }) => portions > 0);
      const last = meals.at(-1);
      const told = `${lot.commodity}: ${row.ready ?? ""} ${row.until} Eaten ${meals.map(({ date }) => date).join(" ")}.`;
      // Looked at from the day it is ready at the earliest, and eaten from then at the earliest.
      if (ready !== undefined) {
        expect(check >= ready, told).toBe(true);
        expect(row.ready, told).toContain(shortDayWords(context.speaker, ready));
        for (const { date } of meals) expect(date >= ready, told).toBe(true);
      }
      // Where it is told until when it may keep, what is eaten later is told as doubtful.
      const late = addDays(plan.from, Math.max(1, Math.round(lot.life.late)));
      if (last && last.date > late) {
        expect(last.chancePastBest ?? 0, told).toBeGreaterThan(moreLikelyThanNot);
        if (lot.leftPortions === 0)
          expect(JSON.stringify(sheet.eating.days), told).toMatch(/May not last till then/);
      }
      if (lot.safeUntil !== undefined && last) expect(last.date <= lot.safeUntil, told).toBe(true);
      // No paper calls a last day what is only the day to look at it.
      expect(row.until, told).not.toMatch(/[Gg]ood until/);
      if (label.why !== "quality") continue;
      expect(label.date, told).toBe(check);
      if (row.until.startsWith("Check from"))
        expect(row.until, told).toContain(shortDayWords(context.speaker, check));
      // Names as they stand at the end of a title; what was cut of a piece has a last safe day of its own.
      const name = label.name.split(",")[0]!.toLowerCase();
      const checked = calendar.filter(({ summary }) => summary.toLowerCase() === `check today: ${name}`);
      for (const { date } of checked) expect(date, told).toBe(check);
    }
  });
});
