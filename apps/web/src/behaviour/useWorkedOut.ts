import type { Catalogue } from "@keepwright/catalogue";
import { type HandoutContext, handoutContext, type Language } from "@keepwright/handout";
import { useDeferredValue, useMemo } from "react";
import { kitchenOf } from "../state/kitchenOf.js";
import type { PlannerState } from "../state/plannerState.js";
import { lotsToPlan, type ReadLine, readLines } from "../state/readLots.js";
import type { PlanAsked } from "./planMessages.js";
import { type PlanState, usePlan } from "./usePlan.js";
import { useToday } from "./useToday.js";

/** Portions of fruit and vegetables a person eats a day: WHO's 400 g a day as five portions of 80 g (from memory). */
const portionsPerPersonPerDay = 5;

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
  catalogue: Catalogue | undefined,
  language: Language,
): WorkedOut | undefined {
  const from = useToday();
  const text = useDeferredValue(state.text);
  const lines = useMemo(
    () => (catalogue ? readLines(text, state.corrections, catalogue) : noLines),
    [text, state.corrections, catalogue],
  );
  const context = useMemo(
    () => catalogue && handoutContext(catalogue, { units: state.units, language }),
    [state.units, catalogue, language],
  );
  const ask = useMemo(() => askFor(state, lotsToPlan(lines), from), [state, lines, from]);
  const { again, ...plan } = usePlan(ask);
  return context && { lines, context, plan, again };
}

function askFor(state: PlannerState, lots: PlanAsked["lots"], from: string): PlanAsked | undefined {
  if (lots.length === 0) return undefined;
  const { people, days } = state;
  const household = { people, portionsPerPersonPerDay, daysAway: [], days };
  return { lots, kitchen: kitchenOf(state), household, from };
}
