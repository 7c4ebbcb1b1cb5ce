import type { Plan, PlannedLot } from "../problem/plan.js";
import type { Problem } from "../problem/problem.js";
import type { Choice, Part, Programme } from "../problem/programme.js";

function indexOf(names: readonly string[], name: string, what: string): number {
  const index = names.indexOf(name);
  if (index < 0) {
    throw new RangeError(
      `The plan names ${what} “${name}”, which is not there. Give the haul and kitchen it was made for.`,
    );
  }
  return index;
}

function programmeOf(
  problem: Problem,
  places: readonly string[],
  lot: number,
  planned: PlannedLot,
): Programme {
  return {
    leavesOff: problem.lots[lot]!.form.tops && !planned.tops,
    dried: planned.preparation.includes("dry well"),
    stays: planned.stays.map((stay) => ({
      place: indexOf(places, stay.place, "the place"),
      wrap: stay.wrap,
      until:
        stay.moveWhen === "ripe"
          ? "ripe"
          : stay.moveWhen === "day"
            ? { day: stay.toDay ?? stay.fromDay }
            : "never",
    })),
  };
}

/**
 * What a plan decides, read back from it. Throws RangeError naming the lot or place when the plan is not one for this
 * haul and kitchen.
 */
export function choiceOfPlan(problem: Problem, plan: Plan): Choice {
  const places = problem.places.map(({ place }) => place.id);
  const lots = problem.lots.map(({ lot }) => lot.id);
  const parts = plan.lots.map((planned): Part => {
    const lot = indexOf(lots, planned.lot, "the lot");
    const portions = planned.eatOn.reduce((sum, meal) => sum + meal.portions, planned.leftPortions);
    return { lot, portions, programme: programmeOf(problem, places, lot, planned) };
  });
  const vents = problem.vents.map((index) => {
    const { id } = problem.places[index]!.place;
    return plan.vents[
      indexOf(
        plan.vents.map(({ place }) => place),
        id,
        "no vent setting for the place",
      )
    ]!.setting;
  });
  return { parts, vents };
}
