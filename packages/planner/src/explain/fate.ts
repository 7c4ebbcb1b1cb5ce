import type { LotOutcome } from "@keepwright/physics";
import type { Part } from "../problem/programme.js";
import { lifeLeft } from "../rules/lifeLeft.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { safeDaysLeft } from "../rules/safeTime.js";
import { longestNamed, toldEnding, toldLife } from "../search/plannedLots.js";
import type { Prepared } from "../search/prepare.js";
import type { Fate } from "./reason.js";

/** What becomes of a part in its last place, from what was simulated of it. */
export function fateOf({ problem, spread }: Prepared, part: Part, outcome: LotOutcome): Fate {
  const { places, lots } = problem;
  const { stays } = part.programme;
  const [first, last] = [stays[0]!, stays.at(-1)!];
  const { place } = places[last.place]!;
  const told = {
    range: lifeLeft(
      lots[part.lot]!,
      { endDay: Math.min(outcome.endDay, longestNamed) },
      spread(part.lot, part.programme),
    ),
    safeDays: safeDaysLeft(problem, lots[part.lot]!, part.programme, outcome.stayStarts),
  };
  return {
    place: place.id,
    placeKind: place.kind,
    wrap: last.wrap,
    ...(stays.length > 1 &&
      first.until === "ripe" && { ripensIn: { place: places[first.place]!.place.id, wrap: first.wrap } }),
    life: toldLife(told).life,
    endedBy: toldEnding(told, outcome.endedBy),
    readyOnDay: Number.isFinite(outcome.ripeDay) ? firstReadyDay(outcome.ripeDay) : null,
  };
}
