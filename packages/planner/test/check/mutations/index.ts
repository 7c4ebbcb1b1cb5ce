import { eating, safety } from "./eating.js";
import { figures, replays } from "./figures.js";
import type { Mutation } from "./mutation.js";
import { room, stays } from "./stays.js";
import { amounts, things } from "./things.js";

/** Every rule broken at least once. */
export const mutations: readonly Mutation[] = [
  ...things,
  ...amounts,
  ...stays,
  ...room,
  ...eating,
  ...safety,
  ...figures,
  ...replays,
];
