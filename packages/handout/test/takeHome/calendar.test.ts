import {
  CalendarError,
  type CalendarMaking,
  calendarEvents,
  calendarText,
  earlierCalendar,
  earlierFromEvents,
  handoutContext,
  labelRows,
  planRows,
} from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";
import { faultsOfForm, inZone, parsed, planFrom, zones } from "./support.js";

const context = handoutContext(inventedCatalogue);
const made = "2026-06-13T08:00:00Z";
const reminders = [
  { day: "same", hour: 8, minute: 30 },
  { day: "before", hour: 18, minute: 0 },
] as const;

function calendarOf(plan: Plan, making: Partial<CalendarMaking> = {}, began = plan.from, name = "") {
  const succession = { began, name };
  const events = calendarEvents(context, plan, succession);
  return { events, text: calendarText(context, succession, events, plan.from, { made, ...making }) };
}

/** Days around which clocks change in the zones, in spring and autumn; a year's end; a leap day. */
const firstDays = [
  "2026-03-06",
  "2026-03-27",
  "2026-04-03",
  "2026-09-04",
  "2026-10-02",
  "2026-10-23",
  "2026-10-30",
  "2026-12-29",
  "2028-02-27",
];

/** NAME is of RFC 7986, which ical.js does not know: it gives the value as it stands. */
const textValue = (value: string): string =>
  value.replace(/\\(.)/gs, (_, character: string) => (character === "n" ? "\n" : character));

describe("a calendar", () => {
  it.each(zones)("in %s has every event on its own day, whichever clocks change", (zone) => {
    for (const from of firstDays) {
      const here = calendarOf(planFrom(from), { reminders });
      inZone(zone, () => {
        const there = calendarOf(planFrom(from), { reminders });
        expect(there.text).toBe(here.text);
        const { events } = parsed(there.text);
        expect(events.length).toBe(here.events.length);
        events.forEach((event, index) => {
          const { date, uid, summary, description } = here.events[index]!;
          expect(event.startDate.isDate).toBe(true);
          expect(event.startDate.toString()).toBe(date);
          expect(event.endDate.toString()).toBe(addDays(date, 1));
          const local = event.startDate.toJSDate();
          expect([local.getFullYear(), local.getMonth() + 1, local.getDate(), local.getHours()]).toEqual([
            ...date.split("-").map(Number),
            // Where clocks change at midnight the day begins at one.
            local.getHours() === 1 ? 1 : 0,
          ]);
          expect([event.uid, event.summary, event.description]).toEqual([uid, summary, description]);
        });
      });
    }
  });

  it("rings by the clock on the wall: in the morning of the day and the evening before", () => {
    const { events } = parsed(calendarOf(handMadePlan, { reminders }).text);
    for (const { component, startDate } of events) {
      const rings = component.getAllSubcomponents("valarm").map((alarm) => {
        expect(alarm.getFirstPropertyValue("action")).toBe("DISPLAY");
        const time = startDate.clone();
        time.isDate = false;
        time.addDuration(alarm.getFirstPropertyValue("trigger") as never);
        return time.toString();
      });
      const day = startDate.toString();
      expect(rings).toEqual([`${day}T08:30:00`, `${addDays(day, -1)}T18:00:00`]);
    }
  });

  it("rings an hour off in the morning of a day on which clocks change, for a reader that counts hours, and never the evening before", () => {
    inZone("Europe/Berlin", () => {
      const midnight = new Date(2026, 2, 29);
      expect(new Date(midnight.getTime() + 8.5 * 3_600_000).getHours()).toBe(9);
      expect(new Date(midnight.getTime() - 6 * 3_600_000).getHours()).toBe(18);
    });
  });

  it("writes times of reminders to the minute", () => {
    const at = (day: "same" | "before", hour: number, minute: number) =>
      /TRIGGER:(\S+)/.exec(calendarOf(handMadePlan, { reminders: [{ day, hour, minute }] }).text)?.[1];
    expect(at("same", 0, 0)).toBe("PT0S");
    expect(at("same", 23, 59)).toBe("PT23H59M");
    expect(at("before", 0, 0)).toBe("-P1D");
    expect(at("before", 23, 45)).toBe("-PT15M");
  });

  it("is well formed with any names, which come back as they were", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "binary", maxLength: 60 }),
        fc.string({
          unit: fc.constantFrom(";", ",", "\\", "\n", "n", ":", '"', "é", "果", "🥕", "\r"),
          maxLength: 120,
        }),
        (odd, name) => {
          const places = handMadePlan.places.map((place) => ({ ...place, name: `${odd}${name}` }));
          const { text, events } = calendarOf({ ...handMadePlan, places }, {}, handMadePlan.from, name);
          expect(faultsOfForm(text)).toEqual([]);
          const read = parsed(text);
          expect(read.events.map(({ summary }) => summary)).toEqual(
            events.map(({ summary }) => summary.replace(/\p{Cs}/gu, "\ufffd")),
          );
          if (name !== "")
            expect(textValue(String(read.calendar.getFirstPropertyValue("name")))).toBe(
              name.replace(/\r\n|\r/g, "\n"),
            );
        },
      ),
      { numRuns: 150 },
    );
  });

  it("has one identity for each event, which tells nothing, and other ones for another household or week", () => {
    const uids = (plan: Plan, began?: string, name?: string) =>
      calendarOf(plan, {}, began, name).events.map(({ uid }) => uid);
    const own = uids(handMadePlan);
    expect(new Set(own).size).toBe(own.length);
    for (const uid of own)
      expect(uid).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    const others = [...uids(handMadePlan, "2026-06-12"), ...uids(handMadePlan, undefined, "Blue house")];
    expect(others.filter((uid) => own.includes(uid))).toEqual([]);
  });
});

