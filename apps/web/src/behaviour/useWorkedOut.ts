import { type HandoutContext, handoutContext, type Language } from "@keepwright/handout";
import { useDeferredValue, useMemo } from "react";
import { daysFrom } from "../state/daysAway.js";
import { kitchenOf } from "../state/kitchenOf.js";
import type { PlannerState } from "../state/plannerState.js";
import { lotsToPlan, type ReadLine } from "../state/readLots.js";
import type { PlanAsked } from "./planMessages.js";
import type { Figures } from "./useFigures.js";
import { type PlanState, usePlan } from "./usePlan.js";
import { useToday } from "./useToday.js";

export interface WorkedOut {
  readonly lines: readonly ReadLine[];
  readonly context: HandoutContext;
  readonly plan: PlanState;
  readonly again: () => void;
}

const noLines: readonly ReadLine[] = [];

/** All that needs the catalogue's figures: what was understood and the plan. Undefined while they are on their way. */
export function useWorkedOut(
  state: PlannerState,
  { catalogue, read }: Figures,
  language: Language,
): WorkedOut | undefined {
  const from = useToday();
  const text = useDeferredValue(state.text);
  const lines = useMemo(
    () => (catalogue && read ? read(text, state.corrections, catalogue) : noLines),
    [text, state.corrections, catalogue, read],
  );
  const context = useMemo(
    () => catalogue && handoutContext(catalogue, { units: state.units, language }),
    [state.units, catalogue, language],
  );
  const ask = useMemo(() => askFor(state, lotsToPlan(lines), from), [state, lines, from]);
  const { again, made, problem, working } = usePlan(ask);
  // One and the same while nothing about the plan changes, so that it is not drawn anew at every letter.
  const plan = useMemo(() => ({ made, problem, working }), [made, problem, working]);
  return context && { lines, context, plan, again };
}

function askFor(state: PlannerState, lots: PlanAsked["lots"], from: string): PlanAsked | undefined {
  if (lots.length === 0) return undefined;
  const { people, days, portions, away } = state;
  const daysAway = away.map((day) => daysFrom(from, day)).filter((day) => day >= 0 && day < days);
  const household = { people, portionsPerPersonPerDay: portions, daysAway, days };
  return { lots, kitchen: kitchenOf(state), household, from };
}
