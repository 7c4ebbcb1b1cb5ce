import { eatingEffects } from "../explain/eatingEffects.js";
import { LeavingOut } from "../explain/leavingOut.js";
import { giversTo, partsOf } from "../explain/ownCost.js";
import { worthTelling } from "../explain/worthTelling.js";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Prepared } from "../search/prepare.js";
import type { Conflict, LotBeside } from "./judgement.js";
import type { Side } from "./lotBeside.js";

const mostConflicts = 3;

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
  if (lifeLost.value > worthTelling.life * planned.life.middle) return "life";
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
  const trial = new LeavingOut(prepared, yours.evaluation.choice);
  return lots
    .map((beside, index) => {
      const lot = prepared.problem.lots[index]!;
      const before = new Set(smellsTaken(prepared, plan, lot));
      const programmes = partsOf(yours.evaluation, lot.index).map(
        (part) => yours.evaluation.choice.parts[part]!.programme,
      );
      const effects = eatingEffects(prepared.problem, lot, programmes);
      const smellsOf = smellsTaken(prepared, yours, lot).filter((giver) => !before.has(giver));
      return { index, beside, effects, smellsOf, cause: causeOf(beside, { effects, smellsOf }) };
    })
    .filter(({ beside, cause }) => cause !== undefined && beside.worseBy.value >= worthTelling.grams)
    .sort((a, b) => b.beside.worseBy.value - a.beside.worseBy.value || a.index - b.index)
    .slice(0, mostConflicts)
    .map(({ index, beside, cause, effects, smellsOf }): Conflict => {
      const neighbourhood = trial.neighbourhood(partsOf(yours.evaluation, index));
      const alone = neighbourhood.lifeAlone.value;
      const planned = beside.planned.life.middle;
      return {
        lot: beside.lot,
        commodity: beside.commodity,
        cause: cause!,
        life: { value: alone - neighbourhood.lostToNeighbours.value, unit: "d" },
        plannedLife: { value: planned, unit: "d" },
        endedBy: beside.here.endedBy,
        worseBy: beside.worseBy,
        lostToPlace: { value: planned - alone, unit: "d" },
        ...neighbourhood,
        effects,
        smellsOf,
      };
    });
}
