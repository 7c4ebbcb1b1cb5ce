import {
  type BatchCounts,
  batchProgressLine,
  batchRowLine,
  batchSummary,
  findingLine,
  type HandoutContext,
  jsonLine,
} from "@keepwright/handout";
import type { Door } from "../door/door.js";
import { plainFinding } from "../userError.js";
import type { RowOutcome } from "./outcome.js";

/** Tells of rows as they are done, and how far the whole is. */
export interface Teller {
  readonly tell: (outcome: RowOutcome) => void;
  readonly end: (folder: string) => BatchCounts;
}

export interface TellerOptions {
  readonly context: HandoutContext;
  /** Number of rows, where that is known. */
  readonly all: number | undefined;
  readonly json: boolean;
  /** Milliseconds on a clock that never goes back. */
  readonly clock: () => number;
}

/** Shortest time between two drawings of the bar [ms]. Declared: often enough to be seen to move. */
const pause = 200;
/** Width of the bar [characters]. */
const width = 24;
const clearLine = "\r\u001b[K";

const bar = (past: number, all: number | undefined): string => {
  if (!all) return "";
  const full = Math.floor((width * past) / all);
  return `[${"=".repeat(full)}${".".repeat(width - full)}] `;
};

/** One outcome as JSON has it. */
const plain = (outcome: RowOutcome): RowOutcome =>
  outcome.outcome === "failed" ? { ...outcome, problems: outcome.problems.map(plainFinding) } : outcome;

function linesOf(context: HandoutContext, outcome: RowOutcome): readonly string[] {
  const { line, id } = outcome;
  if (outcome.outcome === "kept") return [];
  const said =
    outcome.outcome === "failed"
      ? outcome.problems.map((one) => findingLine(context, one))
      : outcome.questions;
  return said.map((each) => batchRowLine(context.speaker, line, id, each));
}

function partlyUnderstood(outcome: RowOutcome): boolean {
  if (outcome.outcome === "made") return outcome.questions.length > 0;
  return outcome.outcome === "kept" && outcome.partly;
}

const counted = (before: BatchCounts, outcome: RowOutcome): BatchCounts => ({
  ...before,
  [outcome.outcome]: before[outcome.outcome] + 1,
  partly: before.partly + (partlyUnderstood(outcome) ? 1 : 0),
});

/** Tells on standard error what needs to be put right, draws a bar on a terminal, and prints one JSON object a row where asked. */
export function batchTeller(door: Door, { context, all, json, clock }: TellerOptions): Teller {
  const { speaker } = context;
  let counts: BatchCounts = { made: 0, kept: 0, failed: 0, partly: 0 };
  const began = clock();
  let drawn = Number.NEGATIVE_INFINITY;
  const wipe = door.errIsTerminal ? clearLine : "";
  const draw = () => {
    const now = clock();
    const past = counts.made + counts.kept + counts.failed;
    if (!door.errIsTerminal || (now - drawn < pause && past !== all)) return;
    drawn = now;
    const seconds = (now - began) / 1000;
    const worked = counts.made + counts.failed;
    const line = batchProgressLine(speaker, { past, worked, all, failed: counts.failed, seconds });
    door.err(`${wipe}${bar(past, all)}${line}`);
  };
  return {
    tell(outcome) {
      counts = counted(counts, outcome);
      const lines = linesOf(context, outcome);
      if (lines.length > 0) door.err(`${wipe}${lines.join("\n")}\n`);
      if (json) door.out(jsonLine(plain(outcome)));
      draw();
    },
    end(folder) {
      door.err(`${wipe}${batchSummary(speaker, counts, folder).join("\n")}\n`);
      return counts;
    },
  };
}
