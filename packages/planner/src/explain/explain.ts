import { namedLots } from "../arrangement/namedLots.js";
import { HaulError } from "../problem/inputError.js";
import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest, type Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { Judge } from "../search/judge.js";
import { partIds } from "../search/plannedLots.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { alternative, type Planned } from "./alternative.js";
import { choiceOfPlan } from "./choiceOfPlan.js";
import { courseOf } from "./course.js";
import { fateOf } from "./fate.js";
import { LeavingOut } from "./leavingOut.js";
import type { Alternative, LotReason } from "./reason.js";
import { ruledOut } from "./ruledOut.js";
import { otherPlaces, otherWraps } from "./ways.js";

/** A plan simulated again, ready for questions. */
interface Questioned {
  readonly prepared: Prepared;
  readonly judge: Judge;
  readonly now: Evaluation;
  readonly ids: readonly string[];
  readonly trial: LeavingOut;
}

/** How far a question goes: where nobody asks about one lot by name, only the nearest rivals are simulated, and neighbours looked at in the planned place. */
interface Depth {
  readonly places: number;
  readonly wraps: number;
  readonly neighbours: boolean;
}
const nearest: Depth = { places: 3, wraps: 2, neighbours: false };
const everything: Depth = {
  places: Number.POSITIVE_INFINITY,
  wraps: Number.POSITIVE_INFINITY,
  neighbours: true,
};

function question(problem: Problem, plan: Plan): Questioned {
  const prepared = prepare(problem);
  const now = evaluatePrepared(prepared, choiceOfPlan(problem, plan));
  return {
    prepared,
    judge: new Judge(prepared),
    now,
    ids: partIds(problem, now.choice.parts),
    trial: new LeavingOut(prepared, now.choice),
  };
}

/** Ways simulated, the least bad first; the least bad with its course, to be drawn beside the planned one. */
function simulated(
  { prepared }: Questioned,
  planned: Planned,
  ways: readonly Programme[],
  neighbours: boolean,
): Alternative[] {
  const found = ways.map((way) => alternative(prepared, planned, way, { course: true, neighbours }));
  return found
    .sort((a, b) => a.worseBy.value - b.worseBy.value)
    .map(({ course, ...rest }, index) => (index === 0 && course ? { ...rest, course } : rest));
}

function reasonFor(questioned: Questioned, index: number, depth: Depth): LotReason {
  const { now, ids, prepared, judge, trial } = questioned;
  const part = now.choice.parts[index]!;
  const lot = prepared.problem.lots[part.lot]!;
  const outcome = now.outcomes[index]!;
  const here = fateOf(prepared, part, outcome);
  const planned = { now, part: index, here };
  const places = otherPlaces(prepared, judge, now, index).slice(0, depth.places);
  const wraps = otherWraps(prepared, judge, now, index).slice(0, depth.wraps);
  return {
    part: ids[index]!,
    lot: lot.lot.id,
    commodity: lot.commodity.id,
    here: {
      ...here,
      course: courseOf(lot.produce, outcome),
      neighbourhood: trial.neighbourhood([index]),
    },
    elsewhere: simulated(questioned, planned, places, depth.neighbours),
    wraps: simulated(questioned, planned, wraps, false),
    ruledOut: ruledOut(prepared.problem, lot),
  };
}

/** Why one part lies where it does, beside every other place and wrap. Throws RangeError when the plan has no part of that id. */
export function explainLot(problem: Problem, plan: Plan, partId: string): LotReason {
  const questioned = question(problem, plan);
  const index = questioned.ids.indexOf(partId);
  if (index < 0) {
    throw new RangeError(`The plan has no part “${partId}”. Its parts are: ${questioned.ids.join(", ")}.`);
  }
  return reasonFor(questioned, index, everything);
}

/** A plan with the haul and the kitchen it was made for. */
export type ExplainRequest = Omit<PlanRequest, "from"> & { readonly plan: Plan };

const bound = ({ plan, ...rest }: ExplainRequest): Problem => bindProblem({ ...rest, from: plan.from });

/** Why every part lies where it does, beside the nearest rivals, in the plan's order. */
export function explainPlan(request: ExplainRequest): LotReason[] {
  const questioned = question(bound(request), request.plan);
  return questioned.ids.map((_, index) => reasonFor(questioned, index, nearest));
}

/**
 * Why the parts of one lot lie where they do, beside every other place and wrap. The lot is named as in an arrangement: by its id, by what was
 * typed for it, or by its kind. Throws HaulError where it is not in the haul or may be several.
 */
export function explainNamed(request: ExplainRequest & { readonly lot: string }): LotReason[] {
  const { lot: name, ...rest } = request;
  const problem = bound(rest);
  const named = namedLots(problem, name, "lot");
  if (!named.ok) throw new HaulError([named.problem]);
  const questioned = question(problem, request.plan);
  return questioned.ids.flatMap((_, index) =>
    named.lots.some((lot) => lot.index === questioned.now.choice.parts[index]!.lot)
      ? [reasonFor(questioned, index, everything)]
      : [],
  );
}
