import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** "fit": the model was given this figure, or what it was given was inferred from it; "check": it was not; "shown": neither, an illustration or one publication beside another. */
export type Use = "fit" | "check" | "shown";

/** Ends of a published range; both the same where one figure is published. One missing: only a bound is published. */
export interface PublishedRange {
  readonly publishedLow?: number;
  readonly publishedHigh?: number;
}

/** One comparison of the model with a published figure, as docs/accuracy.md shows it. Published is either one figure or the ends of a range. */
export interface Comparison extends PublishedRange {
  /** Room of the model: air, respiration, … */
  readonly room: string;
  readonly what: string;
  readonly model: number;
  /** One figure: short for both ends the same. */
  readonly published?: number;
  readonly unit: string;
  readonly source: string;
  /** The published figure was recalled, not read. */
  readonly fromMemory: boolean;
  readonly use: Use;
  /** Largest factor between the model and the nearest published end still called agreement. */
  readonly tolerance: number;
  /** The model expects it never; its figure then only stands for that. */
  readonly never?: boolean;
  readonly note?: string;
}

export interface RecordedComparison extends Comparison {
  /** The published figure, the end of the range nearest to the model, or the model's own inside the range. */
  readonly nearest: number;
  /** model / nearest: 1 inside the range or on the right side of a bound. */
  readonly ratio: number;
  /** model / the geometric middle of the range; left out where only a bound is published. */
  readonly ratioToMiddle?: number;
  /** Only one end is published. */
  readonly bound: boolean;
  readonly within: boolean;
}

const folder = fileURLToPath(new URL("../../../../test-artefacts/accuracy/", import.meta.url));

/** Ends of a range from the cells of a table, an empty one being no end. */
export const publishedRange = (low: string | undefined, high: string | undefined): PublishedRange => ({
  ...(low && { publishedLow: Number(low) }),
  ...(high && { publishedHigh: Number(high) }),
});

/** A comparison with its ratio and verdict; a RangeError names one without a finite figure on either side, or with a range upside down. */
export function judged(comparison: Comparison): RecordedComparison {
  const { published, model, what, tolerance, ...rest } = comparison;
  const low = comparison.publishedLow ?? published;
  const high = comparison.publishedHigh ?? published;
  if (!Number.isFinite(model)) throw new RangeError(`${what}: the model gives ${model}.`);
  if ((low ?? high) === undefined || (low ?? 0) > (high ?? Number.POSITIVE_INFINITY))
    throw new RangeError(`${what}: the published range is from ${low} to ${high}.`);
  const nearest = Math.min(
    high ?? Number.POSITIVE_INFINITY,
    Math.max(low ?? Number.NEGATIVE_INFINITY, model),
  );
  const ratio = nearest === model ? 1 : model / nearest;
  const ends = {
    ...(low !== undefined && { publishedLow: low }),
    ...(high !== undefined && { publishedHigh: high }),
  };
  const middle = low === undefined || high === undefined ? undefined : Math.sqrt(low * high);
  return {
    ...rest,
    what,
    model,
    tolerance,
    ...ends,
    nearest,
    ratio,
    ...(middle !== undefined && { ratioToMiddle: model / middle }),
    bound: middle === undefined,
    within: Math.max(ratio, 1 / ratio) <= tolerance,
  };
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
