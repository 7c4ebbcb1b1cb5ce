import { type PlannerChange, type PlannerState, plannerReducer } from "../plannerState.js";
import { mergedText } from "./merged.js";
import { isEmpty, type Patch, patchBetween, patched, spliceBetween, unpatched } from "./patch.js";
import { changeName, type StepName, textStepName } from "./stepName.js";

/** One thing that was done and can be undone. Letters typed in one go are one step. */
export interface Step {
  /** Counts up from 1 and is never used twice. */
  readonly number: number;
  readonly name: StepName;
  readonly patch: Patch;
  /** The tab in which it was done. */
  readonly by: string;
  /** When it was last added to [ms since 1970]. */
  readonly at: number;
  /** Longest text within this step [UTF-16 units]. */
  readonly longest: number;
}

/** The state with what led to it, as far as it is at hand, and what was undone. */
export interface History {
  readonly state: PlannerState;
  /** Oldest first. */
  readonly past: readonly Step[];
  /** What would be done again, next first. */
  readonly future: readonly Step[];
  /** Number of the newest step there ever was. */
  readonly last: number;
}

export type Act =
  /** `from` is the text that the person saw when they changed it. */
  | { readonly act: "change"; readonly change: PlannerChange; readonly from?: string }
  | { readonly act: "undo" }
  | { readonly act: "redo" };

/** Something done in a tab; `number` counts up within the tab, so that nothing is taken twice. */
export interface Entry {
  readonly by: string;
  readonly number: number;
  readonly at: number;
  readonly act: Act;
}

export const noHistory = (state: PlannerState): History => ({ state, past: [], future: [], last: 0 });

/** Pause after which typing goes on in a new step [ms]. Declared preference, no source. */
export const pauseInTyping = 3000;
/** Letters that may be mended within one go of typing; beyond that, taking out is a step of its own and nothing typed is lost. */
const mostMended = 2;

/** The history after something was done. Where it changes nothing, the history is the same one. */
export function taken(history: History, entry: Entry): History {
  switch (entry.act.act) {
    case "undo":
      return undone(history);
    case "redo":
      return redone(history);
    case "change":
      return changed(history, entry, entry.act.change, entry.act.from);
  }
}

function undone(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    ...history,
    state: unpatched(history.state, step.patch),
    past: history.past.slice(0, -1),
    future: [step, ...history.future],
  };
}

function redone(history: History): History {
  const [step, ...future] = history.future;
  if (!step) return history;
  return {
    ...history,
    state: patched(history.state, step.patch),
    past: [...history.past, step],
    future,
  };
}

/** A text that was changed from another than there is now, changed in the same way from the one there is. */
function ontoNewest(change: PlannerChange, from: string | undefined, now: string): PlannerChange | undefined {
  if (change.change !== "text" || from === undefined || from === now) return change;
  const text = mergedText(from, change.text, now);
  return text === undefined ? undefined : { ...change, text };
}

function changed(history: History, entry: Entry, asked: PlannerChange, from: string | undefined): History {
  const { state } = history;
  const merged = ontoNewest(asked, from, state.text);
  const otherText = merged === undefined;
  const change = merged ?? asked;
  const next = plannerReducer(state, change);
  if (isEmpty(patchBetween(state, next))) return history;
  const grown = otherText ? undefined : inOneGo(history, entry, change, next);
  if (grown) return { ...history, state: next, past: [...history.past.slice(0, -1), grown] };
  const name = changeName(change, state, next);
  return pushed(keepingUndone(history, entry), entry, next, {
    ...name,
    ...(otherText && { what: "over another tab" }),
  });
}

function pushed(history: History, entry: Entry, next: PlannerState, name: StepName): History {
  const number = history.last + 1;
  const patch = patchBetween(history.state, next);
  const longest = Math.max(history.state.text.length, next.text.length);
  const step: Step = { number, name, patch, by: entry.by, at: entry.at, longest };
  return { state: next, past: [...history.past, step], future: [], last: number };
}

/** What was undone is not lost when something new is done: it comes before, done and taken back. */
function keepingUndone(history: History, entry: Entry): History {
  if (history.future.length === 0) return history;
  const tip = history.future.reduce((state, step) => patched(state, step.patch), history.state);
  const done: History = { ...history, state: tip, past: [...history.past, ...history.future], future: [] };
  if (isEmpty(patchBetween(tip, history.state))) return done;
  return pushed(done, entry, history.state, { what: "went back", words: "" });
}

/** The last step with the new letters in it, where these belong to it. */
function inOneGo(
  { state, past, future }: History,
  { by, at }: Entry,
  change: PlannerChange,
  next: PlannerState,
): Step | undefined {
  const step = past.at(-1);
  if (change.change !== "text" || !step?.patch.text || future.length > 0) return undefined;
  const goesOn = step.by === by && at >= step.at && at - step.at <= pauseInTyping;
  if (!goesOn || !["typed", "erased", "rewritten"].includes(step.name.what)) return undefined;
  const splice = spliceBetween(state.text, next.text);
  if (!splice) return undefined;
  const erasing = step.name.what === "erased";
  const mended = splice.removed.length <= mostMended && next.text.length >= step.longest - mostMended;
  if (erasing ? splice.inserted !== "" : !mended) return undefined;
  const start = unpatched(state, step.patch);
  const patch = patchBetween(start, next);
  if (isEmpty(patch)) return undefined;
  const longest = Math.max(step.longest, next.text.length);
  return { ...step, name: textStepName(start.text, next.text), patch, at, longest };
}
