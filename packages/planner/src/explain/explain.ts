import { judgeChange, type LotOutcome } from "@keepwright/physics";
import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest, type Problem } from "../problem/problem.js";
import type { Part, Programme } from "../problem/programme.js";
import { lifeLeft } from "../rules/lifeLeft.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { safeDaysLeft } from "../rules/safeTime.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { Judge } from "../search/judge.js";
import { longestNamed, partIds, toldEnding, toldLife } from "../search/plannedLots.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { choiceOfPlan } from "./choiceOfPlan.js";
import type { Alternative, Blame, Fate, LotReason } from "./reason.js";

/** A plan simulated again, ready for questions. */
interface Questioned {
  readonly prepared: Prepared;
  readonly judge: Judge;
  readonly now: Evaluation;
  readonly ids: readonly string[];
  /** Life of every part without each other part: rows the part left out. */
  readonly without: (part: number) => ReadonlyMap<number, number>;
}

/** Days lost to a neighbour below which it is not worth naming: this share of the life. */
const worthNaming = 0.02;

function question(problem: Problem, plan: Plan): Questioned {
  const prepared = prepare(problem);
  const now = evaluatePrepared(prepared, choiceOfPlan(problem, plan));
  const known = new Map<number, ReadonlyMap<number, number>>();
  const without = (part: number): ReadonlyMap<number, number> => {
    const judged =
      known.get(part) ??
      new Map(judgeChange(now.trajectory, [{ lot: part }]).map(({ lot, outcome }) => [lot, outcome.endDay]));
    known.set(part, judged);
    return judged;
  };
  return { prepared, judge: new Judge(prepared), now, ids: partIds(problem, now.choice.parts), without };
}

function fate({ prepared }: Questioned, part: Part, outcome: LotOutcome): Fate {
  const { places } = prepared.problem;
  const { stays } = part.programme;
  const last = stays.at(-1)!;
  const { place } = places[last.place]!;
  const told = {
    range: lifeLeft(
      prepared.problem.lots[part.lot]!,
      { endDay: Math.min(outcome.endDay, longestNamed) },
      prepared.spread(part.lot, part.programme),
    ),
    safeDays: safeDaysLeft(
      prepared.problem,
      prepared.problem.lots[part.lot]!,
      part.programme,
      outcome.stayStarts,
    ),
  };
  return {
    place: place.id,
    placeKind: place.kind,
    wrap: last.wrap,
    ...(stays.length > 1 && { ripensIn: places[stays[0]!.place]!.place.id }),
    life: toldLife(told).life,
    endedBy: toldEnding(told, outcome.endedBy),
    readyOnDay: Number.isFinite(outcome.ripeDay) ? firstReadyDay(outcome.ripeDay) : null,
  };
}

function alternative(questioned: Questioned, index: number, programme: Programme): Alternative {
  const { now, judge, prepared } = questioned;
  const to: Part = { ...now.choice.parts[index]!, programme };
  const { judged, cost, overflow } = judge.consider(now, [{ part: index, like: index, to }]);
  const outcome =
    judged.find(({ lot }) => lot === index)?.outcome ??
    prepared.solos.outcome(prepared.problem.lots[to.lot]!, programme);
  return {
    ...fate(questioned, to, outcome),
    worseBy: { value: cost, unit: "g" },
    tooFull: overflow > 0,
  };
}

/** For every place but those the part uses at last: its best way of ending there. */
function alternatives(questioned: Questioned, index: number): Alternative[] {
  const { now, prepared } = questioned;
  const part = now.choice.parts[index]!;
  const own = part.programme.stays.at(-1)!.place;
  const best = new Map<number, Programme>();
  for (const { programme } of prepared.options(part.lot)) {
    const place = programme.stays.at(-1)!.place;
    if (place !== own && !best.has(place)) best.set(place, programme);
  }
  return [...best.values()]
    .map((programme) => alternative(questioned, index, programme))
    .sort((a, b) => a.worseBy.value - b.worseBy.value);
}

function blame({ now, ids, without, prepared }: Questioned, index: number): Blame[] {
  const life = now.outcomes[index]!.endDay;
  const lost = now.choice.parts.flatMap((part, other) => {
    const longer = other === index ? undefined : without(other).get(index);
    if (longer === undefined || longer - life < worthNaming * life) return [];
    return [
      { part, other, longer: Math.min(longer, longestNamed), days: Math.min(longer, longestNamed) - life },
    ];
  });
  const all = lost.reduce((sum, { days }) => sum + days, 0);
  return lost
    .sort((a, b) => b.days - a.days)
    .map(({ part, other, longer, days }) => ({
      part: ids[other]!,
      commodity: prepared.problem.lots[part.lot]!.commodity.id,
      lifeWithout: { value: longer, unit: "d" },
      daysLost: { value: days, unit: "d" },
      share: days / all,
    }));
}

function reasonFor(questioned: Questioned, index: number): LotReason {
  const { now, ids, prepared } = questioned;
  const part = now.choice.parts[index]!;
  return {
    part: ids[index]!,
    commodity: prepared.problem.lots[part.lot]!.commodity.id,
    here: fate(questioned, part, now.outcomes[index]!),
    elsewhere: alternatives(questioned, index),
    blame: blame(questioned, index),
  };
}

/** Why one part lies where it does. Throws RangeError when the plan has no part of that id. */
export function explainLot(problem: Problem, plan: Plan, partId: string): LotReason {
  const questioned = question(problem, plan);
  const index = questioned.ids.indexOf(partId);
  if (index < 0) {
    throw new RangeError(`The plan has no part “${partId}”. Its parts are: ${questioned.ids.join(", ")}.`);
  }
  return reasonFor(questioned, index);
}

/** Why every part lies where it does, in the plan's order. */
export function explainPlan(request: Omit<PlanRequest, "from"> & { readonly plan: Plan }): LotReason[] {
  const { plan, ...rest } = request;
  const questioned = question(bindProblem({ ...rest, from: plan.from }), plan);
  return questioned.ids.map((_, index) => reasonFor(questioned, index));
}
