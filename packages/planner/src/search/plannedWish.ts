import { addDays } from "@keepwright/quantities";
import type { BoundLot } from "../problem/bindHaul.js";
import type { PlannedLot } from "../problem/plan.js";
import type { PlannedWish, reasonsForMissing } from "../problem/plannedWish.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { lastSafeDay } from "../rules/safeTime.js";
import { chanceAsWanted, isAsWanted, isReadyInTime, type Prospects, readyDays } from "../rules/wishes.js";
import { leftDayOf, prospectsOf } from "../schedule/wishCosts.js";
import type { Evaluation } from "./evaluate.js";
import type { Prepared } from "./prepare.js";

/** The days that a part's portions are eaten on, and what is left over, each with its portions. */
function occasions({ problem }: Prepared, evaluation: Evaluation, index: number): [number, number][] {
  const lot = problem.lots[evaluation.choice.parts[index]!.lot]!;
  const eaten = evaluation.eating.eaten[index]!.map((portions, day): [number, number] => [day, portions]);
  const left: [number, number] = [leftDayOf(lot, problem.household), evaluation.eating.left[index]!];
  return [...eaten, left].filter(([, portions]) => portions > 0);
}

/** What a lot alone in the kitchen would come to with each of its programmes. */
const prospectsAlone = (prepared: Prepared, lot: BoundLot): Prospects[] =>
  prepared.options(lot.index).map(({ programme }) => {
    const { problem, solos } = prepared;
    const outcome = solos.outcome(lot, programme);
    const spreads = {
      life: prepared.spread(lot.index, programme),
      ripening: prepared.ripeningSpread(lot.index, programme),
    };
    return prospectsOf(lot, outcome, spreads, lastSafeDay(problem, lot, programme, outcome.stayStarts));
  });

/** Why a wish is not met, by what the lot could come to alone. */
function whyMissed(
  { problem }: Prepared,
  lot: BoundLot,
  alone: readonly Prospects[],
): (typeof reasonsForMissing)[number] {
  const wish = lot.wish!;
  const left = leftDayOf(lot, problem.household);
  const days = [...Array.from({ length: problem.household.days }, (_, day) => day), left];
  const some = (holds: typeof isAsWanted): boolean =>
    alone.some((prospects) => days.some((day) => holds(wish, prospects, day)));
  if (some(isAsWanted)) return "other things weigh more";
  return some(isReadyInTime) ? "keeps too short" : "ripens too slowly";
}

/** The day it is ready in the middle; null where it never is. */
const middleDay = ({ readiness: { shift, median } }: Prospects): number | null =>
  Number.isFinite(median) ? firstReadyDay(shift + median) : null;

/** What is wanted of a part and what becomes of it; nothing where nothing is wanted. */
export function plannedWish(
  prepared: Prepared,
  evaluation: Evaluation,
  index: number,
): Pick<PlannedLot, "wish"> {
  const { problem } = prepared;
  const part = evaluation.choice.parts[index]!;
  const lot = problem.lots[part.lot]!;
  const { wish } = lot;
  if (!wish) return {};
  const outcome = evaluation.outcomes[index]!;
  const { programme } = part;
  const prospects = prospectsOf(
    lot,
    outcome,
    {
      life: prepared.spread(part.lot, programme),
      ripening: prepared.ripeningSpread(part.lot, programme),
    },
    lastSafeDay(problem, lot, programme, outcome.stayStarts),
  );
  const each = occasions(prepared, evaluation, index);
  const chance = each.reduce(
    (sum, [day, portions]) => sum + (portions * chanceAsWanted(wish, prospects, day)) / part.portions,
    0,
  );
  const met = each.every(([day]) => isAsWanted(wish, prospects, day));
  const alone = prospectsAlone(prepared, lot);
  const ready = readyDays(prospects.readiness);
  const earliest = [prospects, ...alone].map(middleDay).filter((day) => day !== null);
  const told: PlannedWish = {
    when: wish.when,
    date: addDays(problem.from, wish.day),
    day: wish.day,
    ripens: lot.produce.ripening !== undefined && !lot.form.cut,
    ready: ready ? { ...ready, unit: "d" } : null,
    chance: Math.min(1, chance),
    met,
    bestReadyOnDay: earliest.length > 0 ? Math.min(...earliest) : null,
    ...(!met && { why: whyMissed(prepared, lot, alone) }),
  };
  return { wish: told };
}
