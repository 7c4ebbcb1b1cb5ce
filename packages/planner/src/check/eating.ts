import type { Lot } from "../problem/lot.js";
import { eatingHabits } from "../rules/weights.js";
import { type PlanFault, sum, unless } from "./fault.js";
import { kindOf, partsOf, portionsOf, type Subject } from "./subject.js";

const dayNumbers = ({ plan }: Subject): number[] => Array.from({ length: plan.days }, (_, day) => day);

/** Portions a day that finish so many a little before the planned days are over (a declared habit). */
function spread({ household }: Subject, portions: number): number {
  const home = Array.from({ length: household.days }, (_, day) => day).filter(
    (day) => !household.daysAway.includes(day),
  );
  return Math.ceil((eatingHabits.aheadOfEven * portions) / Math.max(1, home.length));
}

const mostOf = ({ household }: Subject): number =>
  Math.max(1, Math.floor(household.people * household.portionsPerPersonPerDay));

/** Portions at the table (seasonings apart) eaten above the pace at which the haul lasts, summed over the planned days. */
export function aheadOfPace(subject: Subject): number {
  const atTable = subject.plan.lots.filter((part) => !kindOf(subject, part).household.seasoning);
  const { people } = subject.household;
  const kept = subject.haul.standing?.pace ?? 0;
  const even = spread(subject, sum(atTable.map(portionsOf)));
  const pace = Math.min(mostOf(subject), Math.max(people, even, kept));
  const meals = atTable.flatMap((part) => part.eatOn);
  const eaten = (day: number) =>
    sum(meals.filter((meal) => meal.day === day).map(({ portions }) => portions));
  return sum(dayNumbers(subject).map((day) => Math.max(0, eaten(day) - pace)));
}

/**
 * Portions at the table (seasonings apart) are within what the household eats: people times portions a person, but one
 * whole portion may always be eaten. Nothing at all is eaten on days away.
 */
export const table = (subject: Subject): PlanFault[] => {
  const { plan, household } = subject;
  const limit = mostOf(subject);
  const eatenOn = (day: number, seasonings: boolean): number =>
    sum(
      plan.lots
        .filter((part) => seasonings || !kindOf(subject, part).household.seasoning)
        .flatMap((part) => part.eatOn.filter((meal) => meal.day === day).map((meal) => meal.portions)),
    );
  return dayNumbers(subject).flatMap((day) =>
    household.daysAway.includes(day)
      ? unless(eatenOn(day, true) === 0, "days away", `day ${day}`, eatenOn(day, true), 0, "portions")
      : unless(
          eatenOn(day, false) <= limit,
          "portions a day",
          `day ${day}`,
          eatenOn(day, false),
          limit,
          "portions",
        ),
  );
};

/** Lots that came home as one: parts of it that an earlier plan had apart are lots of their own now. */
function cameTogether({ haul }: Subject): [Lot, ...Lot[]][] {
  const together = new Map<string, [Lot, ...Lot[]]>();
  for (const lot of haul.lots) {
    const name = lot.carried ? `from ${lot.carried.origin}` : `new ${lot.id}`;
    const others = together.get(name);
    if (others) others.push(lot);
    else together.set(name, [lot]);
  }
  return [...together.values()];
}

/** No day brings more of one thing than people like to eat of it (a declared preference); seasonings are spread like the haul. */
export const sameThing = (subject: Subject): PlanFault[] =>
  cameTogether(subject).flatMap((together) => {
    const [lot] = together;
    const { seasoning } = kindOf(subject, lot).household;
    const { people } = subject.household;
    const parts = together.flatMap((one) => partsOf(subject, one));
    const evenly = lot.carried?.mostADay ?? Math.max(1, spread(subject, sum(parts.map(portionsOf))));
    const limit = seasoning
      ? Math.min(people * eatingHabits.portionsOfOneSeasoning, evenly)
      : people * eatingHabits.portionsOfOneLot;
    const meals = parts.flatMap((part) => part.eatOn);
    return dayNumbers(subject).flatMap((day) => {
      const eaten = sum(meals.filter((meal) => meal.day === day).map((meal) => meal.portions));
      return unless(eaten <= limit, "same thing a day", `${lot.id} day ${day}`, eaten, limit, "portions");
    });
  });

/** What is eaten is eaten on a planned day, in order of days, and not before the plan says it is ready. */
export const readyToEat = ({ plan }: Subject): PlanFault[] =>
  plan.lots.flatMap((part) =>
    part.eatOn.flatMap(({ day }, index) => {
      const what = `${part.id} day ${day}`;
      const ready = part.readyOnDay ?? Number.POSITIVE_INFINITY;
      const before = part.eatOn[index - 1]?.day ?? -1;
      return [
        ...unless(day >= 0 && day < plan.days, "ready to eat", what, day, `0…${plan.days - 1}`, "d"),
        ...unless(day > before, "ready to eat", what, day, `after ${before}`, "d"),
        ...unless(day >= ready, "ready to eat", what, day, part.readyOnDay ?? "never ready", "d"),
      ];
    }),
  );
