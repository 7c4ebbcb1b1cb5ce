import type { LotPace } from "@keepwright/physics";
import { keyedNormal } from "@keepwright/quantities";
import { type BoundLot, mostSpent } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";
import { startedFrom } from "../rules/lifeLeft.js";
import { prepare } from "../search/prepare.js";
import type { Spreads } from "./spreads.js";

/** What a draw makes of a part: how much of its life is spent on arrival, and its pace. */
export interface DrawnPart {
  readonly spent: number;
  readonly pace: LotPace;
}

/** Nothing is carried further than this [1]: beyond, nothing ends the lot, and ten years or a hundred are all one. */
const farthestCarried = Math.log(100);

/**
 * ln of how many times as long as published the middle lot lasts with a programme, alone [1]: what the model has carried the life by. It has a sign, as
 * the claim's has not: a life carried up and one carried down by the same error of the model about a kind go opposite ways.
 */
export function carriedBy(problem: Problem, lot: BoundLot, programme: Programme): number {
  const { solos } = prepare(problem);
  const { endDay, endedBy } = solos.outcome(lot, programme);
  const carried = Math.log(endDay / startedFrom(problem, lot, programme, endedBy));
  return Math.min(farthestCarried, Math.max(-farthestCarried, carried));
}

/**
 * A part in one draw. Age and biology belong to its lot (`key`), the errors of publications and of the model to its kind and form.
 *
 * A lot that is older than usual has spent more; where it ripens, how ripe it is has been seen, so what it has of ripening to go is that much shorter.
 */
export function drawnPart(
  lot: BoundLot,
  carried: number,
  key: string,
  seed: number,
  draw: number,
  spreads: Spreads,
): DrawnPart {
  const { produce, commodity, form } = lot;
  const kind = `${commodity.id} ${form.cut ? "cut" : "whole"}`;
  const normal = (what: string, of: string): number => keyedNormal(seed, `${what} ${of}`, draw);
  const spent = Math.min(mostSpent, Math.max(-1, lot.spent + spreads.age * normal("age", key)));
  const logFactor =
    spreads.biology * produce.lifeSpread * normal("biology", key) +
    spreads.reports * normal("reports", kind) +
    spreads.carried * carried * normal("carried", kind);
  const lifeFactor = Math.exp(logFactor);
  const left = (1 - spent) / (1 - lot.spent);
  return { spent, pace: { lifeFactor, ripeningFactor: lifeFactor * left } };
}
