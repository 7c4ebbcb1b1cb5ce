/** What a figure is over the draws. */
export interface DrawnFigure {
  readonly mean: number;
  /** Of the mean, for the number of draws. */
  readonly standardError: number;
  readonly median: number;
  /** 80 % of draws lie between these two. */
  readonly low: number;
  readonly high: number;
}

/** Quantile of sorted values, straight between two. */
function quantile(sorted: Float64Array, share: number): number {
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const above = Math.ceil(at);
  return sorted[below]! + (at - below) * (sorted[above]! - sorted[below]!);
}

/** Mean, its standard error, median and 80 % range of a figure over the draws (at least one). */
export function drawnFigure(values: Float64Array): DrawnFigure {
  const sorted = values.toSorted();
  // Summed in the order of size: the same draws in another order give the same to the last bit.
  const mean = sorted.reduce((sum, value) => sum + value, 0) / sorted.length;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const deviation = sorted.length < 2 ? 0 : Math.sqrt(squares / (sorted.length - 1));
  return {
    mean,
    standardError: deviation / Math.sqrt(sorted.length),
    median: quantile(sorted, 0.5),
    low: quantile(sorted, 0.1),
    high: quantile(sorted, 0.9),
  };
}

/** One figure less another, draw by draw: what they share falls out (common random numbers). */
export const drawByDraw = (one: Float64Array, other: Float64Array): Float64Array =>
  one.map((value, draw) => value - other[draw]!);
