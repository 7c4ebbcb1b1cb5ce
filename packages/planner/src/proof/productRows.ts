import type { Entry, LinearModel } from "./linearModel.js";
import type { Placed } from "./placed.js";
import type { Plane } from "./stretchPlanes.js";

/**
 * What a lot in a stretch of air pays for the ethylene there above the least: for each day a column for the product of the portions eaten on it (last: left over) and of that ethylene. Products are
 * not linear; these hold them from below by their McCormick envelope (McCormick 1976, Mathematical Programming 10:147–175; from memory), which is exact where the whole lot lies there.
 *
 * @param portions of the whole lot
 * @param placed the lot's columns in the stretch
 * @param ethylene column of the ethylene there
 */
export function productRows(
  model: LinearModel,
  portions: number,
  placed: readonly Placed[],
  { slopes, least, most }: Plane,
  ethylene: number,
): void {
  const width = most - least;
  if (!(width > 0) || slopes.every((slope) => slope === 0)) return;
  const days = slopes.length - 1;
  const here = placed.map((one): Entry => [one.portions, -width]);
  const together: Entry[] = [];
  const uneaten: Entry[] = [...here];
  slopes.forEach((slope, day) => {
    const product = model.column(slope);
    together.push([product, 1]);
    const meals = placed.flatMap(({ eaten }) => eaten.filter((meal) => meal.day === day));
    // On no day more than the portions of the day in the most ethylene.
    if (day < days) {
      model.row(Number.NEGATIVE_INFINITY, 0, [
        [product, 1],
        ...meals.map(({ index }): Entry => [index, -width]),
      ]);
      uneaten.push(...meals.map(({ index }): Entry => [index, width]));
    } else {
      model.row(Number.NEGATIVE_INFINITY, 0, [[product, 1], ...uneaten]);
    }
  });
  // All together at least: width · portions here + portions of the lot · (ethylene − most).
  model.row(-portions * most, Number.POSITIVE_INFINITY, [...together, ...here, [ethylene, -portions]]);
}
