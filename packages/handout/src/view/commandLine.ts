import type { Finding } from "@keepwright/planner";
import type { HandoutContext } from "./context.js";
import { findingLine } from "./findingLine.js";

/** Where a haul or a plan was read from; `file` in quotes, as it was given. */
export interface ReadFrom {
  readonly from: "words" | "input" | "file" | "no file";
  readonly file?: string;
}

/** What a list in words is of: what came home, or what is wished for. */
export type ListOf = "haul" | "list";

/** Tells where a haul, a list or a plan was read from. */
export const readFromLine = (
  { speaker }: HandoutContext,
  what: ListOf | "plan",
  { from, file = "" }: ReadFrom,
): string => speaker.say(`door.${what}.${from}`, { file });

/** Tells which name a misspelt one is taken for; both in quotes. */
export const takenForLine = ({ speaker }: HandoutContext, typed: string, name: string): string =>
  speaker.say("door.takenFor", { typed, name });

/** Tells that a kitchen file, in quotes, is a good one. */
export const kitchenFineLine = ({ speaker }: HandoutContext, file: string): string =>
  speaker.say("door.kitchenFine", { file });

/** A finding that a plan can be made with all the same. */
export const warningLine = (context: HandoutContext, warning: Finding): string =>
  context.speaker.say("door.warning", { finding: findingLine(context, warning) });

/** What is being worked out, while it takes long. */
export type Work = "plan" | "draws" | "proof" | "why" | "judge" | "improve" | "buy" | "carry on";

/** The line shown meanwhile; `count`: how many times a plan is carried out. */
export const progressLine = ({ speaker }: HandoutContext, work: Work, count = 0): string =>
  speaker.say(`progress.${work}`, { count });
