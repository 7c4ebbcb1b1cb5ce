import { type LifeDays, lifeRange, lifeWithin, type SimulationOutcome } from "@keepwright/physics";
import { addDays } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import type { Problem } from "../problem/problem.js";
import type { Part } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { isCutWhenBegun, piecesBegun, thrownOf } from "../rules/cutOpen.js";
import { lifeLeft, wholeLifeOf } from "../rules/lifeLeft.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { safeDaysLeft } from "../rules/safeTime.js";
import { type Evaluation, eatingTerms } from "./evaluate.js";
import { placeAir } from "./placeAir.js";
import { plannedPreparation } from "./plannedPreparation.js";
import { plannedWish } from "./plannedWish.js";
import type { Prepared } from "./prepare.js";
import { toldApart } from "./toldApart.js";

/** Ids of the parts: the lot's own for its first part, then "/2", "/3" … */
export function partIds(problem: Problem, parts: readonly Part[]): string[] {
  const counts = new Map<number, number>();
  return parts.map(({ lot }) => {
    const count = (counts.get(lot) ?? 0) + 1;
    counts.set(lot, count);
    const { id } = problem.lots[lot]!.lot;
    return count === 1 ? id : `${id}/${count}`;
  });
}

/**
 * A time [d] to a tenth, never onto or past a whole day it did not reach: dates, and which stay a day belongs to, stay what they are.
 */
function toTenth(time: number): number {
  const [before, after] = [Math.floor(time), Math.ceil(time)];
  return before === after ? time : Math.min(after - 0.1, Math.max(before + 0.1, Math.round(10 * time) / 10));
}

/**
 * The stays with their days: a move when ripe may lie beyond the planned days, and is told all the same. Its date is the first whole day it is
 * ripe, as for eating: earlier that day it was not.
 */
function plannedStays(
  problem: Problem,
  part: Part,
  starts: readonly number[],
  lastDay: number,
): PlannedLot["stays"] {
  const { stays } = part.programme;
  const dayOf = (stay: number): number =>
    stays[stay - 1]?.until === "ripe" ? firstReadyDay(toTenth(starts[stay]!)) : starts[stay]!;
  return stays.map((stay, index) => {
    const { place } = problem.places[stay.place]!;
    const to = index + 1 < stays.length ? starts[index + 1] : undefined;
    return {
      place: place.id,
      placeKind: place.kind,
      wrap: stay.wrap,
      from: addDays(problem.from, dayOf(index)),
      to: addDays(problem.from, to === undefined ? Math.max(dayOf(index), lastDay) : dayOf(index + 1)),
      fromDay: toTenth(starts[index]!),
      ...(to !== undefined && { toDay: toTenth(to) }),
      ...(stay.until !== "never" && {
        moveWhen: stay.until === "ripe" ? ("ripe" as const) : ("day" as const),
      }),
    };
  });
}

function longestStay(starts: readonly number[], until: number): { stay: number; from: number; to: number } {
  const lengths = starts.map((start, stay) => Math.min(starts[stay + 1] ?? until, until) - start);
  const stay = lengths.reduce((best, length, index) => (length > lengths[best]! ? index : best), 0);
  return { stay, from: starts[stay]!, to: Math.min(starts[stay + 1] ?? until, until) };
}

function conditions(problem: Problem, air: SimulationOutcome, part: Part, starts: readonly number[]) {
  const { days } = problem.household;
  const { stay, from, to } = longestStay(starts, days);
  return placeAir(problem, air, part.programme.stays[stay]!.place, Math.floor(from), Math.ceil(to));
}

function eatOn(problem: Problem, evaluation: Evaluation, index: number): PlannedLot["eatOn"] {
  const { gramsPerPortion } = problem.lots[evaluation.choice.parts[index]!.lot]!;
  const costs = evaluation.costs[index]!;
  return evaluation.eating.eaten[index]!.flatMap((portions, day) =>
    portions === 0
      ? []
      : [
          {
            date: addDays(problem.from, day),
            day,
            portions,
            grams: portions * gramsPerPortion,
            chancePastBest: costs.chancePast[day]!,
            quality: costs.quality[day]!,
          },
        ],
  );
}

/** Pieces of a part that are begun and not eaten up on the same day, with their dates. */
function cutOpen({ problem, keepsOnceBegun }: Prepared, evaluation: Evaluation, index: number) {
  const part = evaluation.choice.parts[index]!;
  const lot = problem.lots[part.lot]!;
  if (!isCutWhenBegun(lot)) return {};
  const keeps = keepsOnceBegun[part.lot]!;
  const { pieces } = piecesBegun(evaluation.eating.eaten[index]!, part.portions, lot.splitUnit, keeps);
  const told = pieces
    .filter(({ day, lastMeal, eaten, portions }) => eaten < portions || lastMeal > day)
    .map((piece) => ({
      date: addDays(problem.from, piece.day),
      ...(Number.isFinite(keeps) && { safeUntil: addDays(problem.from, piece.lastSafeDay) }),
      portionsAfter: thrownOf(piece, problem.household.days),
    }));
  return told.length > 0 ? { cutOpen: told } : {};
}

