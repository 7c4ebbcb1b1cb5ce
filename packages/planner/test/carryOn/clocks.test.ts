import { addDays } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lot, request, smallKitchen } from "../support.js";
import { again, begin, carriedOf, faultsOf, later, partOf } from "./support.js";

const salad = () => lot("salad-leaves", 600, { form: "cut", id: "salad" });
const household = { people: 1, portionsPerPersonPerDay: 1, days: 10 };
/** Enough else to eat that some salad is left day after day. */
const haul = () => [salad(), lot("potato", 2000), lot("kale", 200)];
const none = { lots: [{ lot: "salad", eaten: "none" }] };

describe("the clock of cut produce", () => {
  const begun = begin(request(haul(), smallKitchen(), household));
  const last = begun.plan.lots.find((part) => part.lot === "salad")!.safeUntil;

  it("ends on the same date however often the plan is carried on", () => {
    expect(last).toBe(addDays(begun.plan.from, 6));
    let now = begun;
    for (let step = 1; step <= 4; step++) {
      const next = later(now, 1, none);
      expect(partOf(next, "salad").safeUntil).toBe(last);
      expect(carriedOf(next, "salad").safeTimeUsed).toBeCloseTo(step / 6, 9);
      expect(faultsOf(now, next)).toEqual([]);
      now = again(now, next);
    }
  });

  it("is over once it is, and nothing of it is planned to be eaten then", () => {
    const next = later(begun, 7, none, { days: 5 });
    expect(partOf(next, "salad").safeUntil).toBe("past");
    expect(partOf(next, "salad").eatOn).toEqual([]);
    expect(next.plan.cautions[0]).toBe("safe-time-past");
    expect(faultsOf(begun, next)).toEqual([]);
  });

  it("runs by the hour out of the refrigerator, and two hours are the end of it", () => {
    const hour = later(begun, 1, { lots: [{ lot: "salad", eaten: "none", hoursOut: 1 }] });
    expect(carriedOf(hour, "salad").safeTimeUsed).toBeCloseTo(1 / 6 + 1 / 2, 9);
    expect(partOf(hour, "salad").safeUntil).toBe(addDays(begun.plan.from, 3));
    const twice = later(again(begun, hour), 0, { lots: [{ lot: "salad", hoursOut: 1 }] });
    expect(carriedOf(twice, "salad").safeTimeUsed).toBeCloseTo(1 / 6 + 1, 9);
    expect(partOf(twice, "salad").safeUntil).toBe("past");
  });

  it("counts a day on the counter as what it is, and it may not stay there", () => {
    const from = begun.plan.from;
    const out = later(begun, 2, {
      lots: [{ lot: "salad", eaten: "none", place: "counter", since: addDays(from, 1) }],
    });
    expect(carriedOf(out, "salad").safeTimeUsed).toBeGreaterThan(1);
    expect(partOf(out, "salad").safeUntil).toBe("past");
    expect(partOf(out, "salad").stays[0]!.placeKind).not.toBe("counter");
    expect(out.changes[0]).toMatchObject({ change: "throw away" });
  });

  it("begins on the day a whole lot is cut", () => {
    const melon = begin(
      request([lot("cantaloupe", 1200, { pieces: 1 }), lot("potato", 1500)], smallKitchen(), household),
    );
    const cut = later(melon, 3, {
      lots: [
        {
          lot: "cantaloupe",
          eaten: { portions: 2 },
          cut: addDays(melon.plan.from, 1),
          place: "shelf",
          since: addDays(melon.plan.from, 1),
        },
      ],
    });
    const part = partOf(cut, "cantaloupe");
    expect(part.form).toBe("cut");
    expect(part.safeUntil).toBe(addDays(melon.plan.from, 7));
    expect(part.stays[0]!.placeKind).not.toBe("counter");
    expect(faultsOf(melon, cut)).toEqual([]);
  });

  it("begins, for a melon that was begun without a word of cutting it, on the first day it can have been", () => {
    const melon = begin(
      request([lot("cantaloupe", 1200, { pieces: 1 }), lot("potato", 1500)], smallKitchen(), household),
    );
    const { from } = melon.plan;
    const said = later(melon, 3, { lots: [{ lot: "cantaloupe", eaten: { portions: 2 } }] });
    expect(said.takenAsCut).toEqual([{ lot: "cantaloupe", date: from, because: "begun" }]);
    expect(said.begun).toEqual([]);
    expect(partOf(said, "cantaloupe")).toMatchObject({ form: "cut", safeUntil: addDays(from, 6) });
    expect(faultsOf(melon, said)).toEqual([]);
    const [first, second] = melon.plan.lots.find((part) => part.lot === "cantaloupe")!.eatOn;
    const planned = later(melon, second!.day);
    expect(planned.takenAsCut).toEqual([{ lot: "cantaloupe", date: first!.date, because: "begun" }]);
    expect(partOf(planned, "cantaloupe").safeUntil).toBe(addDays(first!.date, 6));
    expect(faultsOf(melon, planned)).toEqual([]);
    const next = later(again(melon, planned), 0, { lots: [{ lot: "cantaloupe", seenGood: true }] });
    expect(next.takenAsCut).toEqual([]);
    expect(partOf(next, "cantaloupe").safeUntil).toBe(addDays(first!.date, 6));
  });

  it("counts hours out that are told in another entry than the cutting", () => {
    const melon = begin(request([lot("cantaloupe", 1200, { pieces: 1 })], smallKitchen(), household));
    const told = later(melon, 1, {
      lots: [
        { lot: "cantaloupe", eaten: "none", cut: addDays(melon.plan.from, 1), place: "shelf" },
        { lot: "cantaloupe", hoursOut: 1 },
      ],
    });
    expect(carriedOf(told, "cantaloupe").safeTimeUsed).toBeCloseTo(0.5, 9);
  });

  it("says so where other pieces that were begun may be cut", () => {
    const cabbage = begin(request([lot("cabbage", 900, { pieces: 1 })], smallKitchen(), household));
    const after = later(cabbage, 2, { lots: [{ lot: "cabbage", eaten: { portions: 2 } }] });
    expect(after).toMatchObject({ begun: ["cabbage"], takenAsCut: [] });
  });

  it("is never set back, whatever is said (any account)", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 0, max: 3 }),
        fc.record(
          {
            place: fc.constantFrom("shelf", "left-drawer"),
            wrap: fc.constantFrom("lidded box"),
            seenGood: fc.constant(true),
            hoursOut: fc.constantFrom(0, 0.5),
            eaten: fc.constantFrom("none", { grams: 60 }),
          },
          { requiredKeys: ["eaten"] },
        ),
        (first, second, said) => {
          const one = later(begun, first, { lots: [{ lot: "salad", ...said }] });
          const two = later(again(begun, one), second, { lots: [{ lot: "salad", ...said }] });
          expect(carriedOf(one, "salad").safeTimeUsed).toBeGreaterThanOrEqual(first / 6 - 1e-9);
          expect(carriedOf(two, "salad").safeTimeUsed).toBeGreaterThanOrEqual(
            carriedOf(one, "salad").safeTimeUsed + second / 6 - 1e-9,
          );
          const [safe] = [partOf(two, "salad").safeUntil!];
          expect(safe === "past" || safe <= last!).toBe(true);
        },
      ),
      { numRuns: 6, seed: 5 },
    );
  });
});
