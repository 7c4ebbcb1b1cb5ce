import { addDays, daysBetween } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { awayDays, dateOption } from "../../src/options/dates.js";
import { UserError } from "../../src/userError.js";
import { controlCharacters } from "../support/fakeDoor.js";

describe("days away", () => {
  it("are single dates and stretches, counted from the first day, each once", () => {
    expect(awayDays("2026-06-14,2026-06-16/2026-06-18", "2026-06-13", 10)).toEqual([1, 3, 4, 5]);
    expect(awayDays("2026-06-14..2026-06-15, 2026-06-14", "2026-06-13", 10)).toEqual([1, 2]);
  });
  it("outside the planned days are an error that names the days planned for", () => {
    expect(() => awayDays("2026-06-23", "2026-06-13", 10)).toThrow(/2026-06-13 to 2026-06-22/);
    expect(() => awayDays("2026-06-12", "2026-06-13", 10)).toThrow(UserError);
  });
  it.each([
    "",
    "2026-06-18/2026-06-16",
    "2026-02-30",
    "tomorrow",
    "2026-06-14/2999-01-01",
    "2026-06-14/2026-06-15/2026-06-16",
    ",",
  ])("refuses “%s”", (text) => {
    expect(() => awayDays(text, "2026-06-13", 10)).toThrow(UserError);
  });
  it("read back what was written, for any stretch within the plan", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 27 }), fc.integer({ min: 0, max: 27 }), (one, other) => {
        const [first, last] = [Math.min(one, other), Math.max(one, other)];
        const from = "2024-02-20";
        const days = awayDays(`${addDays(from, first)}/${addDays(from, last)}`, from, 28);
        expect(days).toEqual(Array.from({ length: last - first + 1 }, (_, index) => first + index));
      }),
    );
  });
  it("never throw anything but an error for the person, whatever is typed", () => {
    const pieces = fc.array(
      fc.constantFrom("2026-06-14", "2026-06-20", "/", "..", ",", " ", "x", "\u001b[2J", "0000-00-00"),
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary" }),
          pieces.map((parts) => parts.join("")),
        ),
        (text) => {
          try {
            for (const day of awayDays(text, "2026-06-13", 10)) expect(day >= 0 && day < 10).toBe(true);
          } catch (error) {
            expect(error).toBeInstanceOf(UserError);
            expect((error as Error).message).not.toMatch(controlCharacters);
          }
        },
      ),
    );
  });
});

describe("a date", () => {
  it("is a day of the calendar or an error", () => {
    expect(dateOption("--from")(" 2026-06-13 ")).toBe("2026-06-13");
    fc.assert(
      fc.property(fc.string(), (text) => {
        try {
          expect(daysBetween("2000-01-01", dateOption("--from")(text))).toBeTypeOf("number");
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
        }
      }),
    );
  });
});
