import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/problem/inputError.js";
import { lot, request, smallKitchen } from "../support.js";
import { begin, later } from "./support.js";

const begun = begin(
  request([lot("apple", 600), lot("avocado", 300, { ripeness: "ripe" }), lot("kale", 200)], smallKitchen()),
);
const said = (of: object) => ({ lots: [of] });

describe("what is told of something that the plan takes to be eaten", () => {
  const eaten = begin(
    request(
      [lot("strawberry", 100), lot("cantaloupe", 400, { form: "cut" }), lot("apple", 2000)],
      smallKitchen(),
    ),
  );
  const gone = (id: string) => later(eaten, 3).haul.lots.every((one) => one.id !== id);
  const id = eaten.request.haul.lots.find(({ commodity }) => commodity === "cantaloupe")!.id;

  it.each<[string, object]>([
    ["where it lies", { place: "counter", since: "2026-06-14" }],
    ["how long it was out", { hoursOut: 3 }],
    ["that it is still good", { seenGood: true }],
    ["what is around it", { wrap: "none" }],
  ])("is not passed over: %s", (_, told) => {
    expect(gone(id)).toBe(true);
    expect(() => later(eaten, 3, { lots: [{ lot: id, ...told }] })).toThrow(
      /all of it is eaten by now.*how much is left/,
    );
  });
  it("counts where it is told how much is left, and is no matter where all of it is gone", () => {
    const left = later(eaten, 3, { lots: [{ lot: id, left: { grams: 200 }, hoursOut: 3 }] });
    expect(left.haul.lots.some((one) => one.id === id)).toBe(true);
    expect(() => later(eaten, 3, { lots: [{ lot: id, eaten: "all", hoursOut: 3 }] })).not.toThrow();
  });
});

describe("cut produce that lies out of the refrigerator", () => {
  const melon = begin(
    request([lot("cantaloupe", 2000, { form: "cut" }), lot("apple", 900)], undefined, { people: 1, days: 6 }),
  );
  const id = melon.request.haul.lots.find(({ commodity }) => commodity === "cantaloupe")!.id;
  const lying = (of: object) =>
    later(melon, 1, { lots: [{ lot: id, eaten: "none", place: "counter", ...of }] });

  it.each([
    ["since some time today", { since: "2026-06-14" }],
    ["since nobody says when", {}],
  ])("is asked about: %s", (_, of) => {
    expect(() => lying(of)).toThrow(/out of the refrigerator, since when is not told.*how many hours/);
  });

  it("counts by the hours, or by the day before, that are told", () => {
    expect(() => lying({ hoursOut: 1 })).not.toThrow();
    expect(() => lying({ since: "2026-06-13" })).not.toThrow();
  });
});

