import { z } from "zod";

/** Days of the week in the order of `dayOfWeek`: 0 Sunday … 6 Saturday. */
export const weekdays = [
  "sunday",
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
] as const;
export type Weekday = (typeof weekdays)[number];

/**
 * What is wanted of the day. "by": ready on it at the latest. "on": ready on it, and not eaten before. "from": not eaten before it.
 * "after": eaten on a later day.
 */
export const wantedWords = ["by", "on", "from", "after"] as const;
export type WantedWord = (typeof wantedWords)[number];

/** Days ahead that a lot may be wanted for, at most: nothing is planned for longer. */
export const mostDaysAhead = 60;

/** What the day may be given as; what is wrong with it says so. */
export const wantedDayForms = `a day of the week ("friday"), a date ("2026-06-19"), or whole days from the first day (0 to ${mostDaysAhead})`;

const day = z.union(
  [
    z.enum(weekdays),
    z.string().regex(/^\d{4}-\d{2}-\d{2}$/, { error: wantedDayForms }),
    z.number().int().min(0).max(mostDaysAhead).describe("d from the first day"),
  ],
  { error: wantedDayForms },
);

/** A day somebody wants a lot ready for. A weekday is the next one after the first day, which is only known when a plan is asked for. */
export const wantedSchema = z.strictObject({
  when: z
    .enum(wantedWords)
    .describe(
      "by: ready on that day at the latest; on: ready on that day and not eaten before; from: not eaten before it; after: eaten on a later day",
    ),
  day: day.describe("A weekday means the next one after the first day"),
});
export type Wanted = z.infer<typeof wantedSchema>;
