import type { CountedUnit } from "../../state/enteredAmount.js";
import type { Say } from "../../words/words.js";

const counted: readonly CountedUnit[] = ["each", "head", "bulb", "ear", "hand", "piece", "bunch"];

/** A unit in words; units of mass are the same in every language. */
export function unitWords(say: Say, unit: string): string {
  const known = counted.find((each) => each === unit);
  return known ? say(`unit.${known}`) : unit;
}
