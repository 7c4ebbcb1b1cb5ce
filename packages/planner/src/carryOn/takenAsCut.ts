import { addDays } from "@keepwright/quantities";
import { hasSafeTime } from "../rules/underControl.js";
import type { BoundHappened, BoundHappening } from "./bindHappened.js";
import type { CarriedOn } from "./carriedOn.js";
import type { Previous } from "./previous.js";
import type { Remaining } from "./remaining.js";

/** A part of which something had to be taken for granted once it was cut: its day, or where it lay since. */
export interface WhyTakenAsCut {
  readonly part: number;
  readonly because: CarriedOn["takenAsCut"][number]["because"];
  /** Id of the place out of the refrigerator where the plan had it. */
  readonly place?: string;
}

/** A place of the kitchen that is cold, the shelves before any other; undefined where there is none. */
function coldPlace({ problem }: Previous): number | undefined {
  const cold = problem.places.filter(({ cold }) => cold);
  return (cold.find(({ place }) => place.kind === "refrigerator shelf") ?? cold[0])?.index;
}

/** The day it was begun [d from the plan's first]: of its first planned meal where it went as planned, else the first day of all, since nobody says. */
function begunDay(
  { plan }: Previous,
  { happenings, followed }: BoundHappened,
  part: number,
  day: number,
): number {
  const told = happenings.some(
    ({ parts, said }) => parts.includes(part) && (said.eaten !== undefined || said.left !== undefined),
  );
  const first = plan.lots[part]!.eatOn.find((meal) => meal.day < day)?.day;
  return told || !followed ? 0 : (first ?? 0);
}

/** Where a part lies on a day by its plan. */
const placeOn = ({ plan }: Previous, part: number, day: number): string =>
  (plan.lots[part]!.stays.findLast(({ fromDay }) => fromDay <= day) ?? plan.lots[part]!.stays[0]!).place;

function cutOf(previous: Previous, bound: BoundHappened, part: number, day: number): BoundHappening {
  const { plan, problem } = previous;
  const cutDay = begunDay(previous, bound, part, day);
  const cut = addDays(plan.from, cutDay);
  const said = bound.happenings.some(({ parts, place }) => parts.includes(part) && place !== undefined);
  const lies = problem.places.find(({ place }) => place.id === placeOn(previous, part, cutDay));
  const place = said || lies?.cold ? undefined : coldPlace(previous);
  return {
    said: { lot: plan.lots[part]!.id, cut, done: [] },
    thing: plan.lots[part]!.id,
    parts: [part],
    cutDay,
    ...(place !== undefined && { place, sinceDay: cutDay }),
  };
}

/** Why a part that is cut since a day that is told may have lain out of the refrigerator: nobody says where it lay, and the plan had it in the warm. */
function lyingWarm(
  previous: Previous,
  { happenings }: BoundHappened,
  part: number,
  day: number,
): WhyTakenAsCut | undefined {
  const of = happenings.filter(({ parts }) => parts.includes(part));
  const cut = of.findLast(({ cutDay }) => cutDay !== undefined);
  const lot = previous.problem.lots[previous.choice.parts[part]!.lot]!;
  if (!cut || cut.cutUndated || hasSafeTime(lot)) return undefined;
  const cutDay = cut.cutDay!;
  const told = ({ place, sinceDay, said }: BoundHappening) =>
    (place !== undefined && sinceDay !== undefined && sinceDay <= cutDay) || said.hoursOut !== undefined;
  if (of.some(told)) return undefined;
  const { stays } = previous.plan.lots[part]!;
  const lay = stays.filter(({ fromDay }, index) => {
    const until = stays[index + 1]?.fromDay ?? Number.POSITIVE_INFINITY;
    return fromDay <= day && until > cutDay;
  });
  const warm = lay.find(({ place: id }) =>
    previous.problem.places.some(({ place, cold }) => !cold && place.id === id),
  );
  if (!warm) return undefined;
  const place = warm.place;
  if (cutDay < day) return { part, because: "lay warm", place };
  return of.some((one) => one.place !== undefined) ? undefined : { part, because: "cut today", place };
}

/**
 * What happened, with what was taken as cut on a day that nobody told: what is said to be cut without one, on the plan's first; and the last piece of every melon that was begun taken as cut, unless the day of it is told: nobody can begin a melon without cutting it, and its safe time
 * runs from then. The plan said to put it in the refrigerator at once, and what is not said went as the plan said.
 */
export function withBegunCut(
  previous: Previous,
  bound: BoundHappened,
  remaining: readonly Remaining[],
  day: number,
): BoundHappened & { readonly takenAsCut: readonly WhyTakenAsCut[] } {
  const begun = previous.choice.parts.flatMap(({ lot: index }, part) => {
    const lot = previous.problem.lots[index]!;
    const { portions } = remaining[part]!;
    const told = bound.happenings.some(({ parts, cutDay }) => parts.includes(part) && cutDay !== undefined);
    const melon = lot.commodity.organ === "melon" && !lot.form.cut && !told;
    return melon && portions > 0 && portions < lot.splitUnit ? [part] : [];
  });
  const { parts } = previous.choice;
  // What is said to be cut without a day, unless another line tells one behind it.
  const undated = parts.flatMap((_, part) =>
    bound.happenings.findLast(({ parts, cutDay }) => parts.includes(part) && cutDay !== undefined)?.cutUndated
      ? [part]
      : [],
  );
  const warm = parts.flatMap((_, part) => {
    const why = remaining[part]!.portions > 0 ? lyingWarm(previous, bound, part, day) : undefined;
    return why ? [why] : [];
  });
  const cuts = begun.map((part) => cutOf(previous, bound, part, day));
  return {
    ...bound,
    happenings: [...bound.happenings, ...cuts],
    takenAsCut: [
      ...begun.map((part) => ({ part, because: "begun" as const })),
      ...undated.map((part) => ({ part, because: "day not told" as const })),
      ...warm,
    ],
  };
}