/** The day nothing of it is left to lie anywhere: after its last meal or, with some left over, after the planned days. */
function dayAfterLast({ problem }: Prepared, { eating }: Evaluation, index: number): number {
  if (eating.left[index]! > 0) return problem.household.days;
  return eating.eaten[index]!.findLastIndex((portions) => portions > 0) + 1;
}

interface ToldLife {
  readonly range: LifeDays;
  readonly safeDays: number;
}

/** The life as it is told: not past the safe time, and how it would be without that limit where it binds. */
export function toldLife({ range, safeDays }: ToldLife): Pick<PlannedLot, "life" | "lifeBeforeSafety"> {
  const within = lifeWithin(range, Math.max(0, safeDays));
  return {
    life: { ...within, unit: "d" },
    ...(within.late < range.late && { lifeBeforeSafety: { ...range, unit: "d" } }),
  };
}

/** What ends a life: the safe time, where it does so before half of lots like it are past their best. */
export const toldEnding = <Name extends string>({ range, safeDays }: ToldLife, ending: Name) =>
  range.middle > safeDays ? ("safety" as const) : ending;

const safeUntil = (problem: Problem, safeDays: number): Pick<PlannedLot, "safeUntil"> => {
  if (!Number.isFinite(safeDays)) return {};
  return { safeUntil: safeDays < 0 ? "past" : addDays(problem.from, safeDays + 1e-9) };
};

function plannedLot(
  prepared: Prepared,
  evaluation: Evaluation,
  air: SimulationOutcome,
  index: number,
  id: string,
): PlannedLot {
  const { problem } = prepared;
  const part = evaluation.choice.parts[index]!;
  const bound = problem.lots[part.lot]!;
  const { lot, commodity, gramsPerPortion, ripeness, form, carried } = bound;
  const { programme } = part;
  const outcome = evaluation.outcomes[index]!;
  const ended = { endDay: finite(outcome.endDay) };
  const costs = evaluation.costs[index]!;
  const spread = prepared.spread(part.lot, programme);
  const left = evaluation.eating.left[index]!;
  const told: ToldLife = {
    range: lifeLeft(bound, ended, spread),
    safeDays: safeDaysLeft(problem, bound, programme, outcome.stayStarts),
  };
  const terms = eatingTerms(costs, evaluation.eating.eaten[index]!, left, gramsPerPortion);
  return {
    id,
    lot: lot.id,
    ...toldApart(problem, bound),
    commodity: commodity.id,
    grams: part.portions * gramsPerPortion,
    litres: litresInStay(problem, part, 0),
    ripeness,
    form: lot.form,
    tops: form.tops && !programme.leavesOff,
    washed: lot.washed,
    preparation: plannedPreparation(bound, programme),
    stays: plannedStays(problem, part, outcome.stayStarts, dayAfterLast(prepared, evaluation, index)),
    ...toldLife(told),
    ...(carried && { wholeLife: { ...lifeRange(wholeLifeOf(bound, ended, spread)), unit: "d" } }),
    ...safeUntil(problem, told.safeDays),
    endedBy: toldEnding(told, carried?.ended?.by ?? outcome.endedBy),
    readyOnDay: Number.isFinite(outcome.ripeDay) ? costs.readyDay : null,
    eatOn: eatOn(problem, evaluation, index),
    ...cutOpen(prepared, evaluation, index),
    leftPortions: left,
    expectedWaste: { value: terms.waste, unit: "g" },
    conditions: conditions(problem, air, part, outcome.stayStarts),
    bestLife: { value: prepared.bestLife(part.lot), unit: "d" },
    ...plannedWish(prepared, evaluation, index),
    ifLeft: { chancePastBest: costs.chancePastLeft, quality: costs.qualityLeft },
  };
}

/** Longest life a plan names [d]: ten years stand for "nothing ends it", since JSON has no Infinity. */
export const longestNamed = 3650;
const finite = (days: number): number => Math.min(days, longestNamed);

/** Every part of the plan, as the plan's readers see it. */
export function plannedLots(
  prepared: Prepared,
  evaluation: Evaluation,
  air: SimulationOutcome,
): PlannedLot[] {
  const ids = partIds(prepared.problem, evaluation.choice.parts);
  return ids.map((id, index) => plannedLot(prepared, evaluation, air, index, id));
}
