import type { Choice } from "../problem/programme.js";
import type { Evaluation } from "./evaluate.js";
import { leastGain, type Search } from "./search.js";

/** The better of two; the former where they are level. */
export const better = (one: Evaluation, other: Evaluation): Evaluation =>
  other.objective.total < one.objective.total - leastGain ? other : one;

/** Goes from a choice downhill, and tells where that leads. */
export function from(search: Search, choice: Choice, downhill: (search: Search) => void): Evaluation {
  search.goTo(choice);
  downhill(search);
  return search.current;
}

/** Goes on downhill from where the search has been, by other kinds of change. */
export function onFrom(
  search: Search,
  evaluation: Evaluation,
  downhill: (search: Search) => void,
): Evaluation {
  search.goBackTo(evaluation);
  downhill(search);
  return search.current;
}
