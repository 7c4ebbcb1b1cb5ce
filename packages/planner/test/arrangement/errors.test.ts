import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { judgementSchema } from "../../src/arrangement/judgement.js";
import { ventSettings } from "../../src/problem/kitchen.js";
import { wrapIds } from "../../src/problem/wraps.js";
import { lot, request, smallKitchen } from "../support.js";
import { arrangement, complaint, judged, small, threeLots } from "./support.js";

const one = (more: object) => arrangement([{ lot: "apple", place: "shelf", ...more }]);
const shared = (...shares: (number | undefined)[]) =>
  arrangement(shares.map((share) => ({ lot: "apple", place: "shelf", ...(share && { share }) })));
const vent = (place: string, setting: string, times = 1) =>
  arrangement(
    [],
    Array.from({ length: times }, () => ({ place, setting })),
  );

describe("an arrangement nothing can be made of names the thing, the value and what would work", () => {
  it.each<[string, unknown, RegExp]>([
    ["that is no object", [], /^arrangement: \[\]\. Give a group of fields/],
    ["that is nothing", undefined, /^arrangement: nothing is given/],
    ["of another version", { version: 2, lots: [] }, /arrangement version: 2\. Write 1/],
    ["that is empty", arrangement([]), /^arrangement: it is empty\. Say where/],
    ["with an unknown field", { ...arrangement([]), drawers: 1 }, /Take out "drawers"/],
    [
      "without a place",
      arrangement([{ lot: "apple" }]),
      /arrangement lots\[1\] place: nothing is given\. Give a text/,
    ],
    ["with an unknown wrap", one({ wrap: "newspaper" }), /wrap: "newspaper"\. Write "none" or "paper bag"/],
    [
      "with an unknown place",
      one({ place: "garage" }),
      /"apple".*place "garage" is not in the kitchen\. Name one of: "shelf" \(Refrigerator shelves\)/,
    ],
    [
      "with an unknown lot",
      arrangement([{ lot: "zorb", place: "shelf" }]),
      /lot "zorb": there is no such lot in the haul\. Name one of: "apple" \(1\.5 kg apples\)/,
    ],
    [
      "with a kind that did not come home",
      arrangement([{ lot: "kale", place: "shelf" }]),
      /lot "kale": there is no such lot/,
    ],
    ["with a blank name", arrangement([{ lot: " ", place: "shelf" }]), /lot " ": there is no such lot/],
    ["that says a lot twice", shared(undefined, undefined), /it is said 2 times where it lies\. .*"share"/],
    ["with half a lot", shared(0.5), /its shares add up to 0\.5\. .*add up to 1/],
    [
      "with a share too small",
      shared(0.001, 0.999),
      /a share is less than can lie apart\. Give shares in steps of about/,
    ],
    ["with a share above 1", shared(2), /share: 2\. Write 1 or less/],
    [
      "that waits for broccoli to ripen",
      arrangement([{ lot: "broccoli", place: "counter", later: { moveWhen: "ripe", place: "shelf" } }]),
      /it does not ripen once picked\. Give a day/,
    ],
    [
      "with a day beside ripe",
      arrangement([{ lot: "banana", place: "counter", later: { moveWhen: "ripe", day: 2, place: "shelf" } }]),
      /Take out "day"/,
    ],
    [
      "with a move on no day",
      one({ later: { moveWhen: "day", place: "shelf" } }),
      /the day it moves is not given\. .*from 1 to 9/,
    ],
    [
      "with a move too late",
      one({ later: { moveWhen: "day", day: 10, place: "shelf" } }),
      /day 10 is not before day 10.*from 1 to 9/,
    ],
    [
      "with a later place unknown",
      one({ later: { moveWhen: "day", day: 2, place: "loft" } }),
      /place "loft" is not in the kitchen/,
    ],
    [
      "with leaves off apples",
      one({ done: ["twist off leaves"] }),
      /"twist off leaves" is said to be done, but it came without leaves/,
    ],
    [
      "with dry apples dried",
      one({ done: ["dry well"] }),
      /"dry well" is said to be done, but it came dry\. Take it out/,
    ],
    ["with a vent nowhere", vent("loft", "open"), /vent "loft": place "loft" is not in the kitchen/],
    ["with a vent on the shelf", vent("shelf", "open"), /this place has no vent\. Leave it out/],
    ["with a vent twice", vent("left-drawer", "open", 2), /it is set more than once/],
    [
      "with a setting there is not",
      vent("left-drawer", "ajar"),
      /setting: "ajar"\. Write "open" or "half" or "closed"/,
    ],
  ])("%s", (_, said, message) => {
    expect(complaint(small(), said)).toMatch(message);
  });

  it("of a cut lot that is to ripen", () => {
    const said = arrangement([{ lot: "mango", place: "shelf", later: { moveWhen: "ripe", place: "door" } }]);
    expect(complaint(small([lot("mango", 300, { form: "cut" })]), said)).toMatch(/does not ripen once cut/);
  });

  it("of a single day with a later move", () => {
    const asked = request(threeLots, smallKitchen(), { days: 1 });
    expect(complaint(asked, one({ later: { moveWhen: "day", day: 1, place: "shelf" } }))).toMatch(
      /only one day is looked at/,
    );
  });

  it("of a vent that the kitchen holds fixed", () => {
    const kitchen = smallKitchen();
    const places = kitchen.places.map((place) => (place.vent ? { ...place, vent: "half" as const } : place));
    const asked = request(threeLots, { ...kitchen, places });
    expect(complaint(asked, vent("left-drawer", "open"))).toMatch(
      /always half, the arrangement that it is open/,
    );
    expect(complaint(asked, vent("left-drawer", "half"))).toBe("no complaint");
  });

  it("of a name that two kinds of the haul share", () => {
    const lots = [lot("romaine", 300), lot("leaf-lettuce", 300)];
    expect(complaint(small(lots), arrangement([{ lot: "lettuce", place: "shelf" }]))).toMatch(
      /lot "lettuce": it may be more than one kind of the haul\. Name one of: "romaine" \(.*\), "leaf-lettuce" \(/,
    );
  });

  it("tells everything at once", () => {
    const said = arrangement(
      [
        { lot: "zorb", place: "shelf" },
        { lot: "apple", place: "loft" },
      ],
      [{ place: "loft", setting: "open" }],
    );
    expect(complaint(small(), said).split("\n")).toHaveLength(3);
  });
});

describe("names", () => {
  const placeOf = (name: string) => {
    const { yours } = judged(small(), arrangement([{ lot: name, place: "COUNTER" }]));
    return yours.lots.filter(({ stays }) => stays[0]!.place === "counter").map((part) => part.lot);
  };
  it.each(["broccoli", "2 broccoli", " broccoli ", "2 BROCCOLI", "brócoli"])("%s", (name) => {
    expect(placeOf(name)).toContain("broccoli");
  });
  it("words typed among others, where the kind's own name does not fit", () => {
    const lots = [lot("cherry-tomato", 300, { typed: "500 g cherry tomatoes on the vine" })];
    const { yours } = judged(small(lots), arrangement([{ lot: "tomatoes", place: "counter" }]));
    expect(yours.lots.every(({ stays }) => stays[0]!.place === "counter")).toBe(true);
  });
});

describe("whatever is given", () => {
  const asked = request(
    [lot("apple", 300), lot("spinach", 200, { washed: true })],
    smallKitchen({ wraps: [] }),
    { days: 3 },
  );
  const name = fc.oneof(
    fc.constantFrom("apple", "spinach", "shelf", "counter", "left-drawer", "apples"),
    fc.string({ maxLength: 6 }),
  );
  const nearly = fc.record(
    {
      version: fc.constant(1),
      lots: fc.array(
        fc.record(
          {
            lot: name,
            place: name,
            wrap: fc.constantFrom(...wrapIds),
            share: fc.constantFrom(0.25, 0.5, 0.75, 1),
            done: fc.subarray(["dry well", "twist off leaves"]),
            later: fc.record(
              { moveWhen: fc.constantFrom("ripe", "day"), day: fc.integer({ min: 1, max: 4 }), place: name },
              { requiredKeys: ["moveWhen", "place"] },
            ),
          },
          { requiredKeys: ["lot", "place"] },
        ),
        { maxLength: 3 },
      ),
      vents: fc.array(fc.record({ place: name, setting: fc.constantFrom(...ventSettings) }), {
        maxLength: 2,
      }),
    },
    { requiredKeys: ["version"] },
  );

  it("is judged, or refused in words for the person; nothing else is thrown", () => {
    let refused = 0;
    fc.assert(
      fc.property(fc.oneof(nearly, nearly, fc.jsonValue(), fc.anything()), (said) => {
        const told = complaint(asked, said);
        if (told !== "no complaint") {
          refused++;
          expect(told).toMatch(/^arrangement/);
        } else {
          expect(judgementSchema.safeParse(judged(asked, said)).success).toBe(true);
        }
      }),
      { numRuns: 300, seed: 11 },
    );
    expect(refused).toBeLessThan(300);
  });
});