describe("what cannot have happened", () => {
  it.each<[string, number, object, RegExp]>([
    [
      "a lot that is not there",
      1,
      said({ lot: "pears", eaten: "all" }),
      /happened lot "pears".*no such lot.*"apple"/,
    ],
    [
      "too much eaten",
      1,
      said({ lot: "apple", eaten: { grams: 2000 } }),
      /apple.*2000 g eaten, and there were 600 g/,
    ],
    [
      "too much left",
      1,
      said({ lot: "apple", left: { grams: 900 } }),
      /900 g left, and there were 600 g.*come home/,
    ],
    ["pieces nobody counted", 1, said({ lot: "kale", eaten: { pieces: 2 } }), /not counted.*"grams"/],
    ["ripeness of what does not ripen", 1, said({ lot: "kale", ripeness: "ripe" }), /does not ripen/],
    [
      "a place that is none",
      1,
      said({ lot: "kale", place: "loft" }),
      /"loft" is not in the kitchen.*"shelf"/,
    ],
    ["a wrap not at hand", 1, said({ lot: "kale", wrap: "foil" }), /no "foil".*paper bag/],
    [
      "a day before the plan",
      1,
      said({ lot: "kale", place: "shelf", since: "2020-01-01" }),
      /2020-01-01 is not between/,
    ],
    ["a day that is none", 1, said({ lot: "kale", cut: "2026-02-31" }), /no day of the calendar/],
    ["hours out of what is whole", 1, said({ lot: "kale", hoursOut: 3 }), /cut produce only/],
    ["a vent that is none", 1, { vents: [{ place: "counter", setting: "open" }] }, /no vent/],
    ["nothing said", 1, said({ lot: "kale" }), /nothing is said of it/],
    [
      "two things that exclude each other",
      1,
      said({ lot: "kale", left: "all", eaten: { grams: 20 } }),
      /"left" stands beside "eaten"/,
    ],
    ["since when, but not where", 1, said({ lot: "kale", since: "2026-06-13" }), /"since" stands alone/],
    [
      "everything gone",
      1,
      {
        lots: [
          { lot: "apple", eaten: "all" },
          { lot: "avocado", eaten: "all" },
          { lot: "kale", thrownOut: "all" },
        ],
      },
      /nothing came home/,
    ],
    ["a day before the first", -1, {}, /2026-06-12 is before the plan's first day, 2026-06-13/],
    ["long after", 200, {}, /200 days after/],
    ["after the last planned day", 12, { followed: false }, /days to plan for: the earlier plan ended/],
    ["a kind nobody knows", 1, { cameHome: [{ commodity: "zorb", grams: 3 }] }, /zorb/],
  ])("%s", (_, day, happened, message) => {
    expect(() => later(begun, day, happened)).toThrow(message);
    expect(() => later(begun, day, happened)).toThrow(InputError);
  });

  it("is found in a plan that is none, or not for this haul or kitchen", () => {
    const of = (more: object) => () => later(begun, 1, {}, more);
    expect(of({ plan: { version: 1 } })).toThrow(/plan lots/);
    expect(of({ plan: 7 })).toThrow(InputError);
    expect(of({ plan: { ...begun.plan, from: "2026-99-99" } })).toThrow(/plan from: "2026-99-99"/);
    expect(of({ on: "June" })).toThrow(/day it is now: "June".*2026-06-13/);
    expect(of({ on: "June" })).toThrow(InputError);
    const [part, ...others] = begun.plan.lots;
    const [meal, ...meals] = part!.eatOn;
    const shifted = {
      ...part!,
      eatOn: [{ ...meal!, portions: meal!.portions + 3 }, ...meals],
      leftPortions: -3,
    };
    expect(of({ plan: { ...begun.plan, lots: [shifted, ...others] } })).toThrow(
      /plan part "apple": portions/,
    );
    expect(of({ kitchen: { ...smallKitchen(), name: "Other" } })).toThrow(
      /made for the kitchen "An ordinary kitchen", and this is "Other"/,
    );
    expect(of({ haul: { lots: [lot("apple", 500)] } })).toThrow(/600 g in the plan, 500 g in the haul/);
    const renamed = { ...begun.plan, lots: begun.plan.lots.map((part) => ({ ...part, lot: "x" })) };
    expect(of({ plan: renamed })).toThrow(/it is in the haul and not in the plan/);
  });

  it("is told with the thing, the value and a remedy, whatever is given (any account)", () => {
    const anything = fc.oneof(
      fc.anything(),
      fc.record({
        version: fc.constant(1),
        lots: fc.array(fc.record({ lot: fc.string(), eaten: fc.anything() })),
      }),
      fc.record({
        version: fc.constant(1),
        lots: fc.array(
          fc.record({ lot: fc.constantFrom("kale", "apple"), eaten: fc.record({ grams: fc.double() }) }),
        ),
      }),
      fc.record({
        version: fc.constant(1),
        lots: fc.array(fc.record({ lot: fc.constant("kale"), place: fc.string(), since: fc.string() }), {
          minLength: 1,
        }),
      }),
    );
    fc.assert(
      fc.property(anything, (happened) => {
        fc.pre(happened !== undefined);
        try {
          later(begun, 1, {}, { happened });
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          for (const { thing, value, remedy } of (error as InputError).findings) {
            expect(thing.length).toBeGreaterThan(2);
            expect(value.length).toBeGreaterThan(0);
            expect(remedy.length).toBeGreaterThan(5);
          }
        }
      }),
      { numRuns: 150, seed: 2 },
    );
  });
});
