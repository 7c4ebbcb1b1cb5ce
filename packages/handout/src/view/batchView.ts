import { plainText } from "../words/plainText.js";
import type { Speaker } from "../words/speaker.js";

export interface BatchProgress {
  /** Rows dealt with in this run and before. */
  readonly past: number;
  /** Of these, rows that were worked out in this run. */
  readonly worked: number;
  /** All rows; undefined where that is not known. */
  readonly all: number | undefined;
  readonly failed: number;
  /** Since this run began [s]. */
  readonly seconds: number;
}

/** A time to come [s], in words that claim no more than is known. */
export function timeLeft({ say, number }: Speaker, seconds: number): string {
  if (seconds < 10) return say("batch.left.moment");
  if (seconds < 95) return say("batch.left.seconds", { seconds: Math.round(seconds / 10) * 10 });
  if (seconds < 5400) return say("batch.left.minutes", { minutes: Math.round(seconds / 60) });
  return say("batch.left.hours", { hours: number(seconds / 3600, { maximumFractionDigits: 1 }) });
}

/** Rows that need to be worked out before a time left is told: one row says too little. Declared, no source. */
const enough = 4;

/** How far a batch is: rows done, rows that failed, and the time left. */
export function batchProgressLine(
  speaker: Speaker,
  { past, worked, all, failed, seconds }: BatchProgress,
): string {
  const { say } = speaker;
  const known = all !== undefined;
  const done = known ? say("batch.done", { past, count: all }) : say("batch.doneOfUnknown", { count: past });
  const left =
    known && worked >= enough && past < all ? [timeLeft(speaker, ((all - past) * seconds) / worked)] : [];
  const failures = failed > 0 ? [say("batch.failed", { count: failed })] : [];
  return [done, ...failures, ...left].join(", ");
}

export interface BatchCounts {
  readonly made: number;
  readonly kept: number;
  readonly failed: number;
  /** Rows made or kept of which some words were not understood. */
  readonly partly: number;
}

/** What came of a batch, one sentence each. */
export function batchSummary({ say }: Speaker, counts: BatchCounts, folder: string): string[] {
  const { made, kept, failed, partly } = counts;
  return [
    ...(made > 0 || kept + failed === 0 ? [say("batch.made", { count: made })] : []),
    ...(kept > 0 ? [say("batch.kept", { count: kept })] : []),
    ...(partly > 0 ? [say("batch.partly", { count: partly })] : []),
    ...(failed > 0 ? [say("batch.failures", { count: failed })] : []),
    say("batch.where", { folder: plainText(folder) }),
  ];
}

/** Something about one row, with the line it stands on. */
export const batchRowLine = ({ say }: Speaker, line: number, id: string, problem: string): string =>
  plainText(say("batch.row", { line: String(line), id, problem }));
