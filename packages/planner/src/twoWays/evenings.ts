import type { Side } from "../arrangement/lotBeside.js";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { chancePastBy } from "../rules/lifeLeft.js";
import { lastSafeDay } from "../rules/safeTime.js";
import { eatingHabits } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import type { LotDay, SideDay } from "./twoWays.js";

/** Chances of being past its best from which what lies is going, and past it: where a plan's early and middle lives end. */
const goingFrom = 0.1;
const pastFrom = 0.5;

/** The evenings looked at [d from the first]: every planned day, and the day on which what is left over is taken to be eaten. */
export const eveningsOf = ({ household: { days } }: Problem): number[] => [
  ...Array.from({ length: days }, (_, day) => day),
  days - 1 + eatingHabits.leftOverDays,
];

/** A part of a lot on one evening [g]. */
interface PartEvening {
  readonly eaten: number;
  readonly lost: number;
  readonly left: number;
  /** Planned for later or left over, and its chance of being past its best by now [1]. */
  readonly toCome: number;
  readonly chancePast: number;
  readonly ripe: boolean;
  readonly place: number;
}

/**
 * What becomes of one portion by an evening, as shares: of the portions planned for a day some are eaten late (`eatingHabits.lateShare`, `lateDays`), and
 * whatever lies is lost from the day on which it is expected to be past its best.
 */
function portionBy(past: (day: number) => number, planned: number, evening: number) {
  const { lateShare, lateDays } = eatingHabits;
  const shares = [
    { share: 1 - lateShare, on: planned },
    { share: lateShare, on: planned + lateDays },
  ];
  const lost = shares.reduce((sum, { share, on }) => sum + share * past(Math.min(evening, on)), 0);
  const eaten = shares.reduce((sum, { share, on }) => sum + (on <= evening ? share * (1 - past(on)) : 0), 0);
  return { lost, eaten };
}

function partEvening(prepared: Prepared, { evaluation }: Side, index: number, day: number): PartEvening {
  const { problem } = prepared;
  const part = evaluation.choice.parts[index]!;
  const lot = problem.lots[part.lot]!;
  const outcome = evaluation.outcomes[index]!;
  const { stays } = part.programme;
  const lastSafe = lastSafeDay(problem, lot, part.programme, outcome.stayStarts);
  const spread = prepared.spread(part.lot, part.programme);
  const past = (on: number): number => (on > lastSafe ? 1 : chancePastBy(lot, outcome, spread, on));
  let lost = evaluation.eating.left[index]! * past(day);
  let eaten = 0;
  let served = 0;
  for (const [on, portions] of evaluation.eating.eaten[index]!.entries()) {
    const one = portionBy(past, on, day);
    lost += portions * one.lost;
    eaten += portions * one.eaten;
    if (on <= day) served += portions;
  }
  const stay = stays.findLastIndex((_, at) => at === 0 || outcome.stayStarts[at]! <= day);
  return {
    eaten: eaten * lot.gramsPerPortion,
    lost: lost * lot.gramsPerPortion,
    left: (part.portions - eaten - lost) * lot.gramsPerPortion,
    toCome: (part.portions - served) * lot.gramsPerPortion,
    chancePast: past(day),
    ripe: day >= evaluation.costs[index]!.readyDay,
    place: stays[stay]!.place,
  };
}

function stateOf(parts: readonly PartEvening[], eaten: number, lost: number): LotDay["state"] {
  const toCome = parts.reduce((sum, part) => sum + part.toCome, 0);
  if (toCome === 0) return eaten >= lost ? "eaten" : "past its best";
  const past = parts.reduce((sum, part) => sum + part.toCome * part.chancePast, 0) / toCome;
  if (past >= pastFrom) return "past its best";
  if (past >= goingFrom) return "going";
  return parts.every((part) => part.toCome === 0 || !part.ripe) ? "not ripe" : "good";
}

/** What ends the part that ends first, as a judgement names it. */
function endingOf({ plan }: Side, lot: BoundLot) {
  const parts = plan.lots.filter((part) => part.lot === lot.lot.id);
  return parts.reduce((least, part) => (part.life.middle < least.life.middle ? part : least)).endedBy;
}

function lotDay(prepared: Prepared, side: Side, lot: BoundLot, day: number): LotDay {
  const parts = side.evaluation.choice.parts
    .map((part, index) => ({ part, index }))
    .filter(({ part }) => part.lot === lot.index)
    .map(({ index }) => partEvening(prepared, side, index, day));
  const sum = (figure: (part: PartEvening) => number): number =>
    parts.reduce((total, part) => total + figure(part), 0);
  const [eaten, lost, left] = [sum((part) => part.eaten), sum((part) => part.lost), sum((part) => part.left)];
  const state = stateOf(parts, eaten, lost);
  const places = parts.filter(({ toCome }) => toCome > 0).map(({ place }) => place);
  return {
    lot: lot.lot.id,
    state,
    ...((state === "going" || state === "past its best") && { endedBy: endingOf(side, lot) }),
    places: [...new Set(places)].map((place) => prepared.problem.places[place]!.place.id),
    eaten,
    lost,
    left,
  };
}

/**
 * One side on one evening. By the last evening every portion has had its day, late ones too, so that the loss is the waste that the planner
 * judges by.
 */
export function sideDay(prepared: Prepared, side: Side, day: number): SideDay {
  const lots = prepared.problem.lots.map((lot) => lotDay(prepared, side, lot, day));
  const sum = (name: "eaten" | "lost" | "left"): number => lots.reduce((total, lot) => total + lot[name], 0);
  return { eaten: sum("eaten"), lost: sum("lost"), left: sum("left"), lots };
}
