import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";

/** Effects that spoil eating at the temperatures where a lot lies, by their names in the catalogue. */
export function eatingEffects(
  { places }: Pick<Problem, "places">,
  { produce }: BoundLot,
  programmes: readonly Programme[],
): string[] {
  const temperatures = programmes.flatMap(({ stays }) =>
    stays.map(({ place }) => places[place]!.place.temperature),
  );
  const harming = produce.eatingEffects.filter(({ above, below }) =>
    temperatures.some((celsius) => celsius > above && celsius < below),
  );
  return [...new Set(harming.map(({ effect }) => effect))];
}
