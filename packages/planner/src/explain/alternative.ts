import { objectiveLess } from "../problem/objective.js";
import type { Programme } from "../problem/programme.js";
import { programmeEffort } from "../rules/effort.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { withProgramme } from "../search/moves.js";
import type { Prepared } from "../search/prepare.js";
import { courseOf } from "./course.js";
import { eatingEffects } from "./eatingEffects.js";
import { fateOf } from "./fate.js";
import { LeavingOut } from "./leavingOut.js";
import { giversTo, ownCost, partsOf } from "./ownCost.js";
import type { Alternative, AlternativeGround, Fate } from "./reason.js";
import { worthTelling } from "./worthTelling.js";

/** The plan as simulated, and one part of it with what becomes of it. */
export interface Planned {
  readonly now: Evaluation;
  readonly part: number;
  readonly here: Fate;
}

/** How much is to be worked out of an alternative. */
export interface Detail {
  readonly course: boolean;
  readonly neighbours: boolean;
}

/** Middle life of a lot as a plan tells it [d], of one in parts the mean by portions. */
function toldLifeOf(prepared: Prepared, evaluation: Evaluation, lot: number): number {
  const { choice, outcomes } = evaluation;
  const parts = partsOf(evaluation, lot);
  const portions = (part: number): number => choice.parts[part]!.portions;
  const all = parts.reduce((sum, part) => sum + portions(part), 0);
  const life = (part: number): number =>
    fateOf(prepared, choice.parts[part]!, outcomes[part]!).life.middle * portions(part);
  return parts.reduce((sum, part) => sum + life(part), 0) / all;
}

/** Other lots that lose by it, the worst first. */
function harmedBy(
  prepared: Prepared,
  now: Evaluation,
  there: Evaluation,
  own: number,
): Alternative["harmed"] {
  return prepared.problem.lots
    .filter(({ index }) => index !== own)
    .map((lot) => ({ lot, worse: ownCost(there, lot) - ownCost(now, lot) }))
    .filter(({ worse }) => worse >= worthTelling.grams)
    .sort((a, b) => b.worse - a.worse)
    .map(({ lot, worse }) => ({
      lot: lot.lot.id,
      commodity: lot.commodity.id,
      daysLost: {
        value: toldLifeOf(prepared, now, lot.index) - toldLifeOf(prepared, there, lot.index),
        unit: "d" as const,
      },
      worseBy: { value: worse, unit: "g" as const },
    }));
}

/** What of it bears on the choice, in the order of `alternativeGrounds`. `moreToDo`: wrapping, moving and preparing [g]. */
function groundsOf(here: Fate, there: Omit<Alternative, "grounds">, moreToDo: number): AlternativeGround[] {
  const { cost, effects, smellsOf, harmed } = there;
  const life = there.life.middle - here.life.middle;
  const matters = worthTelling.life * here.life.middle;
  const [ready, readyHere] = [there.readyOnDay, here.readyOnDay];
  const holds: readonly (readonly [AlternativeGround, boolean])[] = [
    ["no room", cost.overflow > 0],
    ["not ripe", ready === null && readyHere !== null],
    ["ready later", ready !== null && readyHere !== null && ready > readyHere],
    ["lasts less", life < -matters],
    ["eating spoilt", effects.length > 0],
    ["smell", smellsOf.length > 0],
    ["harms others", harmed.length > 0],
    ["lasts longer", life > matters],
    ["more to do", moreToDo >= worthTelling.grams],
    ["hardly matters", Math.abs(cost.total) < worthTelling.grams],
    ["better", cost.total <= -worthTelling.grams],
  ];
  return holds.filter(([, applies]) => applies).map(([ground]) => ground);
}

/**
 * What would become of things if one part lay in another way: the whole kitchen simulated together again with all else as planned, eating days made
 * anew, nothing estimated.
 */
export function alternative(
  prepared: Prepared,
  { now, part, here }: Planned,
  programme: Programme,
  detail: Detail,
): Alternative {
  const { problem } = prepared;
  const there = evaluatePrepared(prepared, withProgramme(now.choice, part, programme));
  const to = there.choice.parts[part]!;
  const lot = problem.lots[to.lot]!;
  const cost = objectiveLess(there.objective, now.objective);
  const before = eatingEffects(problem, lot, [now.choice.parts[part]!.programme]);
  const smellers = (evaluation: Evaluation): string[] =>
    giversTo(evaluation, part).map((giver) => problem.lots[evaluation.choice.parts[giver]!.lot]!.lot.id);
  const smeltHere = smellers(now);
  const trial = new LeavingOut(prepared, there.choice);
  const fate = fateOf(prepared, to, there.outcomes[part]!);
  const figures = {
    ...fate,
    ...(detail.course && { course: courseOf(lot.produce, there.outcomes[part]!) }),
    worseBy: { value: cost.total, unit: "g" as const },
    cost,
    effects: eatingEffects(problem, lot, [programme]).filter((effect) => !before.includes(effect)),
    smellsOf: [...new Set(smellers(there))].filter((giver) => !smeltHere.includes(giver)),
    harmed: harmedBy(prepared, now, there, to.lot),
    lostToNeighbours: { value: trial.lifeAlone([part]) - fate.life.middle, unit: "d" as const },
    ...(detail.neighbours && { neighbourhood: trial.neighbourhood([part]) }),
  };
  // The effort of the objective also counts meals that come too thick: no work.
  const moreToDo = programmeEffort(programme, lot) - programmeEffort(now.choice.parts[part]!.programme, lot);
  return { ...figures, grounds: groundsOf(here, figures, moreToDo) };
}
