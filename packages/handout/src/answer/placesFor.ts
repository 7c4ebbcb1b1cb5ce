import type { Catalogue, Commodity } from "@keepwright/catalogue";
import { type Kitchen, type Place, type Plan, planHaul } from "@keepwright/planner";
import type { AnsweredPlace } from "./itemAnswer.js";

/** The lot asked about: the usual amount of the kind, by itself. */
export interface AskedLot {
  readonly commodity: Commodity;
  readonly ripeness: number;
}

/** Where nothing is eaten soon the place that keeps longest is best, so the lot is planned for the longest a plan may be. */
const plannedDays = 28;

function usualGrams({ household }: Commodity): number {
  const unit = household.units.find(({ name }) => name === household.bareUnit) ?? household.units[0];
  return unit?.grams ?? household.portion.value;
}

function planAlone(asked: AskedLot, kitchen: Kitchen, catalogue: Catalogue): Plan {
  const { commodity, ripeness } = asked;
  const lot = { id: "asked", commodity: commodity.id, grams: usualGrams(commodity), ripeness };
  // The day is no date of anybody's: only its distance from the other days is used.
  return planHaul({
    haul: { lots: [lot] },
    kitchen,
    household: { people: 1, days: plannedDays },
    from: "2000-01-01",
    catalogue,
  });
}

function answered(plan: Plan): AnsweredPlace {
  const longest = [...plan.lots].sort((one, other) => other.grams - one.grams)[0]!;
  const nameOf = (id: string) => plan.places.find(({ place }) => place === id)?.name ?? id;
  return {
    stays: longest.stays.map(({ place, placeKind, wrap, moveWhen }) => ({
      place,
      placeKind,
      wrap,
      name: nameOf(place),
      ...(moveWhen && { moveWhen }),
    })),
    vents: plan.vents.filter(({ place }) => longest.stays.some((stay) => stay.place === place)),
    life: { ...longest.life, endedBy: longest.endedBy },
  };
}

/** The best place for a kind alone in a kitchen: the planner's own answer for that one lot. */
export const bestPlace = (asked: AskedLot, kitchen: Kitchen, catalogue: Catalogue): AnsweredPlace =>
  answered(planAlone(asked, kitchen, catalogue));

const firstOfEachKind = (places: readonly Place[]): Place[] =>
  places.filter((place, index) => places.findIndex(({ kind }) => kind === place.kind) === index);

/** The kind alone in one place of each sort the kitchen has, wrapped as well as can be there; longest life first. */
export function eachPlace(asked: AskedLot, kitchen: Kitchen, catalogue: Catalogue): AnsweredPlace[] {
  return firstOfEachKind(kitchen.places)
    .map((place) => answered(planAlone(asked, { ...kitchen, places: [place] }, catalogue)))
    .sort((one, other) => other.life.middle - one.life.middle);
}