describe("a calendar that follows another", () => {
  const plan = handMadePlan;
  const first = calendarOf(plan).text;
  const later = "2026-06-14T09:00:00Z";

  it("is the same but for the moment of making where nothing changed", () => {
    const { text } = calendarOf(plan, { made: later, earlier: earlierCalendar(first) });
    expect(text.replaceAll("DTSTAMP:20260614T090000Z", "DTSTAMP:20260613T080000Z")).toBe(first);
  });

  it("raises the revision of what changed, cancels what fell away from its first day on, and leaves the past alone", () => {
    const from = addDays(plan.from, 2);
    const lots = plan.lots
      .filter(({ id }) => id !== "b")
      .map((lot) => ({ ...lot, eatOn: lot.eatOn.filter(({ date }) => date >= from) }));
    const next = { ...plan, lots };
    const succession = { began: plan.from, name: "" };
    const events = calendarEvents(context, next, succession).filter(({ date }) => date >= from);
    const making = { made: later, earlier: earlierCalendar(first) };
    const read = parsed(calendarText(context, succession, events, from, making));
    const before = new Map(parsed(first).events.map((event) => [event.uid, event]));
    expect(read.events.length).toBeGreaterThan(events.length);
    for (const event of read.events) {
      const cancelled = event.component.getFirstPropertyValue("status") === "CANCELLED";
      expect(event.startDate.toString() >= from).toBe(true);
      expect(cancelled).toBe(!events.some(({ uid }) => uid === event.uid));
      const earlier = before.get(event.uid);
      const changed =
        cancelled || event.summary !== earlier?.summary || event.description !== earlier?.description;
      if (earlier) expect(event.sequence > earlier.sequence).toBe(changed);
    }
    const gone = read.events.filter(({ summary }) => summary.startsWith("No longer: "));
    expect(gone.map(({ summary }) => summary).join()).toMatch(/If ripe, move/);
    const days = new Set(read.events.map(({ uid }) => uid));
    for (const event of before.values())
      if (event.startDate.toString() >= from) expect(days.has(event.uid)).toBe(true);
  });

  it("carries what was cancelled along, unchanged", () => {
    const succession = { began: plan.from, name: "" };
    const none = (text: string, at: string) =>
      calendarText(context, succession, [], plan.from, { made: at, earlier: earlierCalendar(text) });
    const once = none(first, later);
    const twice = none(once, "2026-06-15T09:00:00Z");
    expect(parsed(once).events.length).toBe(parsed(first).events.length);
    expect(twice.replaceAll("DTSTAMP:20260615T090000Z", "DTSTAMP:20260614T090000Z")).toBe(once);
  });

  it("cancels by the plan before as by its calendar", () => {
    const succession = { began: plan.from, name: "" };
    const events = calendarEvents(context, plan, succession);
    const making = { made: later, earlier: earlierFromEvents(succession, events) };
    const uids = (text: string) => parsed(text).events.map(({ uid }) => uid);
    const byPlan = calendarText(context, succession, [], plan.from, making);
    const byCalendar = calendarText(context, succession, [], plan.from, {
      ...making,
      earlier: earlierCalendar(first),
    });
    expect(uids(byPlan)).toEqual(uids(byCalendar));
  });

  it("refuses the calendar of other plans, of another program, and half of one", () => {
    const other = earlierCalendar(calendarOf(plan, {}, "2026-06-01").text);
    expect(() => calendarOf(plan, { earlier: other })).toThrow(RangeError);
    for (const text of [
      "",
      "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//somebody//else//EN\r\nEND:VCALENDAR\r\n",
      first.slice(0, first.length / 2),
      first.replace(/UID:[0-9a-f-]+\r\nDTSTART/, "DTSTART"),
      first.replace(/SEQUENCE:\d+/, "SEQUENCE:soon"),
    ])
      expect(() => earlierCalendar(text)).toThrow(CalendarError);
  });

  it("can be read back with bare line ends, as some programs save it", () => {
    expect(earlierCalendar(first.replaceAll("\r\n", "\n"))).toEqual(earlierCalendar(first));
  });
});

