import { endingProgress, endings, at as stateAt } from "@keepwright/physics";
import { publishedLife } from "../../problem/bindHaul.js";
import type { Lot } from "../../problem/lot.js";
import type { Planned } from "../planned.js";
import { shareOf } from "./secondShop.js";

/** Most days a lot may have spent (`lotSchema`). */
const mostExtraDays = 60;

/** How far on a part is towards its end after some days, over-ripeness apart: 0…1. Ripeness is carried by itself. */
function spentBy({ prepared, evaluation }: Planned, part: number, day: number): number {
  const { produce } = prepared.problem.lots[evaluation.choice.parts[part]!.lot]!;
  const progress = new Float64Array(endings.length);
  endingProgress(produce, evaluation.outcomes[part]!.daily[day]!, progress);
  progress[endings.indexOf("over-ripeness")] = 0;
  return Math.min(1, Math.max(...progress));
}

/** What is left of one part when the first days are over, as a lot that comes home then. */
function carriedPart(first: Planned, part: number, day: number): Lot {
  const { prepared, evaluation } = first;
  const { lot: index, programme } = evaluation.choice.parts[part]!;
  const bound = prepared.problem.lots[index]!;
  const aged = spentBy(first, part, day) * publishedLife(bound);
  // Cut produce has been cut for as long as it has been: its safe time goes on wherever it lies.
  const extraDays = bound.form.cut ? Math.max(aged, bound.lot.extraDays + day) : aged;
  return {
    ...shareOf(bound, evaluation.eating.left[part]!),
    ripeness: Math.min(2, Math.max(0, evaluation.outcomes[part]!.daily[day]![stateAt.ripeness]!)),
    tops: bound.lot.tops && !programme.leavesOff,
    washed: bound.lot.washed && !programme.dried,
    extraDays: Math.min(mostExtraDays, extraDays),
  };
}

/**
 * Everything left of the first plan, as it is when its days are over. Its ripeness is kept; whatever else has gone on in it (water lost, decay,
 * chilling …) becomes days at recommended conditions that bring its nearest end as near, which is all a lot can say of its past.
 */
export const carriedOn = (first: Planned, day: number): Lot[] =>
  first.evaluation.choice.parts.flatMap((_, part) =>
    first.evaluation.eating.left[part]! > 0 ? [carriedPart(first, part, day)] : [],
  );
