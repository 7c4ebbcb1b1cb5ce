import { addDays } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { lot, request, smallKitchen } from "../support.js";
import { again, begin, carriedOf, faultsOf, later, partOf } from "./support.js";

const household = { people: 1, portionsPerPersonPerDay: 1, days: 10 };
const undated = (name: string) => ({ lots: [{ lot: name, eaten: "none", cut: "day not told" }] });

describe("what is cut on a day that nobody tells", () => {
  const romaine = begin(request([lot("romaine", 900), lot("potato", 1500)], smallKitchen(), household));
  const { from } = romaine.plan;

  it("is cut on the first day that the account covers, and that is said", () => {
    const next = later(romaine, 3, undated("romaine"));
    expect(next.takenAsCut).toEqual([{ lot: "romaine", date: from, because: "day not told" }]);
    expect(carriedOf(next, "romaine").safeTimeUsed).toBeCloseTo(3 / 6, 9);
    expect(partOf(next, "romaine")).toMatchObject({ form: "cut", safeUntil: addDays(from, 6) });
    expect(faultsOf(romaine, next)).toEqual([]);
  });

  it("counts from the account before, where there was one", () => {
    const before = later(romaine, 2, { lots: [{ lot: "romaine", eaten: "none" }] });
    const next = later(again(romaine, before), 2, undated("romaine"));
    expect(next.takenAsCut).toMatchObject([{ date: addDays(from, 2) }]);
    expect(carriedOf(next, "romaine").safeTimeUsed).toBeCloseTo(2 / 6, 9);
  });

  it("is by the day that another line tells behind it", () => {
    const told = { lot: "romaine", eaten: "none", cut: addDays(from, 2) };
    const next = later(romaine, 3, { lots: [{ lot: "romaine", cut: "day not told" }, told] });
    expect(next.takenAsCut).toEqual([]);
    expect(carriedOf(next, "romaine").safeTimeUsed).toBeCloseTo(1 / 6, 9);
  });

  it("is asked about where it lay out of the refrigerator, since there hours count", () => {
    const tomato = begin(request([lot("tomato", 600), lot("potato", 1500)], smallKitchen(), household));
    expect(tomato.plan.lots.find((part) => part.lot === "tomato")!.stays[0]!.placeKind).toBe("counter");
    expect(() => later(tomato, 1, undated("tomato"))).toThrow(/on which day it was cut is not told.*cut the/);
    expect(() => later(tomato, 0, undated("tomato"))).not.toThrow();
  });

  it("begins no new safe time for what had one before it was cut", () => {
    const salad = begin(request([lot("salad-leaves", 600), lot("potato", 1500)], smallKitchen(), household));
    const cut = { lot: "salad-leaves", eaten: "none", cut: addDays(from, 3) };
    const next = later(salad, 3, { lots: [cut] });
    expect(carriedOf(next, "salad-leaves").safeTimeUsed).toBeCloseTo(3 / 6, 9);
  });
});
