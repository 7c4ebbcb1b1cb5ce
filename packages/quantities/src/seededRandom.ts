/**
 * A repeatable stream of numbers in [0, 1) for one seed, so that nothing in the model depends on unseeded chance.
 *
 * The generator is "mulberry32" (Tommy Ettinger, public domain, 2017): 32 bits of state, enough for shuffling a
 * search and for drawing uncertainties, not for cryptography.
 *
 * @param seed any finite number; its lower 32 bits are used
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
