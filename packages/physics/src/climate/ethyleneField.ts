import type { AirTree } from "./airTree.js";

/**
 * Settled ethylene [µL/L] in every box: the neighbour's, plus what the box and all boxes behind it give off over its exchange.
 *
 * @param emission given off into each box [µL/h]; kept as it is
 * @param through scratch, one value a box
 * @param out one value a box and one for the room
 */
export function settleEthylene(
  tree: AirTree,
  emission: Float64Array,
  through: Float64Array,
  out: Float64Array,
): void {
  const { size, neighbour, litresPerHour } = tree;
  for (let box = 0; box < size; box++) through[box] = emission[box]!;
  for (let box = size - 1; box >= 0; box--) {
    const next = neighbour[box]!;
    if (next < size) through[next]! += through[box]!;
  }
  out[size] = tree.roomEthylene;
  for (let box = 0; box < size; box++) out[box] = out[neighbour[box]!]! + through[box]! / litresPerHour[box]!;
}
