import { calendarDate, daysBetween } from "@keepwright/quantities";
import { type FindingCode, told as toldAs } from "../problem/findingCode.js";
import { HappenedError } from "../problem/inputError.js";
import { bindProblem, type Problem } from "../problem/problem.js";
import { shownValue } from "../problem/schemaFindings.js";
import type { Evaluation } from "../search/evaluate.js";
import { planOf, withoutVainMoves } from "../search/planOf.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { bindHappened } from "./bindHappened.js";
import { type CarriedHaul, carriedHaul } from "./carriedHaul.js";
import type { CarriedOn } from "./carriedOn.js";
import { changesOf, unchanged } from "./changes.js";
import { happenedFrom } from "./checkHappened.js";
import { searchFromPresent } from "./fromPresent.js";
import type { Happened } from "./happened.js";
import { type Past, pastOf } from "./past.js";
import { type Previous, type PreviousRequest, previousFrom } from "./previous.js";
import { type Remaining, remainingParts } from "./remaining.js";
import { withBegunCut } from "./takenAsCut.js";
import { refuseStateOfGone } from "./takenAsGone.js";

/** What is asked: a plan with what it was made for, what happened since, and the day it is now. */
export interface CarryOnRequest extends PreviousRequest {
  /** What may be an account of what happened: see `happenedSchema`. Left out: everything went as the plan said. */
  readonly happened?: unknown;
  /** The day it is now, year-month-day. */
  readonly on: string;
  /** Days to plan for from then on; to the earlier plan's last day when left out. */
  readonly days?: number | undefined;
}

/** Longest time after a plan's first day at which it is carried on [d]: what has lain longer is told anew. */
const longestCarried = 60;

/** Everything that is known once what happened is bound to the earlier plan. */
export interface Carrying {
  readonly previous: Previous;
  readonly happened: Happened;
  readonly bound: ReturnType<typeof withBegunCut>;
  readonly past: Past;
  readonly remaining: readonly Remaining[];
  readonly now: CarriedHaul;
  readonly day: number;
}

/** Whole days from one day to another; undefined where that is no day of the calendar. */
function daysAfter(from: string, on: string): number | undefined {
  try {
    return daysBetween(from, calendarDate(on));
  } catch {
    return undefined;
  }
}

function elapsedDays({ plan }: Previous, on: string): number {
  const thing = "day it is now";
  const day = daysAfter(plan.from, on);
  const refuse = (code: FindingCode, value: string, remedy: string): HappenedError =>
    new HappenedError([
      {
        thing,
        value,
        remedy,
        ...toldAs(code, { on, from: plan.from, days: day ?? 0, most: longestCarried }),
      },
    ]);
  if (day === undefined) {
    const remedy = "Write a day as year-month-day, for example 2026-06-13.";
    throw refuse("today not of the calendar", shownValue(on), remedy);
  }
  if (day < 0) {
    const value = `${on} is before the plan's first day, ${plan.from}`;
    throw refuse("today before the plan", value, `Give a day from ${plan.from} on.`);
  }
  if (day > longestCarried) {
    const value = `${on} is ${day} days after the plan's first day, ${plan.from}`;
    const remedy = `Carry a plan on within ${longestCarried} days; after that, plan what is there anew.`;
    throw refuse("today long after the plan", value, remedy);
  }
  return day;
}

function daysToPlan({ plan }: Previous, day: number, asked: number | undefined): number {
  const days = asked ?? plan.days - day;
  if (days >= 1) return days;
  const value = asked === undefined ? `the earlier plan ended after ${plan.days} days` : shownValue(asked);
  const remedy = "Say how many days to plan for from now on, 1 to 28.";
  const said =
    asked === undefined ? toldAs("plan over", { days: plan.days }) : toldAs("days to plan for", { days });
  throw new HappenedError([{ thing: "days to plan for", value, remedy, ...said }]);
}

/** What is planned from that day on. Throws HappenedError where nothing is left. */
export function carriedProblem({ previous, now, day }: Carrying, request: CarryOnRequest): Problem {
  if (now.haul.lots.length === 0) nothingLeft();
  const { household, seed } = previous.plan;
  return bindProblem({
    haul: now.haul,
    kitchen: request.kitchen,
    household: {
      ...household,
      daysAway: household.daysAway.map((away) => away - day).filter((away) => away >= 0),
      days: daysToPlan(previous, day, request.days),
    },
    from: request.on,
    seed,
    catalogue: request.catalogue,
  });
}

/** What became of a plan until a day. */
export function carrying(request: CarryOnRequest): Carrying {
  const previous = previousFrom(request);
  const happened = happenedFrom(request.happened ?? { version: 1 });
  const day = elapsedDays(previous, request.on);
  const asTold = bindHappened(previous, request.on, happened);
  const remaining = remainingParts(previous, asTold, day);
  refuseStateOfGone(asTold, remaining);
  const bound = withBegunCut(previous, asTold, remaining, day);
  const past = pastOf(previous, bound, day);
  const now = carriedHaul(previous, past, remaining, bound, happened, day);
  return { previous, happened, bound, past, remaining, now, day };
}

const nothingHappened = ({ happened }: Carrying): boolean =>
  happened.lots.length + happened.cameHome.length + happened.vents.length === 0;

function nothingLeft(): never {
  throw new HappenedError([
    {
      thing: "what is left",
      value: "nothing, and nothing came home",
      remedy: "There is nothing to plan: make a new plan when something comes home.",
      ...toldAs("nothing left"),
    },
  ]);
}

/** What is told of a carried-on plan, by how everything is to lie from now on. */
export function told(carrying: Carrying, prepared: Prepared, judged: Evaluation): CarriedOn {
  const evaluation = withoutVainMoves(prepared, judged);
  const plan = planOf(prepared, evaluation);
  return {
    version: 1,
    plan,
    haul: carrying.now.haul,
    elapsed: carrying.day,
    ...changesOf(carrying, prepared, evaluation, plan),
  };
}

/**
 * Carries a plan on from what became of it: each part that is left keeps the state that the simulation gave it by that day unless it was seen otherwise, what was done to it is
 * not done again, every clock runs on, and moving what lies somewhere has a cost, so that nothing is moved without gain. On the plan's own first day, with nothing
 * happened, it is the same plan.
 *
 * Pure and repeatable. Throws PlanError (the plan does not fit its haul or kitchen), HappenedError (what happened is unreadable or cannot have been, or nothing is left),
 * KitchenError or HaulError.
 */
export function carryOn(request: CarryOnRequest): CarriedOn {
  const state = carrying(request);
  const { plan } = state.previous;
  const sameDays = request.days === undefined || request.days === plan.days;
  if (state.day === 0 && sameDays && nothingHappened(state)) return unchanged(state.previous);
  const prepared = prepare(carriedProblem(state, request));
  return told(state, prepared, searchFromPresent(prepared));
}
