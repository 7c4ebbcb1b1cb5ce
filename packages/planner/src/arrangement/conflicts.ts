import type { BoundLot } from "../problem/bindHaul.js";
import type { Prepared } from "../search/prepare.js";
import type { Conflict, LotBeside } from "./judgement.js";
import { giversTo, partsOf, type Side } from "./lotBeside.js";
import { NeighbourTrial } from "./neighbours.js";

const mostConflicts = 3;

/** Less than this a lot's loss against the plan is not worth a word [g]: a bite is more. Declared. */
const leastLoss = 1;

/** Share of its planned life that a lot must lose for that to be the cause. Declared, as in the reasons of a plan. */
const lifeThatMatters = 0.02;

/** Effects that spoil eating at the temperatures where a lot lies, by their names in the catalogue. */
function effectsOn({ problem }: Prepared, { evaluation }: Side, lot: BoundLot): string[] {
  const temperatures = partsOf(evaluation, lot.index).flatMap((part) =>
    evaluation.choice.parts[part]!.programme.stays.map(
      ({ place }) => problem.places[place]!.place.temperature,
    ),
  );
  const harming = lot.produce.eatingEffects.filter(({ above, below }) =>
    temperatures.some((celsius) => celsius > above && celsius < below),
  );
  return [...new Set(harming.map(({ effect }) => effect))];
}

/** Ids of the lots whose smell a lot takes up. */
const smellsTaken = ({ problem }: Prepared, { evaluation }: Side, lot: BoundLot): string[] => {
  const givers = partsOf(evaluation, lot.index).flatMap((part) => giversTo(evaluation, part));
  return [...new Set(givers.map((giver) => problem.lots[evaluation.choice.parts[giver]!.lot]!.lot.id))];
};

interface Grounds {
  readonly effects: readonly string[];
  readonly smellsOf: readonly string[];
}

/** What sets a lot back; undefined where it is only eaten on other days. */
function causeOf({ here, planned, lifeLost }: LotBeside, grounds: Grounds): Conflict["cause"] | undefined {
  if (here.readyOnDay === null && planned.readyOnDay !== null) return "not ripe";
  if (lifeLost.value > lifeThatMatters * planned.life.middle) return "life";
  if (grounds.effects.length > 0) return "eating";
  return grounds.smellsOf.length > 0 ? "smell" : undefined;
}

/** The lots that lose most against the plan, worst first, with what is to blame. */
export function worstConflicts(
  prepared: Prepared,
  yours: Side,
  plan: Side,
  lots: readonly LotBeside[],
): Conflict[] {
  const trial = new NeighbourTrial(prepared, yours.evaluation);
  return lots
    .map((beside, index) => {
      const lot = prepared.problem.lots[index]!;
      const before = new Set(smellsTaken(prepared, plan, lot));
      const effects = effectsOn(prepared, yours, lot);
      const smellsOf = smellsTaken(prepared, yours, lot).filter((giver) => !before.has(giver));
      return { index, beside, effects, smellsOf, cause: causeOf(beside, { effects, smellsOf }) };
    })
    .filter(({ beside, cause }) => cause !== undefined && beside.worseBy.value >= leastLoss)
    .sort((a, b) => b.beside.worseBy.value - a.beside.worseBy.value || a.index - b.index)
    .slice(0, mostConflicts)
    .map(({ index, beside, cause, effects, smellsOf }): Conflict => {
      const { here, alone, neighbours, joint } = trial.effectOn(index);
      const planned = beside.planned.life.middle;
      return {
        lot: beside.lot,
        commodity: beside.commodity,
        cause: cause!,
        life: { value: here, unit: "d" },
        plannedLife: { value: planned, unit: "d" },
        endedBy: beside.here.endedBy,
        worseBy: beside.worseBy,
        lostToPlace: { value: planned - alone, unit: "d" },
        lostToNeighbours: { value: alone - here, unit: "d" },
        neighbours: [...neighbours],
        joint,
        effects,
        smellsOf,
      };
    });
}
