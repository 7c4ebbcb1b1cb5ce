import { addDays } from "@keepwright/quantities";
import type { BoundHappened, BoundHappening } from "./bindHappened.js";
import type { Previous } from "./previous.js";
import type { Remaining } from "./remaining.js";

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

/**
 * What happened, with what was taken as cut on a day that nobody told: what is said to be cut without one, on the plan's first; and the last piece of every melon that was begun taken as cut, unless the day of it is told: nobody can begin a melon without cutting it, and its safe time
 * runs from then. The plan said to put it in the refrigerator at once, and what is not said went as the plan said.
 */
export function withBegunCut(
  previous: Previous,
  bound: BoundHappened,
  remaining: readonly Remaining[],
  day: number,
): BoundHappened & { readonly takenAsCut: readonly number[] } {
  const takenAsCut = previous.choice.parts.flatMap(({ lot: index }, part) => {
    const lot = previous.problem.lots[index]!;
    const { portions } = remaining[part]!;
    const told = bound.happenings.some(({ parts, cutDay }) => parts.includes(part) && cutDay !== undefined);
    const melon = lot.commodity.organ === "melon" && !lot.form.cut && !told;
    return melon && portions > 0 && portions < lot.splitUnit ? [part] : [];
  });
  // What is said to be cut without a day, unless another line tells one behind it.
  const undated = previous.choice.parts.flatMap((_, part) =>
    bound.happenings.findLast(({ parts, cutDay }) => parts.includes(part) && cutDay !== undefined)?.cutUndated
      ? [part]
      : [],
  );
  const cuts = takenAsCut.map((part) => cutOf(previous, bound, part, day));
  return { ...bound, happenings: [...bound.happenings, ...cuts], takenAsCut: [...takenAsCut, ...undated] };
}
