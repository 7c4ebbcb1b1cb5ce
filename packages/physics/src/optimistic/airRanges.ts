/** What the air of every box may hold. Flat by box and, last, the room. */
export interface AirRanges {
  readonly roomEthylene: number;
  /** Days [d] on which windows of time begin, the first of them 0; the last window has no end. */
  readonly windows: readonly number[];
  /** Ethylene [µL/L] at least, in each window. */
  readonly leastEthylene: readonly Float64Array[];
  /** Ethylene [µL/L] at most, at any time, but for what the lot gives off that is followed. */
  readonly mostEthylene: Float64Array;
  /** Vapour density [kg/m³], at least and at most, at any time. */
  readonly leastDensity: Float64Array;
  readonly mostDensity: Float64Array;
  /** What 1 µL/h given off in a box adds to its ethylene at least [h/L]; 0 for the room. */
  readonly leastResistance: Float64Array;
  /** The same at most. */
  readonly mostResistance: Float64Array;
}

/** The window a day falls into. */
export function windowAt({ windows }: Pick<AirRanges, "windows">, day: number): number {
  let window = 0;
  while (window + 1 < windows.length && windows[window + 1]! <= day) window++;
  return window;
}
