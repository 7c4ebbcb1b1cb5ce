import type { Wanted } from "../problem/wanted.js";
import type { Said } from "./parts.js";
import type { StateChange } from "./stateWords.js";

/** The days that are wanted in some states, each once. */
function daysIn(said: Said): StateChange["wanted"][] {
  const all = [...said.states, ...said.parts.flatMap(({ states }) => states)].map(({ wanted }) => wanted);
  const days = all.filter((wanted) => typeof wanted === "object");
  return [...new Map(days.map((wanted) => [JSON.stringify(wanted), wanted])).values()];
}

/**
 * "1 by Friday, the rest later": after that Friday. Where no day, or more than one, was told it has to be asked.
 *
 * @param leading the day stands before the name ("For Friday: 3 pears, 2 plums"), so that it may be meant for all that follows
 */
export function withLaterDays(said: Said, leading = false): Said {
  const [day, more] = daysIn(said);
  const known = typeof day === "object" && more === undefined && (day.when === "by" || day.when === "on");
  const told = (change: StateChange): StateChange => {
    if (change.wanted !== undefined && leading) return { ...change, wanted: "unclear" };
    if (change.wanted !== "later") return change;
    return { ...change, wanted: known ? { when: "after", day: day.day } : "unclear" };
  };
  return {
    ...said,
    states: said.states.map(told),
    parts: said.parts.map((part) => ({ ...part, states: part.states.map(told) })),
  };
}

const isRipe = ({ ripeness }: StateChange): boolean => ripeness === "ripe" || ripeness === "very ripe";

/**
 * The day told in some states; "unclear" where there are several, or where it is left open whether the fruit is ripe or is to be: "3 ripe avocados by
 * Friday".
 */
export function wishIn(states: readonly StateChange[], ripens: boolean): Wanted | "unclear" | undefined {
  const told = states.flatMap(({ wanted }) => (wanted === undefined ? [] : [wanted]));
  const [wish] = told;
  if (wish === undefined) return undefined;
  if (typeof wish === "string" || new Set(told.map((one) => JSON.stringify(one))).size > 1) return "unclear";
  return wish.when === "by" && ripens && states.some(isRipe) ? "unclear" : wish;
}

/** States of the whole with those of a part of it: a day of its own stands in place of the whole's. */
export function statesOfPart(whole: readonly StateChange[], part: readonly StateChange[]): StateChange[] {
  if (part.every(({ wanted }) => wanted === undefined)) return [...whole, ...part];
  return [...whole.map(({ wanted: _, ...others }) => others), ...part];
}
