import { addDays, dayOfWeek } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weekdays } from "../../src/problem/wanted.js";
import { bound, lot } from "../support.js";

const wishOf = (wanted: unknown) => bound([lot("pear", 500, { wanted } as object)]).lots[0]!.wish;

describe("a day wanted is counted from the first, Saturday 13 June 2026", () => {
  it.each([
    [
      { when: "by", day: "friday" },
      { day: 6, first: 0, last: 6 },
    ],
    [
      { when: "on", day: "sunday" },
      { day: 1, first: 1, last: 1 },
    ],
    [
      { when: "on", day: "saturday" },
      { day: 7, first: 7, last: 7 },
    ],
    [
      { when: "from", day: "2026-06-20" },
      { day: 7, first: 7, last: Number.POSITIVE_INFINITY },
    ],
    [
      { when: "after", day: 3 },
      { day: 3, first: 4, last: Number.POSITIVE_INFINITY },
    ],
  ])("%o", (wanted, wish) => expect(wishOf(wanted)).toMatchObject(wish));

  it("a weekday is the next one, never the first day and never more than a week off", () => {
    fc.assert(
      fc.property(fc.constantFrom(...weekdays), (day) => {
        const { day: number } = wishOf({ when: "by", day })!;
        expect(number).toBeGreaterThanOrEqual(1);
        expect(number).toBeLessThanOrEqual(7);
        expect(weekdays[dayOfWeek(addDays("2026-06-13", number))]).toBe(day);
      }),
    );
  });

  it.each([
    ["2026-06-12", /before the first day.*2026-06-13 to 2026-08-12/s],
    ["2026-12-01", /more than 60 days ahead/],
    ["2026-02-31", /no day of the calendar/],
    ["someday", /a day of the week \("friday"\), a date/],
    [61, /Write 60 or less/],
    [true, /a day of the week/],
  ])("%s is refused with what would work", (day, message) =>
    expect(() => wishOf({ when: "on", day })).toThrow(message),
  );
});
