import { type LotOutcome, type SimulationOutcome, simulate, withEnd } from "@keepwright/physics";
import type { PlannedLot } from "../problem/plan.js";
import { alike, type PlanFault, sum, unless } from "./fault.js";
import { keptBefore, qualityLife } from "./life.js";
import { simulationAgain } from "./replay.js";
import { pastSafe } from "./safety.js";
import { lotOf, type Subject } from "./subject.js";
import { type Occasion, occasions } from "./terms.js";
import { chanceAgain, qualityAgain } from "./whenEaten.js";

/**
 * How closely a plan must agree with its replay: 2 % of a life or a sum of waste, 0.02 of a chance or a quality. The
 * simulation's own step error is held below 1 % (docs/model), so two honest ways to it differ by no more than twice that.
 */
const share = 0.02;
/** Waste below this is not told apart from none [g]: less than a leaf. */
const leastGrams = 0.1;
/** Times of moves and ripening are located within a step; this is an hour [d]. */
const leastDays = 1 / 24;
/** A plan tells its moves to a tenth of a day, and never onto or past a whole day [d]. */
const toldTo = 0.1;

/** Longest life a plan names [d]: JSON has no Infinity. */
const longestNamed = 3650;

function moves(part: PlannedLot, { stayStarts }: LotOutcome): PlanFault[] {
  return part.stays.flatMap(({ fromDay, place }, index) => {
    const start = stayStarts[index]!;
    return unless(
      alike(fromDay, start, share, toldTo + leastDays),
      "replayed move",
      `${part.id} to ${place}`,
      fromDay,
      start,
      "d",
    );
  });
}

function ripeness({ id, readyOnDay, eatOn }: PlannedLot, { ripeDay }: LotOutcome): PlanFault[] {
  const told = readyOnDay ?? Number.POSITIVE_INFINITY;
  const early = told === ripeDay || (told >= ripeDay - leastDays && told < ripeDay + 1 + leastDays);
  return [
    ...unless(early, "replayed ripeness", id, readyOnDay ?? "never", ripeDay, "d"),
    ...eatOn.flatMap(({ day }) =>
      unless(day >= ripeDay - leastDays, "replayed ripeness", `${id} day ${day}`, day, ripeDay, "d"),
    ),
  ];
}

/** The day a replay ends a part on, counted as its life is; what had ended before keeps that day. */
export function endAgain(subject: Subject, part: PlannedLot, endDay: number): number {
  const { carried } = lotOf(subject, part);
  return keptBefore(subject, part) + (carried?.ended ? -carried.ended.daysBefore : endDay);
}

function lifeAgain(subject: Subject, part: PlannedLot, outcome: LotOutcome): PlanFault[] {
  const { id, endedBy } = part;
  const life = qualityLife(part);
  const left = part.lifeBeforeSafety ?? part.life;
  const ends = lotOf(subject, part).carried?.ended?.by ?? outcome.endedBy;
  // Where safety ends half of lots like it, it is what ends them.
  const unsafe = left.middle > part.life.late || pastSafe(subject, part, 0);
  const ending = unsafe ? "safety" : ends;
  const endDay = endAgain(subject, part, Math.min(outcome.endDay, longestNamed));
  return [
    ...unless(alike(life.middle, endDay, share), "replayed life", id, life.middle, endDay, "d"),
    ...unless(endedBy === ending, "replayed ending", id, endedBy, ending),
  ];
}

function occasionAgain(subject: Subject, part: PlannedLot, outcome: LotOutcome, one: Occasion): PlanFault[] {
  const what = `${part.id} ${one.left ? "left" : `day ${one.day}`}`;
  const endDay = endAgain(subject, part, outcome.endDay);
  const chance = chanceAgain(subject, part, endDay, one);
  const quality = qualityAgain(subject, part, withEnd(outcome, endDay), one);
  return [
    ...unless(Math.abs(one.chance - chance) <= share, "replayed chance", what, one.chance, chance),
    ...(one.quality === undefined
      ? []
      : unless(Math.abs(one.quality - quality) <= share, "replayed quality", what, one.quality, quality)),
  ];
}

function wasteAgain(subject: Subject, { lots }: SimulationOutcome): PlanFault[] {
  const wasted = subject.plan.lots.map((part, index) =>
    sum(
      occasions(subject, part).map(
        (one) => one.grams * chanceAgain(subject, part, endAgain(subject, part, lots[index]!.endDay), one),
      ),
    ),
  );
  const told = subject.plan.expectedWaste.value;
  return unless(
    alike(told, sum(wasted), share, leastGrams),
    "replayed waste",
    "plan",
    told,
    sum(wasted),
    "g",
  );
}

/** Mean ethylene over the planned days of every place that has air in a box. */
function ethyleneAgain(
  subject: Subject,
  outcome: SimulationOutcome,
  boxOf: ReturnType<typeof simulationAgain>["boxOf"],
) {
  return subject.plan.places.flatMap((told) => {
    const box = boxOf(subject.kitchen.places.find(({ id }) => id === told.place)!);
    if (box === "room") return [];
    const { ethylene } = outcome.boxes[box]!;
    const mean = sum(ethylene) / ethylene.length;
    return unless(alike(told.ethylene, mean, share), "replayed air", told.place, told.ethylene, mean, "µL/L");
  });
}

/** Simulates the plan anew from what it says, and compares what becomes of every part with what it promises. */
export function replayed(subject: Subject): PlanFault[] {
  const { boxOf, ...simulation } = simulationAgain(subject);
  const outcome = simulate(simulation);
  const parts = subject.plan.lots.flatMap((part, index) => {
    const lot = outcome.lots[index]!;
    return [
      ...moves(part, lot),
      ...ripeness(part, lot),
      ...lifeAgain(subject, part, lot),
      ...occasions(subject, part).flatMap((one) => occasionAgain(subject, part, lot, one)),
    ];
  });
  return [...parts, ...wasteAgain(subject, outcome), ...ethyleneAgain(subject, outcome, boxOf)];
}
