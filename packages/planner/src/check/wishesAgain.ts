import {
  at,
  carriedFrom,
  type LotOutcome,
  lifeSpread,
  simulate,
  usualSpentSpread,
} from "@keepwright/physics";
import { normalNinetiethPercentile } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { alike, type PlanFault, unless } from "./fault.js";
import { simulationAgain } from "./replay.js";
import { untouched } from "./spread.js";
import { lotOf, placeOf, type Subject } from "./subject.js";

/** As the rest of a replay: 2 % of a time, an hour at least; and a tenth of a spread. */
const share = 0.02;
const leastDays = 1 / 24;
const shareOfSpread = 0.1;

/**
 * Days of ripening at the pace of the stay in which it gets ready. Brought out on a day, it has ripened a share before; the rest of the way took from
 * then on.
 */
function ownDays({ ripeDay, stayStarts, daily }: LotOutcome, arrived: number): number {
  const start = Math.max(0, ...stayStarts.filter((day) => day < ripeDay));
  if (start === 0 || !Number.isFinite(ripeDay)) return ripeDay;
  const there = daily[Math.floor(start)]?.[at.ripeness] ?? arrived;
  const left = Math.max(0.01, Math.min(1, (1 - there) / Math.max(0.01, 1 - arrived)));
  return (ripeDay - start) / left;
}

/** The spread of a time to ripen, as that of a life but carried from the published days at 20 °C. */
function spreadAgain(subject: Subject, part: PlannedLot, index: number): number {
  const { boxOf: _, ...simulation } = simulationAgain(untouched(subject));
  const lot = simulation.lots[index]!;
  const days = (warmer: number): number => {
    const stays = lot.stays.map((stay, number) => {
      const { temperatureSpread } = placeOf(subject, part.stays[number]!.place);
      return { ...stay, temperature: stay.temperature + warmer * temperatureSpread };
    });
    const alone = { ...lot, stays, kilograms: lotOf(subject, part).grams / 1000 };
    return ownDays(simulate({ ...simulation, lots: [alone] }).lots[0]!, lot.ripeness);
  };
  return lifeSpread({
    biology: lot.produce.lifeSpread,
    temperatureSpread: 1,
    temperatureSlope: carriedFrom(days(1), days(-1)) / 2,
    spent: 0,
    spentSpread: usualSpentSpread,
    carried: carriedFrom(days(0), lot.produce.ripening!.daysAt20 * (1 - lot.ripeness)),
  });
}

/** The days told for being ready are those of the plan simulated anew: their middle, what all lots have in common, and their spread. */
export function wishesAgain(subject: Subject): PlanFault[] {
  if (subject.plan.lots.every(({ wish }) => wish === undefined)) return [];
  const { boxOf: _, ...simulation } = simulationAgain(subject);
  const outcome = simulate(simulation);
  return subject.plan.lots.flatMap((part, index): PlanFault[] => {
    const ready = part.wish?.ready;
    if (!ready || ready.late <= 0) return [];
    const lot = outcome.lots[index]!;
    const own = ownDays(lot, part.ripeness);
    const slower = (ready.late - ready.middle) / (ready.middle - ready.early);
    const told = (ready.middle - ready.early) / (1 - 1 / slower);
    const spread = Math.log(slower) / normalNinetiethPercentile;
    const expected = spreadAgain(subject, part, index);
    return [
      ...unless(
        alike(ready.middle, lot.ripeDay, share, leastDays),
        "replayed wish",
        `${part.id} ready`,
        ready.middle,
        lot.ripeDay,
        "d",
      ),
      ...unless(
        alike(told, own, 2 * share, 2 * leastDays),
        "replayed wish",
        `${part.id} ripening`,
        told,
        own,
        "d",
      ),
      ...unless(
        Math.abs(spread / expected - 1) <= shareOfSpread,
        "replayed wish",
        `${part.id} spread`,
        spread,
        expected,
      ),
    ];
  });
}
