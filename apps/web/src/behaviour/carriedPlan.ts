import {
  type CarriedOn,
  type CarryOnRequest,
  carryOn,
  type Happened,
  HappenedError,
  type Plan,
} from "@keepwright/planner";
import { daysFrom } from "../state/daysAway.js";
import type { LotLines } from "../state/lotLines.js";
import type { DayOfLot, SinceThen } from "../state/sinceThen.js";
import type { PlanAsked } from "./planMessages.js";
import { plannerRequest } from "./plannerRequest.js";

/** A plan carried on: an ordinary plan for what is left, what it answers, and the plan that it comes from. */
export interface CarriedPlan {
  readonly plan: Plan;
  readonly asked: PlanAsked;
  readonly past: Plan;
}

const has = (days: readonly DayOfLot[], lot: string, date: string): boolean =>
  days.some((each) => each.lot === lot && each.date === date);

type Part = Plan["lots"][number];

/** Where a part lies that was not moved each time it was to be; nothing where it lies as planned. */
function stayed(part: Part, { on, unmoved }: SinceThen): Happened["lots"][number][] {
  const due = part.stays.filter(({ from }, index) => index === 0 || from <= on);
  const made = due.filter(({ from }, index) => index === 0 || !has(unmoved, part.id, from));
  const lies = made.at(-1);
  return lies && lies !== due.at(-1) ? [{ lot: part.id, done: [], place: lies.place, wrap: lies.wrap }] : [];
}

/** What of a lot went otherwise than planned; nothing where all went as planned. */
function otherwise(past: Plan, lot: string, since: SinceThen): Happened["lots"][number][] {
  const { on, uneaten } = since;
  const parts = past.lots.filter((part) => part.lot === lot);
  const moves = parts.flatMap((part) => stayed(part, since));
  const meals = parts.flatMap(({ eatOn }) => eatOn).filter(({ day }) => day < daysFrom(past.from, on));
  const missed = meals.filter(({ date }) => has(uneaten, lot, date));
  const eaten = meals.filter((meal) => !missed.includes(meal)).reduce((sum, meal) => sum + meal.portions, 0);
  if (missed.length === 0) return moves;
  return [{ lot, done: [], eaten: eaten > 0 ? { portions: eaten } : "none" }, ...moves];
}

function linesOf(haul: readonly PlanAsked["lots"][number][], cameHome: SinceThen["cameHome"]): LotLines {
  let fresh = 0;
  const met = new Map<string, number>();
  return Object.fromEntries(
    haul.map(({ id, carried }) => {
      if (!carried) return [id, { line: cameHome[fresh++]?.id ?? id, more: "" }] as const;
      const count = (met.get(carried.origin) ?? 0) + 1;
      met.set(carried.origin, count);
      return [id, { line: carried.origin, more: count === 1 ? "" : `.${count}` }] as const;
    }),
  );
}

/** Carries the plan of the first day on to the day it is now, in one way or another; nothing where nothing is left of it. */
export function carriedPlan(
  asked: PlanAsked,
  past: Plan,
  since: SinceThen,
  carry: (request: CarryOnRequest) => CarriedOn = carryOn,
): CarriedPlan | undefined {
  const { haul, kitchen, catalogue } = plannerRequest(asked);
  const lots = [...new Set(past.lots.map(({ lot }) => lot))];
  const happened = {
    version: 1,
    lots: lots.flatMap((lot) => otherwise(past, lot, since)),
    cameHome: since.cameHome.map(({ id: _, ...lot }) => lot),
  };
  try {
    const told = carry({ plan: past, haul, kitchen, catalogue, happened, on: since.on });
    const { plan } = told;
    const { lots: left, standing } = told.haul;
    return {
      plan,
      past,
      asked: {
        lots: left,
        kitchen: asked.kitchen,
        household: { ...plan.household, days: plan.days },
        from: plan.from,
        ...(standing && { standing }),
        lines: linesOf(left, since.cameHome),
      },
    };
  } catch (error) {
    if (error instanceof HappenedError && error.findings.every(({ thing }) => thing === "what is left"))
      return undefined;
    throw error;
  }
}
