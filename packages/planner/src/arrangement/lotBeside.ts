import { ownCost } from "../explain/ownCost.js";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Plan, PlannedLot } from "../problem/plan.js";
import type { Evaluation } from "../search/evaluate.js";
import { planOf, withoutVainMoves } from "../search/planOf.js";
import type { Prepared } from "../search/prepare.js";
import type { LotBeside, LotFate } from "./judgement.js";

/** A choice judged, and the same written out as a plan. */
export interface Side {
  readonly evaluation: Evaluation;
  readonly plan: Plan;
}

/** A judged choice as what is told of it: without moves that never come. */
export function sideOf(prepared: Prepared, judged: Evaluation): Side {
  const evaluation = withoutVainMoves(prepared, judged);
  return { evaluation, plan: planOf(prepared, evaluation) };
}

/** Of several parts, the mean of a figure by their mass. */
function mean(parts: readonly PlannedLot[], figure: (part: PlannedLot) => number): number {
  const mass = parts.reduce((sum, { grams }) => sum + grams, 0);
  return parts.reduce((sum, part) => sum + figure(part) * part.grams, 0) / mass;
}

function fateOf({ plan }: Side, { lot, gramsPerPortion }: BoundLot): LotFate {
  const parts = plan.lots.filter((part) => part.lot === lot.id);
  const first = parts.reduce((least, part) => (part.life.middle < least.life.middle ? part : least));
  const ready = parts.map(({ readyOnDay }) => readyOnDay);
  const grams = parts.reduce((sum, { expectedWaste }) => sum + expectedWaste.value, 0);
  return {
    life: {
      early: mean(parts, ({ life }) => life.early),
      middle: mean(parts, ({ life }) => life.middle),
      late: mean(parts, ({ life }) => life.late),
      unit: "d",
    },
    endedBy: first.endedBy,
    readyOnDay: ready.reduce((latest, day) =>
      latest === null || day === null ? null : Math.max(latest, day),
    ) as number | null,
    wasted: { grams, portions: grams / gramsPerPortion },
  };
}

/** One lot here and in the plan. */
export function lotBeside(lot: BoundLot, yours: Side, plan: Side, mentioned: boolean): LotBeside {
  const here = fateOf(yours, lot);
  const planned = fateOf(plan, lot);
  return {
    lot: lot.lot.id,
    commodity: lot.commodity.id,
    mentioned,
    here,
    planned,
    lifeLost: { value: planned.life.middle - here.life.middle, unit: "d" },
    worseBy: { value: ownCost(yours.evaluation, lot) - ownCost(plan.evaluation, lot), unit: "g" },
  };
}
