import { type Finding, InputError } from "@keepwright/planner";

/** Why a worker could make nothing. */
export interface WhatFailed {
  /** For whoever mends the page, in English or the browser's language: never shown. */
  readonly message: string;
  /** What is wrong with what was given, where it is that, as data to be told in any language. */
  readonly findings?: readonly Finding[];
}

/** What to answer for an error. */
export const whatFailed = (error: unknown): WhatFailed => ({
  message: error instanceof Error ? error.message : String(error),
  ...(error instanceof InputError && { findings: error.findings }),
});
