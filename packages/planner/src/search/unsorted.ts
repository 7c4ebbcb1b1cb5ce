import type { BoundLot } from "../problem/bindHaul.js";
import { type BoundPlace, untouchedVent } from "../problem/bindKitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Choice, Part, Programme } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { allowedPlaces } from "../rules/cutInRefrigerator.js";
import { suitableWraps } from "../rules/suitableWraps.js";
import { hasSafeTime } from "../rules/underControl.js";

/** Where everything goes when nobody sorts. Declared, no source: habits to set a plan beside, not counts of what people do. */
export const unsortedHabits = ["refrigerator", "counter"] as const;
export type UnsortedHabit = (typeof unsortedHabits)[number];

/** What is filled first. Refrigerator: shelves, the rest of it, the kitchen. Counter: counters, the rest of the kitchen, the refrigerator. */
const orders: { readonly [habit in UnsortedHabit]: (place: BoundPlace) => number } = {
  refrigerator: ({ place, cold }) => (place.kind === "refrigerator shelf" ? 0 : cold ? 1 : 2),
  counter: ({ place, cold }) => (place.kind === "counter" ? 0 : cold ? 2 : 1),
};

/** As it comes: bare, but for what has a safe time, in the cover that takes the least room. */
function asItComes({ kitchen, catalogue }: Problem, lot: BoundLot): (place: number) => Programme {
  const wrap = hasSafeTime(lot) ? suitableWraps(lot, kitchen, catalogue.wraps)[0]! : "none";
  return (place) => ({ leavesOff: false, dried: false, stays: [{ place, wrap, until: "never" }] });
}

/**
 * The comparison: everything in the refrigerator as it comes, unwrapped and unprepared, in the order it was named: on the
 * shelves until they are full, then wherever the refrigerator has room, then elsewhere; vents untouched. What fits nowhere
 * lies on the first shelf. Cut produce stays in the refrigerator and covered here too: the hard rules are not what is compared, and so the
 * planner may always choose this.
 *
 * @param habit what is filled first; the refrigerator is what every plan is compared with
 */
export function unsortedChoice(problem: Problem, habit: UnsortedHabit = "refrigerator"): Choice {
  const order = orders[habit];
  const free = Float64Array.from(problem.places, ({ place }) => place.litres);
  const parts = problem.lots.flatMap((lot): Part[] => {
    const places = [...allowedPlaces(lot, problem.places)].sort((a, b) => order(a) - order(b));
    const mine: Part[] = [];
    const lies = asItComes(problem, lot);
    let left = lot.portions;
    const lay = (place: number, portions: number): void => {
      if (portions <= 0) return;
      const part: Part = { lot: lot.index, portions, programme: lies(place) };
      free[place] = free[place]! - litresInStay(problem, part, 0);
      mine.push(part);
      left -= portions;
    };
    for (const { index } of places) {
      if (left === 0) break;
      const rest = litresInStay(problem, { lot: lot.index, portions: left, programme: lies(index) }, 0);
      const share = (free[index]! + 1e-9) / rest;
      lay(index, share >= 1 ? left : Math.max(0, Math.floor((left * share) / lot.splitUnit) * lot.splitUnit));
    }
    lay(places[0]!.index, left);
    return mine;
  });
  return { parts, vents: problem.vents.map(() => untouchedVent) };
}
