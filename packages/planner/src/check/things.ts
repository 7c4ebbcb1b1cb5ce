import { type PlanFault, unless } from "./fault.js";
import { partsOf, type Subject } from "./subject.js";

function placesNamed({ plan, kitchen }: Subject): PlanFault[] {
  const kinds = new Map(kitchen.places.map((place) => [place.id, place.kind]));
  const uses = [
    ...plan.places,
    ...plan.lots.flatMap((part) => part.stays),
    ...plan.vents.map(({ place }) => ({ place, placeKind: kinds.get(place) })),
    ...plan.overflow.map(({ place }) => ({ place, placeKind: kinds.get(place) })),
  ];
  const wrong = uses.flatMap(({ place, placeKind }) =>
    unless(
      kinds.has(place) && kinds.get(place) === placeKind,
      "known things",
      place,
      placeKind ?? "",
      kinds.get(place) ?? "no such place",
    ),
  );
  const listed = plan.places.map(({ place }) => place).join(", ");
  const all = kitchen.places.map(({ id }) => id).join(", ");
  return [...wrong, ...unless(listed === all, "known things", "places", listed, all)];
}

/** Every lot, kind and place a plan names exists, and every lot and place of the request is in it. The other rules rest on this. */
export function knownThings(subject: Subject): PlanFault[] {
  const { plan, haul, kitchen, catalogue } = subject;
  const lots = new Map(haul.lots.map((lot) => [lot.id, lot]));
  return [
    ...unless(plan.kitchen === kitchen.name, "known things", "kitchen", plan.kitchen, kitchen.name),
    ...plan.lots.flatMap((part) => {
      const commodity = lots.get(part.lot)?.commodity;
      const known = commodity === part.commodity && catalogue.commodities.has(commodity);
      return unless(known, "known things", part.id, part.commodity, commodity ?? "no such lot");
    }),
    ...haul.lots.flatMap((lot) =>
      unless(
        partsOf(subject, lot).length > 0,
        "known things",
        lot.id,
        "not in the plan",
        "at least one part",
      ),
    ),
    ...placesNamed(subject),
  ];
}

/** A lot's parts are named after it: its own id, then "/2", "/3" and so on. */
export const partNames = (subject: Subject): PlanFault[] =>
  subject.haul.lots.flatMap((lot) =>
    partsOf(subject, lot).flatMap(({ id }, index) => {
      const expected = index === 0 ? lot.id : `${lot.id}/${index + 1}`;
      return unless(id === expected, "part names", id, id, expected);
    }),
  );

/** The household the plan speaks of is the one it was asked for. */
export function sameHousehold({ plan, household }: Subject): PlanFault[] {
  const { people, portionsPerPersonPerDay, daysAway } = household;
  const told = JSON.stringify({ ...plan.household, days: plan.days });
  const asked = JSON.stringify({ people, portionsPerPersonPerDay, daysAway, days: household.days });
  return unless(told === asked, "household", "household", told, asked);
}
