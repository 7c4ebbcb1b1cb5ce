import type { PlannerState } from "../plannerState.js";

/** A stretch of the text and what stands in its place since. */
export interface Splice {
  /** Where the stretch begins, in UTF-16 units. */
  readonly start: number;
  readonly removed: string;
  readonly inserted: string;
}

type Fields = Partial<Omit<PlannerState, "text">>;

/** What parts one state from another, so that either can be had from the other. Only what differs is in it. */
export interface Patch {
  readonly text?: Splice;
  readonly before: Fields;
  readonly after: Fields;
}

/** The one stretch in which two texts differ; nothing where they are the same. */
export function spliceBetween(before: string, after: string): Splice | undefined {
  if (before === after) return undefined;
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start += 1;
  let end = 0;
  while (end < shorter - start && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  return {
    start,
    removed: before.slice(start, before.length - end),
    inserted: after.slice(start, after.length - end),
  };
}

/**
 * The text with one stretch in place of another. Where that other does not stand there, the record was damaged: then the words are added at the
 * end, since words twice are better than words lost.
 */
function spliced(text: string, start: number, from: string, to: string): string {
  if (text.slice(start, start + from.length) === from)
    return text.slice(0, start) + to + text.slice(start + from.length);
  return to === "" ? text : `${text}\n${to}`;
}

const same = (one: unknown, other: unknown): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);

/** What has to be changed to get from one state to another. */
export function patchBetween(before: PlannerState, after: PlannerState): Patch {
  const { text: _, ...fields } = after;
  const differing = (Object.keys(fields) as (keyof Fields)[]).filter((key) => !same(before[key], after[key]));
  const picked = (state: PlannerState): Fields =>
    Object.fromEntries(differing.map((key) => [key, state[key]])) as Fields;
  const text = spliceBetween(before.text, after.text);
  return { ...(text && { text }), before: picked(before), after: picked(after) };
}

export const isEmpty = ({ text, after }: Patch): boolean =>
  text === undefined && Object.keys(after).length === 0;

/** The state after the patch, from the one before it. */
export const patched = (state: PlannerState, { text, after }: Patch): PlannerState => ({
  ...state,
  ...after,
  text: text ? spliced(state.text, text.start, text.removed, text.inserted) : state.text,
});

/** The state before the patch, from the one after it. */
export const unpatched = (state: PlannerState, { text, before }: Patch): PlannerState => ({
  ...state,
  ...before,
  text: text ? spliced(state.text, text.start, text.inserted, text.removed) : state.text,
});
