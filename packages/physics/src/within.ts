/** A value held to a range: below it the least, above it the most. */
export const within = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value));
