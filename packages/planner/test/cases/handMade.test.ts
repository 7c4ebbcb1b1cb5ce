import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import type { Kitchen } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { judgedByAll } from "./judgedByAll.js";
import { same } from "./tally.js";

/** Some places of the ordinary kitchen, with room as told. */
function kitchen(litres: Record<string, number>, wraps: Kitchen["wraps"] = []): Kitchen {
  const { ordinary } = ordinaryKitchens;
  const places = ordinary.places
    .filter(({ id }) => id in litres)
    .map((place) => ({ ...place, litres: litres[place.id]! }));
  return { ...ordinary, places, wraps };
}

const lot = (commodity: string, grams: number, more: object = {}) => ({
  id: commodity,
  commodity,
  grams,
  ...more,
});

const cases: { what: string; lots: object[]; kitchen: Kitchen; divided?: boolean }[] = [
  {
    what: "two drawers for apples, lettuce and carrots",
    lots: [lot("apple", 900), lot("romaine", 350), lot("carrot", 500)],
    kitchen: kitchen({ "left-drawer": 14, "right-drawer": 14 }),
  },
  {
    what: "two want the one small drawer",
    lots: [lot("spinach", 280), lot("broccoli", 400)],
    kitchen: kitchen({ shelf: 20, "left-drawer": 4.5 }, ["perforated bag"]),
  },
  {
    what: "a paper bag ripens an avocado beside a banana",
    lots: [lot("avocado", 204, { pieces: 2, ripeness: "unripe" }), lot("banana", 450)],
    kitchen: kitchen({ shelf: 20, counter: 20 }, ["paper bag"]),
  },
  {
    what: "potatoes and onions in a cupboard of two shelves",
    lots: [lot("potato", 1400), lot("onion", 600)],
    kitchen: kitchen({ shelf: 20, "cupboard-upper": 15, "cupboard-lower": 15 }, ["paper bag"]),
  },
  {
    what: "cut melon in a refrigerator with no room for it",
    lots: [lot("cantaloupe", 720, { form: "cut" }), lot("cucumber", 480), lot("cilantro", 20)],
    kitchen: kitchen({ shelf: 1.2, counter: 10 }, ["lidded box", "glass of water"]),
  },
  {
    what: "three peaches ripen in turn",
    lots: [lot("peach", 450, { pieces: 3, ripeness: "unripe" })],
    kitchen: kitchen({ shelf: 20, counter: 10 }, ["paper bag"]),
    divided: true,
  },
];

const gapOf = ({ lots, kitchen: places, divided }: (typeof cases)[number]) => {
  const household = { people: 2, days: 7 };
  const request = { haul: { lots }, kitchen: places, household, from: "2026-06-13", catalogue: catalogue() };
  return judgedByAll(request, divided ?? false);
};

describe("small cases made by hand", () => {
  it.each(cases)("$what: the plan is as good as the best of all", (one) => {
    const { gap, difference } = gapOf(one);
    expect(gap, difference).toBeLessThanOrEqual(same);
  });
});
