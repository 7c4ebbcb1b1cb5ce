import { dairy, type WrapId } from "@keepwright/catalogue";
import type { PlannedLot } from "../problem/plan.js";
import { weights } from "../rules/weights.js";
import { lotOf, placeOf, type Subject, stayAt } from "./subject.js";

/** Wraps that let no smell through (common practice, no source). */
const tight: readonly WrapId[] = ["closed film bag", "lidded box", "foil"];

/** A name for the air around a part on a day: a place with air of its own, a refrigerator, or one spot of the open room. */
function airOn(subject: Subject, part: PlannedLot, day: number): string | undefined {
  const stay = stayAt(part, day);
  if (tight.includes(stay.wrap)) return undefined;
  const place = placeOf(subject, stay.place);
  const shared = place.airChangesPerHour === undefined ? place.refrigerator : undefined;
  return shared === undefined ? `place ${place.id}` : `refrigerator ${shared}`;
}

/** Grams of quality lost by parts that lie in one air with a giver of smell on the first planned day or the last. */
export function smellsTaken(subject: Subject): number {
  const { plan, catalogue } = subject;
  const meet = (one: PlannedLot, other: PlannedLot): boolean =>
    [0, plan.days - 1].some((day) => {
      const air = airOn(subject, one, day);
      return air !== undefined && air === airOn(subject, other, day);
    });
  const takers = plan.lots.filter((taker) =>
    catalogue.odours.some(
      (pair) =>
        pair.taker === taker.commodity &&
        plan.lots.some((giver) => giver !== taker && giver.commodity === pair.giver && meet(giver, taker)),
    ),
  );
  const produce = takers.reduce((total, taker) => total + taker.grams * weights.smellTaken, 0);
  return produce + lotsThatTaintDairy(subject) * weights.dairyGrams * weights.smellTaken;
}

/** Lots that give their smell to dairy and lie open in a refrigerator on the first planned day or the last. */
function lotsThatTaintDairy(subject: Subject): number {
  const { plan, catalogue } = subject;
  const gives = new Set(catalogue.odours.filter((pair) => pair.taker === dairy).map((pair) => pair.giver));
  const open = (part: PlannedLot, day: number): boolean => {
    const stay = stayAt(part, day);
    return !tight.includes(stay.wrap) && placeOf(subject, stay.place).refrigerator !== undefined;
  };
  const lots = plan.lots.filter(
    (part) => gives.has(part.commodity) && (open(part, 0) || open(part, plan.days - 1)),
  );
  return new Set(
    lots.map((part) => {
      const { carried, id } = lotOf(subject, part);
      return carried ? `from ${carried.origin}` : `new ${id}`;
    }),
  ).size;
}
