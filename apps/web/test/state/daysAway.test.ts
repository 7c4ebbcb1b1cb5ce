import { describe, expect, it } from "vitest";
import { daysFrom, daysOfPlan } from "../../src/state/daysAway.js";

describe("civil days", () => {
  it("are counted over the ends of months and years", () => {
    expect(daysFrom("2026-12-30", "2027-01-02")).toBe(3);
    expect(daysFrom("2026-06-13", "2026-06-13")).toBe(0);
    expect(daysFrom("2026-06-13", "2026-06-10")).toBe(-3);
  });
  it("of a plan begin with the day it begins on", () => {
    expect(daysOfPlan("2026-02-27", 3)).toEqual(["2026-02-27", "2026-02-28", "2026-03-01"]);
    expect(daysOfPlan("2026-02-27", 3).map((day) => daysFrom("2026-02-27", day))).toEqual([0, 1, 2]);
  });
});
