import { type HandoutContext, handoutContext, type Language } from "@keepwright/handout";
import { useMemo } from "react";
import { daysFrom } from "../state/daysAway.js";
import { kitchenOf } from "../state/kitchenOf.js";
import type { PlannerState } from "../state/plannerState.js";
import type { ReadLine } from "../state/readLots.js";
import { type FirstDay, sinceThen } from "../state/sinceThen.js";
import type { PlanAsked } from "./planMessages.js";
import type { Figures } from "./useFigures.js";
import { type PlanState, usePlan } from "./usePlan.js";
import { problemWords } from "./useProblemWords.js";
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
  const today = useToday();
  const { text } = state;
  const lines = useMemo(
    () => (catalogue && read ? read(text, state.corrections, catalogue, state.meant) : noLines),
    [text, state.corrections, state.meant, catalogue, read],
  );
  const context = useMemo(
    () => catalogue && handoutContext(catalogue, { units: state.units, language }),
    [state.units, catalogue, language],
  );
  const kitchen = useMemo(() => kitchenOf(state), [state.kitchen, state.kitchens]);
  const { people, days, portions, away } = state;
  const { corrections, meant, from, before, missed } = state;
  const began = useMemo(() => {
    const readAlso = (other: string) =>
      catalogue && read ? read(other, corrections, catalogue, meant) : noLines;
    return sinceThen({ from, before, missed, days }, lines, today, readAlso);
  }, [from, before, missed, days, lines, today, corrections, meant, catalogue, read]);
  const ask = useMemo(
    () => askFor({ people, days, portions, away }, kitchen, began),
    [people, days, portions, away, kitchen, began],
  );
  const asked = usePlan(ask);
  const plan = useMemo(() => inWords(asked, context), [asked, context]);
  return useMemo(() => context && { lines, context, plan, again: plan.again }, [lines, context, plan]);
}

/** A plan, or what is wrong with what it was asked for in the language of the page. */
function inWords<Asked extends PlanState>(plan: Asked, context: HandoutContext | undefined): Asked {
  return plan.problem === undefined ? plan : { ...plan, problem: problemWords(plan, context) };
}

type Household = Pick<PlannerState, "people" | "days" | "portions" | "away">;

/** What the planner is asked; nothing where there is nothing to plan. */
export function askFor(
  { people, days, portions, away }: Household,
  kitchen: PlanAsked["kitchen"],
  { lots, from, since }: FirstDay,
): PlanAsked | undefined {
  if (lots.length === 0) return undefined;
  const daysAway = away.map((day) => daysFrom(from, day)).filter((day) => day >= 0 && day < days);
  const household = { people, portionsPerPersonPerDay: portions, daysAway, days };
  return { lots, kitchen, household, from, ...(since && { since }) };
}
