import type { organs } from "../schema.js";

/** What tells how near two kinds are. */
export interface Traits {
  readonly id: string;
  readonly family: string;
  readonly organ: (typeof organs)[number];
  readonly skin: string;
}

/** Parts of the plant whose tissues are alike, each with the organs that belong to it. */
const parts: readonly (readonly Traits["organ"][])[] = [
  ["leaf", "head", "herb", "stem", "flower"],
  ["root", "tuber", "bulb"],
  ["fruit", "berry", "citrus", "melon", "fruit vegetable"],
  ["seed", "fungus"],
];
const partOf = (organ: Traits["organ"]) => parts.findIndex((organs) => organs.includes(organ));

/** One degree of nearness: how it is called, and whether two kinds are that near. */
export interface Nearness {
  readonly words: string;
  readonly holds: (one: Traits, other: Traits) => boolean;
}

/** Degrees of nearness, nearest first; the last holds for any two kinds. */
export const nearnesses: readonly Nearness[] = [
  {
    words: "same family, organ and skin",
    holds: (one, other) =>
      one.family === other.family && one.organ === other.organ && one.skin === other.skin,
  },
  {
    words: "same family and organ",
    holds: (one, other) => one.family === other.family && one.organ === other.organ,
  },
  {
    words: "same organ and skin",
    holds: (one, other) => one.organ === other.organ && one.skin === other.skin,
  },
  { words: "same organ", holds: (one, other) => one.organ === other.organ },
  { words: "same part of the plant", holds: (one, other) => partOf(one.organ) === partOf(other.organ) },
  { words: "no nearer than any kind", holds: () => true },
];
