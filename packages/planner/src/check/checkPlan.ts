import { grams, portions, stateOnArrival } from "./amounts.js";
import { cutOpen, eatenWhileSafe } from "./cutOpen.js";
import { readyToEat, sameThing, table } from "./eating.js";
import type { PlanFault } from "./fault.js";
import { chances, life, safeUntil } from "./life.js";
import { replayed } from "./replayed.js";
import { room } from "./room.js";
import { cautionsGiven, cutInRefrigerator, freezing, safetyLimit } from "./safety.js";
import { spreads } from "./spread.js";
import { dates, staysInOrder, vents, wraps } from "./stays.js";
import { type CheckRequest, type Subject, subjectOf } from "./subject.js";
import { objective, waste } from "./terms.js";
import { knownThings, partNames, sameHousehold } from "./things.js";
import { wishes } from "./wishes.js";
import { wishesAgain } from "./wishesAgain.js";

/** Rules that need only the plan and what it was asked for. */
const rules: readonly ((subject: Subject) => PlanFault[])[] = [
  partNames,
  grams,
  portions,
  stateOnArrival,
  dates,
  wraps,
  room,
  table,
  sameThing,
  readyToEat,
  cutInRefrigerator,
  safetyLimit,
  cutOpen,
  eatenWhileSafe,
  freezing,
  cautionsGiven,
  life,
  safeUntil,
  chances,
  waste,
  wishes,
  objective,
];

/**
 * Checks a plan without believing it: adds up its grams, portions, litres and costs again, goes through the rules it must
 * keep, and simulates it anew from what it says. Shares no code with the search; the declared preferences (the weights)
 * are the same data.
 *
 * Without faults the list is empty. A plan of the wrong shape, or one that names what does not exist, is reported and not
 * checked further; a replay is made only where stays and vents make sense. What a plan does not tell cannot be
 * checked: the best life to be had elsewhere is believed.
 */
export function checkPlan(request: CheckRequest): PlanFault[] {
  const subject = subjectOf(request);
  if (Array.isArray(subject)) return subject;
  const unknown = [...knownThings(subject), ...sameHousehold(subject)];
  if (unknown.length > 0) return unknown;
  const order = [...staysInOrder(subject), ...vents(subject)];
  const moves = order.filter(({ rule }) => rule === "move to somewhere");
  // What a stay that is left out would cost and do is not known: neither terms nor replay mean anything then.
  const faults = rules.flatMap((rule) => (moves.length > 0 && rule === objective ? [] : rule(subject)));
  return [
    ...order,
    ...faults,
    ...(order.length === 0 ? [...replayed(subject), ...spreads(subject), ...wishesAgain(subject)] : []),
  ];
}
