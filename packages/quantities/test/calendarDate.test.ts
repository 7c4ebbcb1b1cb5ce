import { addDays, calendarDate, dayOfWeek, daysBetween } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("days of the calendar", () => {
  it("crosses months, years and leap days", () => {
    expect(addDays("2026-02-28", 1)).toBe("2026-03-01");
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
    expect(addDays("2026-12-31", 1)).toBe("2027-01-01");
    expect(addDays("2026-01-01", -1)).toBe("2025-12-31");
  });
  it("does not lose a day where clocks change", () => {
    expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
    expect(daysBetween("2026-10-24", "2026-10-26")).toBe(2);
  });
  it("knows the weekday of a fixed date: 1 January 2000 was a Saturday", () =>
    expect(dayOfWeek("2000-01-01")).toBe(6));
  it.each(["2026-02-30", "26-01-01", "tomorrow", "2026-13-01", ""])(
    "says what is wrong with “%s”",
    (text) => {
      expect(() => calendarDate(text)).toThrow(/year-month-day/);
    },
  );
  it("adds and counts days as inverses", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20000, max: 20000 }), (days) => {
        expect(daysBetween("2026-06-13", addDays("2026-06-13", days))).toBe(days);
      }),
    );
  });
});
