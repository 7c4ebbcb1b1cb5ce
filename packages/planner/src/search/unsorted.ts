import { type BoundPlace, untouchedVent } from "../problem/bindKitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Choice, Part, Programme } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { allowedPlaces } from "../rules/cutInRefrigerator.js";

/** Shelf first, then the rest of the refrigerator, then the kitchen. */
const order = ({ place, cold }: BoundPlace): number =>
  place.kind === "refrigerator shelf" ? 0 : cold ? 1 : 2;

const bareIn = (place: number): Programme => ({
  leavesOff: false,
  dried: false,
  stays: [{ place, wrap: "none", until: "never" }],
});

/**
 * The comparison: everything in the refrigerator as it comes, unwrapped and unprepared, in the order it was named: on the
 * shelves until they are full, then wherever the refrigerator has room, then elsewhere; vents untouched. What fits nowhere
 * lies on the first shelf. Cut produce stays in the refrigerator here too.
 */
export function unsortedChoice(problem: Problem): Choice {
  const free = Float64Array.from(problem.places, ({ place }) => place.litres);
  const parts = problem.lots.flatMap((lot): Part[] => {
    const places = [...allowedPlaces(lot, problem.places)].sort((a, b) => order(a) - order(b));
    const mine: Part[] = [];
    let left = lot.portions;
    const lay = (place: number, portions: number): void => {
      if (portions <= 0) return;
      const part: Part = { lot: lot.index, portions, programme: bareIn(place) };
      free[place] = free[place]! - litresInStay(problem, part, 0);
      mine.push(part);
      left -= portions;
    };
    for (const { index } of places) {
      const share = (free[index]! + 1e-9) / (lot.litres * (left / lot.portions));
      lay(index, share >= 1 ? left : Math.max(0, Math.floor((left * share) / lot.splitUnit) * lot.splitUnit));
    }
    lay(places[0]!.index, left);
    return mine;
  });
  return { parts, vents: problem.vents.map(() => untouchedVent) };
}
