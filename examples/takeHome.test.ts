import { catalogue } from "@keepwright/catalogue";
import {
  calendarEvents,
  calendarText,
  csvText,
  earlierCalendar,
  handoutContext,
  labelLayout,
  labelRows,
  lyingLots,
  madeMoves,
  planRows,
  rowTables,
  usualSheets,
} from "@keepwright/handout";
import { carryOn, type Haul, type Kitchen, type Plan, planHaul } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { faultsOfForm, inZone, parsed, zones } from "../packages/handout/test/takeHome/support.js";
import { randomRequest } from "../packages/planner/test/cases/randomRequest.js";
import { example, exampleNames } from "./example.js";

const context = handoutContext(catalogue());
const size = { lots: [3, 8], places: [2, 6], wraps: [1, 4], days: [5, 9] } as const;
const reminders = [{ day: "same", hour: 8, minute: 0 }] as const;
const today = "2026-06-01T08:00:00Z";

interface Case {
  readonly haul: Haul;
  readonly kitchen: Kitchen;
  readonly plan: Plan;
}

function caseOf(name: string): Case {
  if (exampleNames.includes(name)) {
    const { haul, kitchen, request } = example(name);
    return { haul: haul as Haul, kitchen, plan: planHaul(request) };
  }
  const request = randomRequest(Number(name), size);
  const plan = planHaul({ ...request, catalogue: catalogue() });
  return { haul: request.haul as Haul, kitchen: request.kitchen as Kitchen, plan };
}

function calendarOf(plan: Plan, began: string, haul: Haul, earlier?: string) {
  const succession = { began, name: "" };
  const lies = lyingLots(haul.lots);
  const events = calendarEvents(context, plan, succession, lies);
  const made = earlier === undefined ? today : "2026-06-03T08:00:00Z";
  const before = earlier === undefined ? undefined : earlierCalendar(earlier);
  const making = { made, reminders, earlier: before, madeMoves: madeMoves(plan, succession, lies) };
  return { events, text: calendarText(context, succession, events, plan.from, making) };
}

/** Lots of generated hauls by the seed they are drawn from. */
const generated = ["3", "14", "15", "92", "65", "35"];

describe.each([...exampleNames, ...generated])("things to take home of %s", (name) => {
  const { haul, kitchen, plan } = caseOf(name);
  const { events, text } = calendarOf(plan, plan.from, haul);

  it("make a calendar that another's parser reads, on the same days in every time zone", () => {
    expect(faultsOfForm(text)).toEqual([]);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    for (const zone of zones) {
      inZone(zone, () => {
        expect(calendarOf(plan, plan.from, haul).text).toBe(text);
        const read = parsed(text).events.map((event) => [
          event.uid,
          event.startDate.toString(),
          event.summary,
        ]);
        expect(read).toEqual(events.map(({ uid, date, summary }) => [uid, date, summary]));
      });
    }
  });

  it("tell of every meal, move and last safe day, and of no eating after one", () => {
    const days = new Set(plan.lots.flatMap((lot) => lot.eatOn.map(({ date }) => date)));
    expect(new Set(events.filter(({ sort }) => sort === "eat").map(({ date }) => date))).toEqual(days);
    // A move of what is eaten up by its day is made only if it is ripe before: told the day before; where it is no matter of ripeness, not at all.
    const moves = plan.lots.flatMap(({ stays, eatOn, leftPortions }) =>
      stays.slice(1).flatMap(({ from }, index) => {
        const later = leftPortions > 0 || eatOn.length === 0 || eatOn.some(({ date }) => date > from);
        if (later) return [from];
        return stays[index]!.moveWhen === "ripe" ? [addDays(from, from > plan.from ? -1 : 0)] : [];
      }),
    );
    const moved = events.filter(({ sort }) => sort === "move");
    expect(moved.map(({ date }) => date).sort()).toEqual(moves.sort());
    const limits = plan.lots.flatMap(({ safeUntil, cutOpen = [] }) =>
      [safeUntil, ...(safeUntil === "past" ? [] : cutOpen.map((piece) => piece.safeUntil))].filter(
        (limit) => limit !== undefined,
      ),
    );
    const left = events.filter(({ sort }) => sort === "left").map(({ date }) => date);
    // What is begun and keeps for hours only is thrown away on the same day.
    const sameDay = plan.lots.flatMap(({ cutOpen = [] }) =>
      cutOpen.flatMap(({ date, safeUntil }) => (safeUntil === date ? [date] : [])),
    );
    const later = limits.filter((limit) => limit !== "past");
    for (const date of sameDay) later.splice(later.indexOf(date), 1);
    const limited = [...later.map((limit) => addDays(limit, 1)), ...sameDay];
    expect(left.sort()).toEqual(limited.sort());
    const away = events.filter(({ summary }) => summary.startsWith("Throw away, do not eat"));
    expect(away).toHaveLength(limits.filter((limit) => limit === "past").length);
  });

  it("make rows that come back through another's parser, and labels for all of it", () => {
    const rows = planRows(context, plan);
    const stays = parse(csvText(rowTables.stays, rows.stays), { columns: true }) as Record<string, string>[];
    expect(stays.map(({ part, stay }) => `${part} ${stay}`)).toEqual(
      rows.stays.map(({ part, stay }) => `${part} ${stay}`),
    );
    const portions = rows.meals.reduce((sum, row) => sum + Number(row.portions), 0);
    const planned = plan.lots.flatMap(({ eatOn }) => eatOn).reduce((sum, meal) => sum + meal.portions, 0);
    expect(portions).toBe(planned);
    for (const sheet of Object.values(usualSheets)) {
      const labels = labelLayout(labelRows(context, plan), sheet);
      expect(labels.map(({ lot }) => lot)).toEqual(plan.lots.map(({ id }) => id));
      for (const { lines } of labels) expect(lines.map(({ role }) => role)).toContain("until");
    }
  });

  it("are brought up to date by the plan carried on, twice over, and never doubled", () => {
    const request = { kitchen, catalogue: catalogue(), happened: undefined };
    const next = carryOn({ ...request, plan, haul, on: addDays(plan.from, 1), days: 4 });
    expect(next.haul.standing?.began).toBe(plan.from);
    const after = calendarOf(next.plan as Plan, plan.from, next.haul, text);
    const last = carryOn({
      ...request,
      plan: next.plan,
      haul: next.haul,
      on: addDays(plan.from, 2),
      days: 3,
    });
    expect(last.haul.standing?.began).toBe(plan.from);
    const end = calendarOf(last.plan as Plan, plan.from, last.haul, after.text);
    const kept = new Map<string, { date: string; cancelled: boolean }>();
    for (const one of [text, after.text, end.text])
      for (const event of parsed(one).events)
        kept.set(event.uid, {
          date: event.startDate.toString(),
          cancelled: event.component.getFirstPropertyValue("status") === "CANCELLED",
        });
    // A person who took in all three has, from the last one's first day on, its events and nothing else but a move made already.
    const live = [...kept].filter(([, { date, cancelled }]) => date >= last.plan.from && !cancelled);
    const uids = new Set(end.events.map(({ uid }) => uid));
    const lies = lyingLots(last.haul.lots);
    const made = madeMoves(last.plan as Plan, { began: plan.from, name: "" }, lies);
    expect(live.map(([uid]) => uid).filter((uid) => !uids.has(uid) && !made.has(uid))).toEqual([]);
    expect(end.events.filter(({ uid }) => !live.some(([one]) => one === uid))).toEqual([]);
    const same = end.events.filter(({ uid }) => events.some((event) => event.uid === uid));
    expect(same.length).toBeGreaterThan(0);
  });
});
