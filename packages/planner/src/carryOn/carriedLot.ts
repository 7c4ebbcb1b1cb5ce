import { at as position, type StateName, stateNames } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Carried } from "../problem/carried.js";
import { type Lot, ripenessOfWord } from "../problem/lot.js";
import { wantedThen } from "../problem/wish.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { safeTimeUsed, usedOutOfRefrigerator } from "../rules/safeTime.js";
import { hasSafeTime } from "../rules/underControl.js";
import type { BoundHappening } from "./bindHappened.js";
import type { Past } from "./past.js";
import type { Previous } from "./previous.js";
import type { Remaining } from "./remaining.js";

/** What is asked for one part: all that is known of it now. */
export interface CarriedPart {
  readonly previous: Previous;
  readonly past: Past;
  readonly part: number;
  readonly remaining: Remaining;
  /** What is said of it, in the order it is said. */
  readonly said: readonly BoundHappening[];
  /** The day it is now [d from the plan's first]. */
  readonly day: number;
}

type State = Record<StateName, number>;

/** The last that is said of something. */
const lastSaid = <Value>(
  said: readonly BoundHappening[],
  of: (happening: BoundHappening) => Value | undefined,
): Value | undefined => said.map(of).findLast((value) => value !== undefined);

const lotOf = ({ previous, past, part }: CarriedPart): BoundLot =>
  previous.problem.lots[past.choice.parts[part]!.lot]!;

/** Share of the safe time used up: what the plan's stays used, what was cut since, and the hours that were told. It only ever grows. */
function safeTime(carried: CarriedPart, cutDay: number | undefined): number {
  const { previous, past, part, day, said } = carried;
  const lot = lotOf(carried);
  const { programme } = past.choice.parts[part]!;
  const { stayStarts } = past.outcomes[part]!;
  const hours = said.reduce((sum, one) => sum + (one.said.hoursOut ?? 0), 0);
  const out = usedOutOfRefrigerator(previous.problem, hours);
  // What had a safe time before it was cut keeps that: cutting it begins no new one.
  if (cutDay === undefined || hasSafeTime(lot))
    return (hasSafeTime(lot) ? out : 0) + safeTimeUsed(previous.problem, lot, programme, stayStarts, day);
  const cut = { ...lot, form: { ...lot.form, cut: true } };
  const used = (until: number) => safeTimeUsed(previous.problem, cut, programme, stayStarts, until);
  return out + used(day) - used(cutDay);
}

/** The state the simulation gave it by that day, but for what was seen. */
function stateNow(carried: CarriedPart, cutDay: number | undefined, safeUsed: number): State {
  const { past, part, day, said } = carried;
  const lot = lotOf(carried);
  const simulated = past.outcomes[part]!.daily[day]!;
  const state = Object.fromEntries(stateNames.map((name) => [name, simulated[position[name]]!])) as State;
  const ripeness = lastSaid(said, (one) => one.said.ripeness);
  if (ripeness !== undefined)
    state.ripeness = typeof ripeness === "number" ? ripeness : ripenessOfWord[ripeness];
  if (cutDay !== undefined) {
    // What is cut has the life of cut produce from then on: never less of it used up than it had of its own.
    const share = (day - cutDay) / lot.produce.cutLifeDaysAt5;
    state.senescence = Math.max(state.senescence, share);
  }
  if (hasSafeTime(lot) || cutDay !== undefined) state.safety = Math.max(state.safety, safeUsed);
  return state;
}

/** The middle of its life is over: since when, and by what; unless what was seen says otherwise. */
function endedBefore(carried: CarriedPart, cutDay: number | undefined): Pick<Carried, "ended"> {
  const { past, part, day, said } = carried;
  const before = lotOf(carried).carried?.ended;
  const { endDay, endedBy } = past.outcomes[part]!;
  const ended = before
    ? { daysBefore: before.daysBefore + day, by: before.by }
    : endDay < day
      ? { daysBefore: day - endDay, by: endedBy }
      : undefined;
  const seenLessRipe =
    ended?.by === "over-ripeness" && lastSaid(said, (one) => one.said.ripeness) !== undefined;
  return ended && !seenLessRipe && cutDay === undefined ? { ended } : {};
}

const wasDone = (said: readonly BoundHappening[], what: "twist off leaves" | "dry well"): boolean =>
  said.some((one) => one.said.done.includes(what));

function foreseen({ previous, past, part, day }: CarriedPart): Carried["foreseen"] {
  const { until, next } = past.parts[part]!;
  const ends = [until, ...next.slice(0, -1).map((stay) => stay.until)];
  return next.map((stay, index) => {
    const end = ends[index]!;
    return {
      moveWhen: end === "ripe" ? "ripe" : "day",
      ...(typeof end === "object" && { day: Math.max(0, end.day - day) }),
      place: previous.problem.places[stay.place]!.place.id,
      wrap: stay.wrap,
    };
  });
}

function broughtAlong(carried: CarriedPart, cutDay: number | undefined): Carried {
  const { previous, past, part, remaining, said, day } = carried;
  const lot = lotOf(carried);
  const planned = previous.plan.lots[part]!;
  const { lies } = past.parts[part]!;
  const daysBefore = cutDay === undefined ? (lot.carried?.daysBefore ?? 0) + day : day - cutDay;
  const seenBefore = cutDay === undefined ? (lot.carried?.seenGoodOn ?? 0) : 0;
  const safeUsed = safeTime(carried, cutDay);
  const wholePieces = remaining.portions % lot.splitUnit === 0 && cutDay === undefined;
  return {
    part: planned.id,
    origin: lot.carried?.origin ?? lot.lot.id,
    portions: remaining.portions,
    splitUnit: wholePieces ? lot.splitUnit : 1,
    mostADay: dailyLimit(lot, previous.problem.household),
    state: stateNow(carried, cutDay, safeUsed),
    daysBefore,
    seenGoodOn: lastSaid(said, (one) => one.said.seenGood) ? daysBefore : seenBefore,
    ...endedBefore(carried, cutDay),
    safeTimeUsed: safeUsed,
    dry: (lot.carried?.dry ?? false) || planned.preparation.includes("dry well") || wasDone(said, "dry well"),
    place: previous.problem.places[lies.place]!.place.id,
    wrap: lies.wrap,
    foreseen: foreseen(carried),
  };
}

function piecesLeft({ remaining }: CarriedPart, lot: BoundLot): Pick<Lot, "pieces"> {
  const { pieces } = lot.lot;
  if (pieces === undefined) return {};
  const left = Math.round((pieces * remaining.grams) / lot.grams);
  return left >= 1 ? { pieces: left } : {};
}

/** What is left of a part as a lot of the new haul, with its state, its clocks and its place. */
export function carriedLot(carried: CarriedPart, id: string): Lot {
  const { previous, part, remaining, said } = carried;
  const lot = lotOf(carried);
  const planned = previous.plan.lots[part]!;
  const cutDay = lastSaid(said, (one) => one.cutDay);
  const { commodity, washed, extraDays, typed } = lot.lot;
  const cut = planned.form === "cut" || cutDay !== undefined;
  return {
    id,
    commodity,
    grams: remaining.grams,
    ...piecesLeft(carried, lot),
    form: cut ? "cut" : "whole",
    tops: planned.tops && !wasDone(said, "twist off leaves") && cutDay === undefined,
    washed,
    // Days told of a lot that was cut since were those of the whole thing.
    extraDays: cutDay === undefined ? extraDays : 0,
    ...(typed !== undefined && { typed }),
    ...wantedThen(lot.wish, carried.day),
    carried: broughtAlong(carried, cutDay),
  };
}
