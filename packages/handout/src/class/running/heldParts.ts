import type { ClassTopic } from "../classRequest.js";
import { type ClassPart, classParts } from "./parts.js";

/** A part with the minutes it gets. */
export interface HeldPart extends ClassPart {
  readonly minutes: number;
}

export interface HeldParts {
  /** In the order in which they are held; their minutes add up to those of the class. */
  readonly held: readonly HeldPart[];
  /** Left out for want of time, the first dropped first. */
  readonly dropped: readonly ClassPart[];
}

const leastOf = (parts: readonly ClassPart[]): number => parts.reduce((sum, { least }) => sum + least, 0);

/** Minutes shared out in whole minutes by weight, the largest remainders first; they add up. */
function shared(minutes: number, weights: readonly number[]): number[] {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  if (all === 0) return weights.map(() => 0);
  const exact = weights.map((weight) => (minutes * weight) / all);
  const whole = exact.map(Math.floor);
  const missing = minutes - whole.reduce((sum, one) => sum + one, 0);
  const byRemainder = exact
    .map((value, index) => ({ index, rest: value - Math.floor(value) }))
    .sort((one, other) => other.rest - one.rest || one.index - other.index);
  for (const { index } of byRemainder.slice(0, missing)) whole[index]! += 1;
  return whole;
}

/**
 * Fits the parts into the minutes: the least important are dropped until the rest have their shortest time, what is left over is shared out up to the
 * longest of each, and what is left after that is shared among all.
 * @param minutes whole, 10 to 240
 */
export function heldParts(minutes: number, topics: readonly ClassTopic[]): HeldParts {
  const wanted = classParts.filter((part) => part.topics?.some((topic) => topics.includes(topic)) ?? true);
  const byPriority = [...wanted].sort((one, other) => other.priority - one.priority);
  const dropped: ClassPart[] = [];
  let kept: readonly ClassPart[] = wanted;
  for (const part of byPriority) {
    if (leastOf(kept) <= minutes) break;
    dropped.push(part);
    kept = kept.filter((one) => one !== part);
  }
  const room = kept.map(({ least, most }) => most - least);
  const all = room.reduce((sum, one) => sum + one, 0);
  const over = minutes - leastOf(kept);
  const extra = shared(Math.min(over, all), room);
  const beyond = shared(
    Math.max(0, over - all),
    kept.map(({ most }) => most),
  );
  return {
    held: kept.map((part, index) => ({ ...part, minutes: part.least + extra[index]! + beyond[index]! })),
    dropped,
  };
}
