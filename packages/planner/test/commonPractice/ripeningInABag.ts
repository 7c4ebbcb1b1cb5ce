import { catalogue } from "@keepwright/catalogue";
import { type Kitchen, ordinaryKitchens, planHaul } from "@keepwright/planner";
import type { PracticeRow } from "./recordPractices.js";

/** Invented fruit that comes home unripe: grams and pieces. */
const fruit = [
  { commodity: "avocado", grams: 600, pieces: 3 },
  { commodity: "pear", grams: 700, pieces: 4 },
  { commodity: "banana", grams: 700, pieces: 5 },
  { commodity: "peach", grams: 600, pieces: 4 },
  { commodity: "kiwifruit", grams: 500, pieces: 5 },
  { commodity: "plum", grams: 500, pieces: 6 },
];

/** The wrap in which each kind ripens first, wanted by the second day, with these wraps at hand. */
export const ripensIn = (wraps: Kitchen["wraps"]): string[] =>
  fruit.map(({ commodity, grams, pieces }) => {
    const wanted = { when: "by", day: 2 };
    const { lots } = planHaul({
      haul: { lots: [{ id: "fruit", commodity, grams, pieces, ripeness: "unripe", wanted }] },
      kitchen: { ...ordinaryKitchens.ordinary, wraps },
      household: { people: 2, days: 7 },
      from: "2026-06-13",
      catalogue: catalogue(),
    });
    return lots[0]!.stays[0]!.wrap;
  });

/** Fruit wanted soon, where a paper bag and a bag with holes are at hand. */
export function ripeningInABag(): PracticeRow {
  const wraps = ripensIn(["paper bag", "perforated bag"]);
  const followed = wraps.filter((wrap) => wrap === "paper bag").length;
  return {
    name: "fruit wanted ripe soon in a paper bag (six kinds alone, in the ordinary kitchen)",
    followed,
    of: wraps.length,
    declared: false,
    why:
      followed === wraps.length
        ? ""
        : "Where paper is the only bag at hand they ripen in it. Where a bag with holes is at hand too they ripen in that: it lets out a tenth as much of the fruit’s own gas (60 and 5.5 L/h for a kilogram, both worked out with figures from memory), and two days in its damper air cost little in the model. The advice for paper rests on sweating and mould, of which the model knows only the size of decay in damp air (common practice, no source).",
  };
}
