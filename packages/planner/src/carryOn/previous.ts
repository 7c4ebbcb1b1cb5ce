import type { Catalogue } from "@keepwright/catalogue";
import { choiceOfPlan } from "../explain/choiceOfPlan.js";
import { haulFrom } from "../problem/checkHaul.js";
import { told } from "../problem/findingCode.js";
import { type Finding, PlanError } from "../problem/inputError.js";
import type { Haul } from "../problem/lot.js";
import type { Plan } from "../problem/plan.js";
import { planFrom } from "../problem/planFrom.js";
import { bindProblem, type Problem } from "../problem/problem.js";
import type { Choice } from "../problem/programme.js";
import { shownValue } from "../problem/schemaFindings.js";

/** The plan that is carried on, with what it was made for. */
export interface PreviousRequest {
  /** What may be a plan: see `planSchema`. */
  readonly plan: unknown;
  readonly haul: unknown;
  readonly kitchen: unknown;
  readonly catalogue: Catalogue;
}

/** The same, checked and bound. */
export interface Previous {
  readonly plan: Plan;
  readonly haul: Haul;
  readonly problem: Problem;
  readonly choice: Choice;
}

/** A plan that was made for something else. */
const notFor = (thing: string, value: string, of: Pick<Finding, "told"> = {}): Finding => ({
  thing,
  value,
  remedy: "Give the plan with the haul and the kitchen it was made for.",
  ...of,
});

function kitchenFindings(plan: Plan, { kitchen }: Problem): Finding[] {
  if (plan.kitchen === kitchen.name) return [];
  const value = `made for the kitchen ${shownValue(plan.kitchen)}, and this is ${shownValue(kitchen.name)}`;
  const names = { made: shownValue(plan.kitchen), here: shownValue(kitchen.name) };
  return [notFor("plan", value, told("plan of another kitchen", names))];
}

/** Grams that rounding in a file may leave. */
const roundingGrams = 0.5;

function lotFindings(plan: Plan, { lots }: Problem): Finding[] {
  return lots.flatMap(({ lot, portions }): Finding[] => {
    const parts = plan.lots.filter((part) => part.lot === lot.id);
    const thing = `plan lot ${shownValue(lot.id)}`;
    if (parts.length === 0)
      return [
        notFor(thing, "it is in the haul and not in the plan", told("plan without lot", { id: lot.id })),
      ];
    const grams = parts.reduce((sum, part) => sum + part.grams, 0);
    const counted = parts
      .flatMap((part) => [part.leftPortions, ...part.eatOn.map((meal) => meal.portions)])
      .reduce((sum, number) => sum + number, 0);
    const kinds = parts.filter(({ commodity }) => commodity !== lot.commodity);
    return [
      ...(Math.abs(grams - lot.grams) > roundingGrams
        ? [
            notFor(
              thing,
              `${grams} g in the plan, ${lot.grams} g in the haul`,
              told("plan of other weight", { id: lot.id, planned: grams, there: lot.grams }),
            ),
          ]
        : []),
      ...(counted !== portions
        ? [
            notFor(
              thing,
              `${counted} portions in the plan, ${portions} in the haul`,
              told("plan of other portions", { id: lot.id, planned: counted, there: portions }),
            ),
          ]
        : []),
      ...kinds.map(({ commodity }) =>
        notFor(
          thing,
          `${shownValue(commodity)} in the plan, ${shownValue(lot.commodity)} in the haul`,
          told("plan of another kind", { id: lot.id, planned: commodity, there: lot.commodity }),
        ),
      ),
    ];
  });
}

function choiceFrom(problem: Problem, plan: Plan): Choice {
  try {
    return choiceOfPlan(problem, plan);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new PlanError([notFor("plan", error.message.replace(/\.? Give .*$/, ""))]);
  }
}

/**
 * The plan that is carried on, bound to its haul and kitchen. Throws PlanError naming what does not fit, KitchenError or HaulError.
 */
export function previousFrom({ plan: given, haul, kitchen, catalogue }: PreviousRequest): Previous {
  const plan = planFrom(given);
  const checked = haulFrom(haul, catalogue);
  const problem = bindProblem({
    haul: checked,
    kitchen,
    household: { ...plan.household, days: plan.days },
    from: plan.from,
    seed: plan.seed,
    catalogue,
  });
  const findings = [...kitchenFindings(plan, problem), ...lotFindings(plan, problem)];
  if (findings.length > 0) throw new PlanError(findings);
  return { plan, haul: checked, problem, choice: choiceFrom(problem, plan) };
}
