import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** One comparison of the model with a published figure, as docs/accuracy.md shows it. */
export interface Comparison {
  /** Room of the model: air, respiration, … */
  readonly room: string;
  readonly what: string;
  readonly model: number;
  readonly published: number;
  readonly unit: string;
  readonly source: string;
  /** The published figure was recalled, not read. */
  readonly fromMemory: boolean;
  /** "fit": the model was given this figure; "check": it was not. */
  readonly use: "fit" | "check";
  /** Largest factor between model and published still called agreement. */
  readonly tolerance: number;
  readonly note?: string;
}

export interface RecordedComparison extends Comparison {
  /** model / published */
  readonly ratio: number;
  readonly within: boolean;
}

const folder = fileURLToPath(new URL("../../../../test-artefacts/accuracy/", import.meta.url));

/** A comparison with its ratio and verdict. */
export function judged(comparison: Comparison): RecordedComparison {
  if (!Number.isFinite(comparison.model))
    throw new RangeError(`${comparison.what}: the model gives ${comparison.model}.`);
  const ratio = comparison.model / comparison.published;
  return { ...comparison, ratio, within: Math.max(ratio, 1 / ratio) <= comparison.tolerance };
}

/**
 * Adds comparisons to test-artefacts/accuracy/<name>.json, from which docs/accuracy.md is made; one with the same `what` is replaced. Each test
 * file writes a file of its own name, so that files run side by side without losing entries.
 */
export function record(name: string, comparisons: readonly Comparison[]): RecordedComparison[] {
  mkdirSync(folder, { recursive: true });
  const file = `${folder}${name}.json`;
  const before: RecordedComparison[] = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : [];
  const added = comparisons.map(judged);
  const kept = before.filter(({ what }) => !added.some((comparison) => comparison.what === what));
  writeFileSync(file, `${JSON.stringify([...kept, ...added], null, 2)}\n`);
  return added;
}
