import { catalogue } from "@keepwright/catalogue";
import { handoutContext, improvementsText, improvementsView } from "@keepwright/handout";
import { type Improvement, type Improvements, type Kitchen, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const objective = { waste: 0, qualityLost: 0, lifeLost: 0, effort: 0, overflow: 0, total: 0 };
const carrots = {
  id: "lot-1",
  commodity: "carrot",
  grams: 450,
  form: "whole" as const,
  tops: true,
};

function improvement(change: Improvement["change"], value: number, low: number, high: number): Improvement {
  return {
    change,
    gain: { value, low, high, unit: "g" },
    plannerNoise: 0,
    modelReach: { below: value - low, above: high - value },
    saved: objective,
    matters: value >= 25 && low > 0,
    seeds: [1, 2, 3],
  };
}

/** Made by hand, invented figures: every sort of change. */
const changes: Improvement[] = [
  {
    ...improvement({ name: "lot fewer", lot: carrots }, 300, 120, 480),
    eatenLess: { value: 130, unit: "g" },
  },
  improvement({ name: "refrigerator colder", refrigerator: "refrigerator", from: 4.4, to: 3.4 }, 90, 4, 180),
  improvement({ name: "vent turned", place: "left-drawer", from: "open", to: "closed" }, 60, 30, 90),
  improvement(
    {
      name: "shopping twice",
      day: 5,
      lots: [carrots, { ...carrots, commodity: "banana", pieces: 3, tops: false }],
    },
    50,
    30,
    70,
  ),
  improvement({ name: "portion more a day", from: 2.5, to: 3.5 }, 40, -10, 90),
  improvement({ name: "lidded boxes at hand" }, 3, 1, 5),
  improvement({ name: "paper bags at hand" }, 2, 1, 5),
  improvement({ name: "vented drawer more", refrigerator: "refrigerator", litres: 14 }, 1, 0, 2),
  improvement({ name: "bunches topped", lots: ["lot-1"] }, 0, 0, 0),
  improvement({ name: "refrigerator warmer", refrigerator: "refrigerator", from: 3, to: 4 }, -80, -140, -20),
];

const told = (some: readonly Improvement[]): Improvements => ({
  version: 1,
  from: "2026-06-13",
  days: 10,
  kitchen: "An ordinary kitchen",
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [1] },
  expectedWaste: { value: 640, unit: "g" },
  objective,
  rule: { leastGain: 25, seeds: [1, 2, 3], plannerNoise: 0.2 },
  changes: [...some],
  cautions: ["refrigerator-too-warm", "mould-soft", "local"],
});
const view = (some: readonly Improvement[], units: "metric" | "us" = "metric", kitchen?: Kitchen) =>
  improvementsView(handoutContext(catalogue(), { units }), told(some), {
    kitchen: kitchen ?? ordinaryKitchens.ordinary,
    lots: [carrots],
  });
/** Spaces that do not break are spaces here, and units stand apart as they do. */
const plain = (lines: readonly string[]): string[] => lines.map((line) => line.replaceAll(/[   ]/g, " "));

describe("what would help most, in words", () => {
  it("tells what counts with its range, and no low end nobody can tell from nothing", () => {
    expect(plain(view(changes).helps)).toEqual([
      "Buy one thing less, best of all: carrots with leaves on, about 450 g: about 300 g less waste (120 g to 480 g), and about 130 g less to eat at its best.",
      "Set the refrigerator to 3.4 °C instead of 4.4 °C: about 90 g less waste (from next to nothing to 180 g).",
      "Close the vent of “Left drawer”: about 60 g less waste (30 g to 90 g).",
      "Shop twice, and buy this only on Thu 18 June: 450 g of carrots with leaves on and 3 bananas: about 50 g less waste (30 g to 70 g).",
    ]);
  });

  it("names the rest without figures, but for what may save something or surely costs something", () => {
    expect(plain(view(changes).little)).toEqual([
      "Eat one portion more a day each (3.5 instead of 2.5): perhaps 40 g less waste, perhaps none.",
      "Have boxes with lids at hand.",
      "Have paper bags at hand.",
      "Put one more drawer with a vent, 14 L, on the refrigerator shelf.",
      "Have the leaves taken off in the shop: carrots.",
      "Set the refrigerator to 4 °C instead of 3 °C: about 80 g more waste.",
    ]);
  });

  it("says of a thing left unbought what it takes off the table where that is more than it saves", () => {
    const worthBuying: Improvement = {
      ...improvement({ name: "lot fewer", lot: carrots }, 120, 60, 180),
      eatenLess: { value: 330, unit: "g" },
      matters: false,
    };
    expect(plain(view([worthBuying]).little)).toEqual([
      "Buy one thing less, best of all: carrots with leaves on, about 450 g: about 120 g less waste, but about 330 g less to eat at its best.",
    ]);
  });

  it("names no thing to leave unbought where none is worth it", () => {
    const garlic: Improvement = {
      ...improvement({ name: "lot fewer", lot: { ...carrots, commodity: "garlic" } }, 4, -20, 30),
      eatenLess: { value: 0, unit: "g" },
    };
    expect(plain(view([garlic]).little)).toEqual([
      "Buy one thing less: nothing here is wasted more than it is eaten.",
    ]);
  });

  it("says that nothing matters where nothing does", () => {
    const { lead, helps } = view(changes.slice(5));
    expect(helps).toEqual([]);
    expect(plain(lead)).toEqual([
      "Expected waste as it is, with the best plan found: 640 g.",
      "None of the changes tried matters for this haul.",
    ]);
  });

  it("says that no change can help where next to nothing is wasted", () => {
    expect(view([]).how).toEqual([]);
    expect(plain(view([]).lead)).toEqual([
      "Next to nothing should go to waste as it is (less than 25 g): no change can save more than that.",
    ]);
  });

  it("names the refrigerator where there are two, in the reader's units", () => {
    const { ordinary } = ordinaryKitchens;
    const [one] = ordinary.refrigerators;
    const two = { ...ordinary, refrigerators: [one!, { ...one!, id: "garage" }] };
    const [, colder] = plain(view(changes, "us", two).helps);
    expect(colder).toMatch(/^Set the refrigerator “refrigerator” to 38 °F instead of 40 °F: about 3 oz/);
  });

  it("states the rule, how two shops were worked out, and the cautions that cannot wait", () => {
    const text = improvementsText(handoutContext(catalogue()), view(changes)).replaceAll(/\s+/g, " ");
    expect(text).toContain("saves at least 25 g and even the low end of its range saves something");
    expect(text).toContain("lie apart (up to 1 g here)");
    expect(text).toContain("What is not bought is not eaten either.");
    expect(text).toContain("as two plans, one after the other");
    expect(text).toContain("The refrigerator is warmer than");
    expect(text).not.toContain("mould");
  });
});
