import { addDays } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { lot, request, smallKitchen } from "../support.js";
import { begin, carriedOf, changeOf, faultsOf, later } from "./support.js";

const household = { people: 1, portionsPerPersonPerDay: 1, days: 10 };

describe("what is cut on a day that is told", () => {
  const tomato = begin(request([lot("tomato", 600), lot("potato", 1500)], smallKitchen(), household));
  const { from } = tomato.plan;
  const cut = (day: number, more: object = {}) => [
    { lot: "tomato", eaten: "none", cut: addDays(from, day), ...more },
  ];

  it("counts as lying where the plan had it, out of the refrigerator, and that is said", () => {
    const next = later(tomato, 1, { lots: cut(0) });
    expect(next.takenAsCut).toEqual([{ lot: "tomato", date: from, because: "lay warm", place: "counter" }]);
    expect(carriedOf(next, "tomato").safeTimeUsed).toBeGreaterThan(1);
    expect(changeOf(next, "tomato").change).toBe("throw away");
    expect(faultsOf(tomato, next)).toEqual([]);
  });

  it("is kept where it is told to have been put into the refrigerator when it was cut", () => {
    const next = later(tomato, 1, { lots: cut(0, { place: "shelf", since: from }) });
    expect(next.takenAsCut).toEqual([]);
    expect(carriedOf(next, "tomato").safeTimeUsed).toBeLessThan(1);
    expect(changeOf(next, "tomato").change).not.toBe("throw away");
    expect(faultsOf(tomato, next)).toEqual([]);
  });

  it("is not kept for being put there later", () => {
    const next = later(tomato, 2, { lots: cut(0, { place: "shelf", since: addDays(from, 1) }) });
    expect(next.takenAsCut).toMatchObject([{ because: "lay warm" }]);
    expect(changeOf(next, "tomato").change).toBe("throw away");
  });

  it("is taken as put into the refrigerator at once where it was cut today, and that is said", () => {
    const next = later(tomato, 0, { lots: cut(0) });
    expect(next.takenAsCut).toMatchObject([{ because: "cut today", place: "counter" }]);
    const hours = later(tomato, 0, { lots: cut(0, { hoursOut: 1 }) });
    expect(hours.takenAsCut).toEqual([]);
    expect(carriedOf(hours, "tomato").safeTimeUsed).toBeGreaterThan(carriedOf(next, "tomato").safeTimeUsed);
    const { plan } = next;
    expect(plan.lots.find((part) => part.lot === "tomato")!.stays[0]!.placeKind).not.toBe("counter");
  });
});

describe("what came home cut, as data", () => {
  const begun = begin(request([lot("salad-leaves", 300), lot("potato", 1500)], smallKitchen(), household));
  const home = (more: object) => () =>
    later(begun, 1, { cameHome: [{ commodity: "cantaloupe", grams: 300, ...more }] });

  it.each<[string, object]>([
    ["cut", { form: "cut" }],
    ["sold ready to eat, as some of the plan's is", { commodity: "salad-leaves" }],
  ])("is asked its day: %s", (_, what) => {
    expect(home(what)).toThrow(/it is not told how old it is.*extraDays/);
    expect(home({ ...what, extraDays: 0 })).not.toThrow();
  });

  it("is new where it is whole", () => {
    expect(home({})().haul.lots.find(({ commodity }) => commodity === "cantaloupe")!.extraDays).toBe(0);
  });

  it("is as old as it is told to be", () => {
    const next = home({ form: "cut", extraDays: 3 })();
    expect(next.haul.lots.find(({ commodity }) => commodity === "cantaloupe")).toMatchObject({
      extraDays: 3,
    });
  });
});
