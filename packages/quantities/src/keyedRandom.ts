import { seededRandom } from "./seededRandom.js";

/**
 * 32 bits that depend on every character of a text: FNV-1a (Fowler, Noll and Vo, public domain; constants from memory), finished by the mixing of
 * MurmurHash3 (Appleby, public domain; constants from memory) so that texts that differ in their last character alone are far apart.
 */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

const streamOf = (seed: number, key: string, draw: number): (() => number) =>
  seededRandom(hashOf(`${seed} ${draw} ${key}`));

/**
 * A number in [0, 1) that depends on its seed, its key and the number of the draw alone: the same whatever else is drawn, and in whatever order. So two
 * things that are to be compared meet the same chance (common random numbers).
 *
 * @param key what is drawn, by name
 * @param draw which draw of it, from 0
 */
export const keyedUniform = (seed: number, key: string, draw: number): number => streamOf(seed, key, draw)();

/** A standard normal number that depends on its seed, its key and the number of the draw alone, as `keyedUniform`. Box and Muller 1958 (from memory). */
export function keyedNormal(seed: number, key: string, draw: number): number {
  const next = streamOf(seed, key, draw);
  // 1 − u lies in (0, 1]: its logarithm is finite.
  const radius = Math.sqrt(-2 * Math.log(1 - next()));
  return radius * Math.cos(2 * Math.PI * next());
}
