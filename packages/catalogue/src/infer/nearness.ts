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

/** One degree of nearness: how it is called, and what two kinds that are so near have in common. */
export interface Nearness {
  readonly words: string;
  readonly common: (kind: Traits) => string;
}

/** Degrees of nearness, nearest first; the last holds for any two kinds. */
export const nearnesses: readonly Nearness[] = [
  {
    words: "same family, organ and skin",
    common: ({ family, organ, skin }) => `${family}|${organ}|${skin}`,
  },
  { words: "same family and organ", common: ({ family, organ }) => `${family}|${organ}` },
  { words: "same organ and skin", common: ({ organ, skin }) => `${organ}|${skin}` },
  { words: "same organ", common: ({ organ }) => organ },
  { words: "same part of the plant", common: ({ organ }) => String(partOf(organ)) },
  { words: "no nearer than any kind", common: () => "" },
];
