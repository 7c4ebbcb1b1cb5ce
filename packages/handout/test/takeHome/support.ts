import type { Plan } from "@keepwright/planner";
import { addDays, daysBetween } from "@keepwright/quantities";
import ICAL from "ical.js";
import { handMadePlan } from "../fixtures/plan.js";

/** The plan made by hand, with another first day. */
export function planFrom(from: string): Plan {
  const shift = daysBetween(handMadePlan.from, from);
  const moved = JSON.stringify(handMadePlan).replace(/\d{4}-\d{2}-\d{2}/g, (date) => addDays(date, shift));
  return JSON.parse(moved) as Plan;
}

/** Zones east and west of every other, with half hours, and with clocks that change at night, at midnight and by half an hour. */
export const zones = [
  "UTC",
  "Pacific/Kiritimati",
  "Pacific/Pago_Pago",
  "Australia/Adelaide",
  "Europe/Berlin",
  "America/New_York",
  "America/Santiago",
  "Australia/Lord_Howe",
];

/** Does something on a machine of another time zone, and makes sure that it was one. */
export function inZone<Answer>(zone: string, work: () => Answer): Answer {
  const before = process.env.TZ;
  process.env.TZ = zone;
  try {
    if (new Intl.DateTimeFormat().resolvedOptions().timeZone !== zone) throw new Error(`not in ${zone}`);
    return work();
  } finally {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  }
}

/** A calendar as ical.js, which is none of ours, understands it. */
export function parsed(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return {
    calendar,
    events: calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one)),
  };
}

/** Faults of form by RFC 5545, looked for without any parser. */
export function faultsOfForm(text: string): string[] {
  const lines = text.split("\r\n");
  const bare = text.replaceAll("\r\n", "");
  return [
    ...(lines.at(-1) === "" ? [] : ["the last line has no end"]),
    ...(/[\r\n]/.test(bare) ? ["a line break that is not CR LF"] : []),
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
    ...(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.test(bare) ? ["a control character"] : []),
    ...lines.filter((line) => Buffer.byteLength(line, "utf8") > 75).map((line) => `too long: ${line}`),
    ...lines
      .slice(0, -1)
      .filter((line) => !/^( |[A-Z-]+[;:])/.test(line))
      .map((line) => `no line of content: ${line}`),
    ...lines.filter((line) => /\p{Cs}/u.test(line)).map((line) => `half a character: ${line}`),
  ];
}
