import type { PlannedLot } from "../problem/plan.js";
import { alike, type PlanFault, sum, unless } from "./fault.js";
import { kindOf, portionsOf, type Subject, stayAt } from "./subject.js";

/** Litres of a part at the start of a day: its grams not eaten yet, at the kind's bulk density (kg/m³ = g/L), and its wrap's extra room. */
export function litresOn(subject: Subject, part: PlannedLot, day: number): number {
  const eaten = sum(part.eatOn.filter((meal) => meal.day < day).map((meal) => meal.portions));
  const uneaten = part.grams * (1 - eaten / portionsOf(part));
  const extra = subject.catalogue.wraps.get(stayAt(part, day).wrap)?.extraRoom.value ?? 0;
  return (uneaten / kindOf(subject, part).household.bulkDensity.value) * (1 + extra);
}

/** Litres taken in a place at the start of each planned day. */
export const litresByDay = (subject: Subject, place: string): number[] =>
  Array.from({ length: subject.plan.days }, (_, day) =>
    sum(
      subject.plan.lots
        .filter((part) => stayAt(part, day).place === place)
        .map((part) => litresOn(subject, part, day)),
    ),
  );

/** No place holds more than its litres on any day, or the plan says by how much; and the litres told are those added up again. */
export const room = (subject: Subject): PlanFault[] => [
  ...subject.plan.lots.flatMap((part) => {
    const litres = litresOn(subject, part, 0);
    return unless(alike(part.litres, litres), "litres", part.id, part.litres, litres, "L");
  }),
  ...subject.plan.places.flatMap((told) => {
    const { litres } = subject.kitchen.places.find(({ id }) => id === told.place)!;
    const most = Math.max(...litresByDay(subject, told.place));
    const over = Math.max(0, most - litres);
    const listed = sum(
      subject.plan.overflow.filter(({ place }) => place === told.place).map((entry) => entry.litres),
    );
    return [
      ...unless(told.litres === litres, "litres", told.place, told.litres, litres, "L"),
      ...unless(alike(told.litresTaken, most), "litres", told.place, told.litresTaken, most, "L"),
      ...unless(alike(listed, over, 1e-6, 2e-6), "overflow", told.place, over, listed, "L"),
    ];
  }),
];