describe("food safety in a calendar", () => {
  const cut = handMadePlan.lots.find(({ form }) => form === "cut")!;
  const told = (safeUntil: string) => {
    const lots = [{ ...cut, safeUntil, leftPortions: 1 }];
    return calendarOf({ ...handMadePlan, lots: lots as Plan["lots"] }).events;
  };

  it("says the last safe day on it, and to throw away what is left on the day after", () => {
    const events = told("2026-06-15").filter(({ sort }) => sort !== "eat");
    expect(events.map(({ date, summary }) => `${date} ${summary}`)).toEqual([
      "2026-06-15 Last safe day: duskmelon, cut",
      "2026-06-16 Throw away what is left: duskmelon, cut",
    ]);
  });

  it("says to throw away what is past its safe day, with the identity that said by when to eat it, and no word of eating", () => {
    const before = told("2026-06-15").find(({ sort }) => sort === "until");
    const events = told("past");
    expect(events).toHaveLength(1);
    expect(events[0]).toMatchObject({ uid: before?.uid, date: handMadePlan.from });
    expect(events[0]?.summary).toBe("Throw away, do not eat: duskmelon, cut");
  });

  it("says of what keeps for hours only once begun to eat it within them, on that day", () => {
    const cutOpen = [{ date: "2026-06-13", safeUntil: "2026-06-13", portionsAfter: 1 }];
    const lots = handMadePlan.lots.map((lot) => (lot.id === "a" ? { ...lot, cutOpen } : lot));
    const { events } = calendarOf({ ...handMadePlan, lots });
    const own = events.filter(({ summary }) => /was cut|what is left: moon/.test(summary));
    expect(own.map(({ date, summary }) => `${date} ${summary}`)).toEqual([
      "2026-06-13 Last safe day for what was cut: moonleaves",
      "2026-06-13 Throw away what is left: moonleaves",
    ]);
    for (const { description } of own) expect(description).toMatch(/within two hours/);
  });

  it("says of a whole piece that is begun its last safe day, to throw away what is left, and not to eat it later", () => {
    const cutOpen = [{ date: "2026-06-13", safeUntil: "2026-06-14", portionsAfter: 1 }];
    const lots = handMadePlan.lots.map((lot) => (lot.id === "a" ? { ...lot, cutOpen } : lot));
    const { events } = calendarOf({ ...handMadePlan, lots });
    const own = events.filter(({ summary }) => /was cut|what is left/.test(summary));
    expect(own.map(({ date, summary }) => `${date} ${summary}`)).toEqual([
      "2026-06-14 Last safe day for what was cut: moonleaves",
      "2026-06-15 Throw away what is left: moonleaves",
    ]);
    const late = events.find(({ sort, date }) => sort === "eat" && date === "2026-06-15");
    expect(late?.description).toMatch(
      /^Moonleaves: do not eat what was cut on Sat 13 June after Sun 14 June/,
    );
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    const [label] = labelRows(context, { ...handMadePlan, lots });
    expect(label?.until).toMatch(/Once cut on.*13.*: eat by.*14.*, then throw away$/);
    expect(planRows(context, { ...handMadePlan, lots }).stays[0]).toMatchObject({
      cut_on: "2026-06-13",
      cut_eat_by: "2026-06-14",
    });
  });
});
