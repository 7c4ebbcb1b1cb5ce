import { type BesideDraws, besideDraws } from "../draws/besideDraws.js";
import { mealsOfEvaluation } from "../draws/meals.js";
import { choiceOfPlan } from "../explain/choiceOfPlan.js";
import { objectiveLess } from "../problem/objective.js";
import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest } from "../problem/problem.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { searchPlan } from "../search/searchPlan.js";
import { type BoundArrangement, bindArrangement } from "./bindArrangement.js";
import { arrangementFrom } from "./checkArrangement.js";
import { completed } from "./completed.js";
import { worstConflicts } from "./conflicts.js";
import { arrangementFindings } from "./findings.js";
import type { Judgement, LotBeside } from "./judgement.js";
import { lotBeside, type Side, sideOf } from "./lotBeside.js";
import { type FoundMove, type OneMove, oneMove } from "./oneMove.js";

/** A haul and a kitchen as for a plan, and the plan to set arrangements beside: searched for when it is not given. */
export interface JudgedBeside extends PlanRequest {
  readonly plan?: Plan;
}

/** What is asked: a haul and a kitchen as for a plan, and how things lie. */
export interface JudgeRequest extends JudgedBeside {
  /** What may be an arrangement: see `arrangementSchema`. */
  readonly arrangement: unknown;
}

/** An arrangement judged; the one move that would help it most, and what is thrown away in draws, are worked out when they are asked for. */
export interface Judged {
  readonly judgement: Judgement;
  readonly oneMove: () => OneMove | undefined;
  /** See `besideDraws`. */
  readonly draws: (count: number) => BesideDraws;
}

function wastedIn(lots: readonly LotBeside[], side: "here" | "planned") {
  const sum = (figure: "grams" | "portions") =>
    lots.reduce((total, lot) => total + lot[side].wasted[figure], 0);
  return { grams: sum("grams"), portions: sum("portions") };
}

const notMentioned = (
  { problem }: Prepared,
  { fixed, vents, ventsSaid }: BoundArrangement,
): Judgement["notMentioned"] => ({
  lots: problem.lots.filter(({ index }) => !fixed.has(index)).map(({ lot }) => lot.id),
  vents: problem.vents.flatMap((place, index) =>
    ventsSaid[index] ? [] : [{ place: problem.places[place]!.place.id, setting: vents[index]! }],
  ),
});

function judgedBeside(prepared: Prepared, plan: Side, arrangement: BoundArrangement): Judged {
  const { problem } = prepared;
  const laid = completed(prepared, arrangement);
  const yours = sideOf(prepared, laid);
  const lots = problem.lots.map((lot) => lotBeside(lot, yours, plan, arrangement.fixed.has(lot.index)));
  const judgement: Judgement = {
    version: 1,
    yours: yours.plan,
    plan: plan.plan,
    notMentioned: notMentioned(prepared, arrangement),
    // Of what was said: moves that never come are no longer in what is judged.
    findings: arrangementFindings(problem, laid),
    wasted: { yours: wastedIn(lots, "here"), plan: wastedIn(lots, "planned") },
    difference: objectiveLess(yours.plan.objective, plan.plan.objective),
    lots,
    conflicts: worstConflicts(prepared, yours, plan, lots),
  };
  let found: FoundMove | undefined | "not looked for" = "not looked for";
  const move = (): FoundMove | undefined => {
    if (found === "not looked for") found = oneMove(prepared, yours.evaluation, plan.evaluation);
    return found;
  };
  const meals = (evaluation: Evaluation) => mealsOfEvaluation(problem, evaluation);
  return {
    judgement,
    oneMove: () => move()?.move,
    draws: (count) => {
      const moved = move();
      const sides = { yours: meals(yours.evaluation), plan: meals(plan.evaluation) };
      return besideDraws(problem, { ...sides, moved: moved && meals(moved.after) }, count);
    },
  };
}

/**
 * Judges one arrangement after another of the same haul and kitchen: the plan that all are set beside is made once, when the first of them is
 * judged. Throws KitchenError, HaulError, HouseholdError, or RangeError for a date that is none or a plan for something else; what it returns throws
 * ArrangementError.
 */
export function judging(asked: JudgedBeside): (arrangement: unknown) => Judged {
  const problem = bindProblem(asked);
  let made: { readonly prepared: Prepared; readonly plan: Side } | undefined;
  const make = () => {
    const prepared = prepare(problem);
    const plan = asked.plan
      ? evaluatePrepared(prepared, choiceOfPlan(problem, asked.plan))
      : searchPlan(prepared);
    return { prepared, plan: sideOf(prepared, plan) };
  };
  return (said) => {
    const arrangement = bindArrangement(problem, arrangementFrom(said));
    made ??= make();
    return judgedBeside(made.prepared, made.plan, arrangement);
  };
}

/**
 * Judges how things lie now beside the plan: the same coupled simulation, exact eating days and objective for both, the days each lot lasts here and in the
 * plan, and the worst conflicts with what is to blame.
 *
 * Lots the arrangement does not mention lie as a plan would have them beside what it says; vents it does not mention are taken as nobody has touched
 * them. Too little room, unsafe places and unsuitable wraps are findings, not errors. Pure and repeatable. Throws ArrangementError, KitchenError, HaulError,
 * HouseholdError, or RangeError for a date that is none.
 */
export const judgeArrangement = (request: JudgeRequest): Judgement =>
  judging(request)(request.arrangement).judgement;
