/**
 * Numbers in 0…1 that look like chance and are the same for the same seed (mulberry32, a public-domain generator). Only for choosing questions and
 * their order: nothing physical is drawn with it.
 */
export function seededNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The same things in an order that the seed chooses. */
export function shuffled<Thing>(things: readonly Thing[], seed: number): Thing[] {
  const next = seededNumbers(seed);
  const mixed = [...things];
  for (let last = mixed.length - 1; last > 0; last -= 1) {
    const other = Math.floor(next() * (last + 1));
    [mixed[last], mixed[other]] = [mixed[other]!, mixed[last]!];
  }
  return mixed;
}

/** A seed for one use of a seed, so that each use has a series of its own. */
export function seedFor(seed: number, use: string): number {
  let state = seed >>> 0;
  for (const character of use) state = Math.imul(state ^ character.charCodeAt(0), 0x01000193) >>> 0;
  return state;
}
