import { addDays, calendarDate } from "@keepwright/quantities";
import { type Finding, PlanError } from "./inputError.js";
import { householdSchema } from "./kitchen.js";
import { type Plan, type PlannedLot, planSchema } from "./plan.js";
import { schemaFindings, shownValue } from "./schemaFindings.js";

/** Furthest that anything in a plan may lie from its first day [d]: a century, far beyond any life. Declared, no source. */
const furthest = 36_500;
const asPrinted = "Give the plan as it was printed.";

function isDate(text: string): boolean {
  try {
    calendarDate(text);
    return true;
  } catch {
    return false;
  }
}

const isWithin = (day: number | null): boolean => day === null || (day >= 0 && day <= furthest);

function spoiltMeals({ from, days }: Plan, { id, eatOn, leftPortions }: PlannedLot): Finding[] {
  const thing = `plan part ${shownValue(id)}`;
  const counts = [leftPortions, ...eatOn.map(({ portions }) => portions)];
  const all = counts.reduce((sum, portions) => sum + portions, 0);
  const amounts = all >= 1 && counts.every((portions) => portions >= 0);
  const wrong = eatOn.find(({ day, date }) => day < 0 || day >= days || date !== addDays(from, day));
  return [
    ...(amounts ? [] : [{ thing, value: `portions ${shownValue(counts)}`, remedy: asPrinted }]),
    ...(wrong
      ? [{ thing, value: `a meal on day ${wrong.day}, ${shownValue(wrong.date)}`, remedy: asPrinted }]
      : []),
  ];
}

function spoiltDays({ id, stays, safeUntil, life, readyOnDay }: PlannedLot): Finding[] {
  const thing = `plan part ${shownValue(id)}`;
  const dates = [
    ...stays.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to])),
    ...(safeUntil === undefined || safeUntil === "past" ? [] : [safeUntil]),
  ];
  const numbers = [life.early, life.middle, life.late, readyOnDay];
  return [
    ...dates
      .filter((date) => !isDate(date))
      .map((date) => ({ thing, value: `${shownValue(date)} is no day of the calendar`, remedy: asPrinted })),
    ...(numbers.every(isWithin)
      ? []
      : [{ thing, value: `life and day of ripeness ${shownValue(numbers)} d`, remedy: asPrinted }]),
  ];
}

function sameIds({ lots }: Plan): Finding[] {
  const twice = lots.filter(({ id }, index) => lots.findIndex((lot) => lot.id === id) !== index);
  return twice.map(({ id }) => ({
    thing: `plan part ${shownValue(id)}`,
    value: "this id is used more than once",
    remedy: asPrinted,
  }));
}

/** What stands in a plan's own figures that no plan can have: a first day that is none, meals of less than nothing, a part of nothing, a life of ten thousand years. */
function spoiltFigures(plan: Plan): Finding[] {
  if (!isDate(plan.from) || !isDate(addDays(plan.from, 2 * furthest)))
    return [{ thing: "plan from", value: shownValue(plan.from), remedy: "Write a day of the calendar." }];
  if (!householdSchema.shape.days.safeParse(plan.days).success)
    return [{ thing: "plan days", value: shownValue(plan.days), remedy: asPrinted }];
  return [...sameIds(plan), ...plan.lots.flatMap((lot) => [...spoiltMeals(plan, lot), ...spoiltDays(lot)])];
}

/** The plan in what may be one. Throws PlanError naming what is wrong with its shape or its own figures; it is not compared with a haul or a kitchen. */
export function planFrom(given: unknown): Plan {
  const parsed = planSchema.safeParse(given);
  if (!parsed.success) throw new PlanError(schemaFindings(given, "plan", parsed.error));
  const spoilt = spoiltFigures(parsed.data);
  if (spoilt.length > 0) throw new PlanError(spoilt);
  return parsed.data;
}
