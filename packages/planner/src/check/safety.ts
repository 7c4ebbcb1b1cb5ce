import { exactLimit } from "@keepwright/catalogue";
import type { PlannedLot } from "../problem/plan.js";
import { type PlanFault, unless } from "./fault.js";
import { kindOf, lotOf, placeOf, type Subject } from "./subject.js";

const hoursPerDay = 24;

/** A limit of the catalogue. Throws RangeError when it is missing: a safety limit is never guessed. */
function limit({ catalogue }: Subject, id: string): number {
  const found = catalogue.safety.get(id);
  if (!found)
    throw new RangeError(
      `The safety limit “${id}” is missing from the catalogue. Add it to data/safety.json.`,
    );
  return found.value;
}

/**
 * Days cut produce may be kept in a place [d]. Out of the refrigerator: two hours, one where it is hot. In it, only kinds
 * that need time and temperature control are limited: cold enough, seven days with the first counted (so six later);
 * warmer than that, four hours.
 */
export function daysAllowed(subject: Subject, part: PlannedLot, placeId: string): number {
  const place = placeOf(subject, placeId);
  if (place.refrigerator === undefined) {
    const hot = place.temperature > limit(subject, "hot-surroundings-above");
    return limit(subject, hot ? "refrigerate-cut-within-when-hot" : "refrigerate-cut-within") / hoursPerDay;
  }
  if (!kindOf(subject, part).cut.timeTemperatureControl.value) return Number.POSITIVE_INFINITY;
  const cold = place.temperature <= limit(subject, "controlled-cold-holding-at-most");
  return cold
    ? limit(subject, "cut-ready-to-eat-days") - 1
    : limit(subject, "unrefrigerated-cut-at-most") / hoursPerDay;
}

/**
 * Share of its safe time a cut part has used up by a day. Days since it was cut, where they were told, count as spent where the kitchen keeps it
 * longest (what an earlier plan had used up is believed): the first day of a time limit is the day of preparation, not the day it came home, and nothing says that it lay colder.
 */
function timeUsed(subject: Subject, part: PlannedLot, day: number): number {
  const { carried, extraDays } = lotOf(subject, part);
  const longest = subject.kitchen.places
    .map(({ id }) => daysAllowed(subject, part, id))
    .reduce((most, days) => Math.max(most, days), 0);
  return part.stays.reduce(
    (used, stay) => {
      const spent = Math.min(day, stay.toDay ?? day) - stay.fromDay;
      return used + Math.max(0, spent) / daysAllowed(subject, part, stay.place);
    },
    carried?.safeTimeUsed ?? extraDays / longest,
  );
}

/** Cut, or of a kind sold under time and temperature control as it is. */
const isLimited = (subject: Subject, part: PlannedLot): boolean =>
  lotOf(subject, part).form === "cut" || kindOf(subject, part).controlledAsSold !== undefined;

/**
 * Such produce lies in a refrigerator from the first day where there is one. Otherwise the plan must carry the caution that
 * there is none.
 */
export const cutInRefrigerator = (subject: Subject): PlanFault[] => {
  const cut = subject.plan.lots.filter((part) => isLimited(subject, part));
  if (!subject.kitchen.places.some((place) => place.refrigerator !== undefined)) {
    const name = "no-refrigerator-for-cut-produce";
    return cut.flatMap((part) =>
      unless(subject.plan.cautions.includes(name), "cautions", part.id, "no caution", name),
    );
  }
  return cut.flatMap((part) =>
    part.stays.flatMap(({ place, placeKind }) =>
      unless(
        placeOf(subject, place).refrigerator !== undefined,
        "cut in the refrigerator",
        part.id,
        placeKind,
        "a place in a refrigerator",
      ),
    ),
  );
};

/** Whether a part may no longer be eaten on a day. Rounding of the sum of stays is forgiven, nothing else. */
export const pastSafe = (subject: Subject, part: PlannedLot, day: number): boolean =>
  isLimited(subject, part) && timeUsed(subject, part, day) > 1 + 1e-9;

/** No cut produce is planned to be eaten once its safe time is over. */
export const safetyLimit = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) =>
    part.eatOn.flatMap(({ day }) =>
      pastSafe(subject, part, day)
        ? unless(
            false,
            "safety limit",
            `${part.id} day ${day}`,
            timeUsed(subject, part, day),
            1,
            "share of the safe time",
          )
        : [],
    ),
  );

/** Nothing lies where it would freeze. */
export const freezing = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) =>
    part.stays.flatMap(({ place }) => {
      const { temperature } = placeOf(subject, place);
      const point = kindOf(subject, part).storage.freezingPoint.value;
      return unless(temperature >= point, "freezing", `${part.id} in ${place}`, temperature, point, "°C");
    }),
  );

/** Cautions every plan with such a haul in such a kitchen must carry. */
export const cautionsGiven = ({ plan, haul, kitchen, catalogue }: Subject): PlanFault[] => {
  const limit = catalogue.safety.get("refrigerator-at-most");
  const most = limit === undefined ? Number.NEGATIVE_INFINITY : exactLimit(limit);
  const noRefrigerator = !kitchen.places.some((place) => place.refrigerator !== undefined);
  const needed = [
    "local",
    ...(!noRefrigerator &&
    haul.lots.some(
      ({ form, commodity }) =>
        form === "cut" || catalogue.commodities.get(commodity)?.controlledAsSold !== undefined,
    )
      ? ["cut-produce"]
      : []),
    ...(kitchen.refrigerators.some(({ temperature }) => temperature > most) ? ["refrigerator-too-warm"] : []),
  ];
  return needed.flatMap((name) =>
    unless(plan.cautions.includes(name), "cautions", "cautions", "not given", name),
  );
};
