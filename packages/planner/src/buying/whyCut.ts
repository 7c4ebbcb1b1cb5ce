import { type Planned, plannedProblem } from "../improve/planned.js";
import { bindProblem, type Problem } from "../problem/problem.js";
import { type Basket, requestFor, type Wished } from "./basket.js";
import { unitsOf } from "./boughtUnit.js";
import { leastAdded } from "./cuts.js";
import { type Fate, worstOf, worthOf } from "./fate.js";
import type { CutReason } from "./worthBuying.js";

/** Room nobody fills [L], for the question what more room would do. */
const ampleLitres = 100_000;
/** Most portions a person may eat a day (`householdSchema`), for the question what a larger appetite would do. */
const amplePortions = 20;

/** The same kitchen and air, but everything fits everywhere. */
const roomy = (problem: Problem): Problem => ({
  ...problem,
  places: problem.places.map((bound) => ({ ...bound, place: { ...bound.place, litres: ampleLitres } })),
});

const hungry = (problem: Problem): Problem => ({
  ...problem,
  household: { ...problem.household, portionsPerPersonPerDay: amplePortions },
});

/** What is expected of the last unit of a wish in a plan for one unit more of everything that was cut. */
function lastUnit(
  wished: Wished,
  plan: Planned,
  basket: Basket,
  wish: number,
): { fate: Fate; adds: boolean } {
  const one = wished.wishes[wish]!;
  const lot = plan.prepared.problem.lots.findIndex((bound) => bound.lot.id === one.lot.id);
  const units = basket[wish]!;
  const grams = unitsOf(one, units).grams - (units > 1 ? unitsOf(one, units - 1).grams : 0);
  const fate = worstOf(plan, lot, grams / plan.prepared.problem.lots[lot]!.gramsPerPortion);
  return { fate, adds: worthOf(fate) >= leastAdded({ grams }) };
}

/**
 * Why each wish was cut, by its index: one unit more of everything that was cut is planned as it is, with room enough, and with a larger appetite; what
 * makes the unit worth buying was wanting. Three plans in all, so what several units take from each other counts as well.
 */
export function whyCut(wished: Wished, basket: Basket, seed: number): ReadonlyMap<number, CutReason> {
  const cut = wished.wishes.flatMap(({ count }, wish) => (basket[wish]! < count ? [wish] : []));
  if (cut.length === 0) return new Map();
  const more = basket.map((units, wish) => units + (cut.includes(wish) ? 1 : 0));
  const problem = bindProblem({ ...requestFor(wished, more), seed });
  const [asItIs, withRoom, withAppetite] = [problem, roomy(problem), hungry(problem)].map(plannedProblem);
  return new Map(
    cut.map((wish): [number, CutReason] => {
      const now = lastUnit(wished, asItIs!, more, wish);
      if (!now.adds && lastUnit(wished, withRoom!, more, wish).adds) return [wish, "no room"];
      if (now.fate.left > now.fate.wasted || lastUnit(wished, withAppetite!, more, wish).adds)
        return [wish, "too much for the table"];
      return [wish, "goes first"];
    }),
  );
}
