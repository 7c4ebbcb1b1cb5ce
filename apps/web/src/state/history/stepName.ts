import { isOrdinary } from "../kitchenOf.js";
import type { PlannerChange, PlannerState } from "../plannerState.js";
import { type Splice, spliceBetween } from "./patch.js";

/** Kinds of steps that carry the words they are about. */
export const namedSteps = [
  "typed",
  "erased",
  "rewritten",
  "over another tab",
  "corrected",
  "left out",
  "as read",
  "own kitchen",
  "forget kitchen",
  "forget word",
  "chosen",
  "released",
] as const;
/** Kinds of steps that are named by what they are alone. */
export const plainSteps = [
  "kitchen",
  "people",
  "days",
  "portions",
  "away",
  "units",
  "language",
  "region",
  "done",
  "not done",
  "lying",
  "cleared",
  "example",
  "file",
  "recovered",
  "went back",
  "from",
  "class",
  "missed",
  "not missed",
  "other",
] as const;

/** What a step in the history did, to be said in any language. */
export interface StepName {
  readonly what: (typeof namedSteps)[number] | (typeof plainSteps)[number];
  /** The person's own words that it is about; empty where the kind says it all. */
  readonly words: string;
  /** How many lines more it is about. */
  readonly more?: number;
}

/** Longest words kept for a name; the text itself is kept whole elsewhere. */
const longest = 60;
const plain = (what: StepName["what"]): StepName => ({ what, words: "" });
const about = (what: StepName["what"], words: string): StepName => ({
  what,
  words: words.trim().slice(0, longest),
});

/** The first line with words in it of the stretch from `start` to `end`, as far as the line reaches on both sides. */
function lineAt(text: string, start: number, end: number): string {
  const from = text.lastIndexOf("\n", start - 1) + 1;
  const stop = text.indexOf("\n", end);
  const lines = text.slice(from, stop === -1 ? undefined : stop).split("\n");
  return lines.find((line) => line.trim() !== "") ?? "";
}

/** What was done to the text: something typed, something taken out, or one in place of the other. */
export function textStepName(before: string, after: string): StepName {
  const splice = spliceBetween(before, after);
  return splice ? spliceName(before, after, splice) : plain("other");
}

function spliceName(before: string, after: string, { start, removed, inserted }: Splice): StepName {
  const name = firstLineName(before, after, { start, removed, inserted });
  const more = wordedLines(inserted === "" ? removed : inserted) - 1;
  return more > 0 ? { ...name, more } : name;
}

const wordedLines = (text: string): number => text.split("\n").filter((line) => line.trim() !== "").length;

function firstLineName(before: string, after: string, { start, removed, inserted }: Splice): StepName {
  const now = lineAt(after, start, start + inserted.length);
  const then = lineAt(before, start, start + removed.length);
  if (inserted === "") return about("erased", removed.includes("\n") || now === "" ? then : removed);
  return about(removed === "" ? "typed" : "rewritten", now === "" ? then : now);
}

/** Keys of corrections end in the number of the line among those with the same words. */
const lineOf = (key: string): string => key.replace(/#\d+$/, "");

const kitchenName = ({ kitchens }: PlannerState, key: string): string =>
  isOrdinary(key) ? "" : (kitchens.find((own) => own.key === key)?.kitchen.name ?? "");

/** What a change does, as the person would call it. */
export function changeName(change: PlannerChange, before: PlannerState, after: PlannerState): StepName {
  switch (change.change) {
    case "text":
      return textStepName(before.text, after.text);
    case "correct":
      return about(change.correction.leftOut ? "left out" : "corrected", lineOf(change.key));
    case "as read":
      return about("as read", lineOf(change.key));
    case "own kitchen":
      return about("own kitchen", change.own.kitchen.name);
    case "forget kitchen":
      return about("forget kitchen", kitchenName(before, change.key));
    case "forget word":
      return about("forget word", change.word);
    case "missed":
      return plain(change.missed ? "missed" : "not missed");
    case "done":
      return plain(change.done ? "done" : "not done");
    case "chosen":
      return about(change.at ? "chosen" : "released", lineOf(change.key));
    case "all lying":
    case "vent":
      return plain("lying");
    case "clear":
      return plain("cleared");
    case "open example":
      return plain("example");
    case "replace":
      return plain(change.how);
    default:
      return plain(change.change);
  }
}
