import { catalogue } from "@keepwright/catalogue";
import { handoutContext, worthBuyingText, worthBuyingView } from "@keepwright/handout";
import { ordinaryKitchens, type WorthBuying } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const eatenAndWasted = { eaten: 0, wasted: 0 };
const thing = (
  commodity: string,
  wished: WorthBuying["things"][number]["wished"],
  buy: WorthBuying["things"][number]["buy"],
  cutBecause?: WorthBuying["things"][number]["cutBecause"],
): WorthBuying["things"][number] => ({
  id: commodity,
  commodity,
  form: "whole",
  tops: false,
  wished,
  buy,
  unit: { grams: 100 },
  ...(cutBecause && { cutBecause }),
  ifAll: eatenAndWasted,
  ifBought: eatenAndWasted,
});
const fates = (eaten: number, wasted: number, left: number): WorthBuying["ifAll"] => ({
  eaten: { value: eaten, unit: "g" },
  wasted: { value: wasted, unit: "g" },
  left: { value: left, unit: "g" },
});

/** Made by hand, invented figures: every reason, cut in part and altogether. */
const told: WorthBuying = {
  version: 1,
  from: "2026-06-13",
  days: 7,
  kitchen: "An ordinary kitchen",
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [] },
  things: [
    thing("apple", { grams: 900, pieces: 5 }, { grams: 900, pieces: 5 }),
    thing("spinach", { grams: 900 }, { grams: 300 }, "goes first"),
    thing("kale", { grams: 900 }, { grams: 300 }, "no room"),
    thing("potato", { grams: 5000 }, { grams: 2000 }, "too much for the table"),
    thing("avocado", { grams: 400, pieces: 2 }, { grams: 0, pieces: 0 }, "too much for the table"),
    thing("raspberry", { grams: 400 }, { grams: 0 }, "goes first"),
    thing("cabbage", { grams: 1800, pieces: 2 }, { grams: 0, pieces: 0 }, "no room"),
  ],
  ifAll: fates(4000, 1800, 900),
  ifBought: fates(3500, 300, 0),
  wasteAvoided: { value: 1500, low: 900, high: 2000, unit: "g" },
  plannerNoise: 0.3,
  modelReach: { below: 600, above: 500 },
  rule: { wastedAgainstEaten: 1, leastShareAdded: 0.02, stepGrams: 100, seeds: [1, 2, 3] },
  plan: null,
  cautions: ["refrigerator-too-warm", "local"],
};
const context = handoutContext(catalogue());
const view = (changes: Partial<WorthBuying> = {}) =>
  worthBuyingView(context, { ...told, ...changes }, { kitchen: ordinaryKitchens.ordinary });
const plain = (lines: readonly string[]): string[] => lines.map((line) => line.replaceAll(/[   ]/g, " "));

describe("what is worth buying, in words", () => {
  it("tells each amount beside the wish, and why no more", () => {
    expect(plain(view().buy)).toEqual([
      "Apples: 5 (about 900 g), all that you wished for.",
      "Spinach: about 300 g instead of about 900 g. More would be past its best before it is eaten.",
      "Kale: about 300 g instead of about 900 g. For more of it there is no room left where it would keep.",
      "Potatoes: about 2 kg instead of about 5 kg. More is not eaten in these days.",
    ]);
    expect(plain(view().leave)).toEqual([
      "Avocados, 2 (about 400 g): there is enough to eat in these days without it.",
      "Raspberries, about 400 g: it would be past its best before it is eaten.",
      "Cabbages, 2 (about 1.8 kg): there is no room left where it would keep.",
    ]);
  });

  it("tells what is saved and what it costs in eating", () => {
    expect(plain(view().saves)).toEqual([
      "With the whole list about 1.8 kg would go to waste, with this one about 300 g: about 1.5 kg less (900 g to 2 kg).",
      "It has a price: about 500 g less is eaten at its best in these days.",
    ]);
    const more = view({ ifBought: fates(4200, 300, 0) });
    expect(plain(more.saves)[1]).toMatch(/^And about 200 g more is eaten at its best/);
    const unsure = view({ ifBought: fates(4000, 300, 0), wasteAvoided: { ...told.wasteAvoided, low: -5 } });
    expect(plain(unsure.saves)).toEqual([
      expect.stringMatching(/about 1\.5 kg less \(up to 2 kg\)\.$/),
      "About as much is eaten at its best in these days as with the whole list.",
    ]);
  });

  it("says that the whole list is worth buying, or nothing of it", () => {
    expect(plain(view({ things: told.things.slice(0, 1) }).saves)).toEqual([
      "The whole list is worth buying: about 1.8 kg of it should go to waste.",
    ]);
    expect(view({ things: told.things.slice(4) }).buy).toEqual([
      "Nothing on this list is worth buying for this kitchen and these days.",
    ]);
  });

  it("states the rule and that it has no source, and the cautions that cannot wait", () => {
    const text = worthBuyingText(context, view()).replaceAll(/\s+/g, " ");
    expect(text).toContain("step of 100 g is worth buying when more of it should be eaten");
    expect(text).toContain("it has no source");
    expect(text).toContain("The refrigerator is warmer than");
  });
});
