import type { PlannerState } from "../state/plannerState.js";
import type { Keeper, Kept } from "../storage/keeper.js";

/**
 * How long the hand rests before anything but the box hears of a letter [ms]: longer than between two letters of whoever types without looking for
 * them, so that half a word is not asked about. Declared preference, no source.
 */
export const rest = 250;

/** What typing by itself changes beside the text: the first letter of a day dates the list, and keeps how it stood until then. */
const datedByTyping: ReadonlySet<keyof PlannerState> = new Set(["from", "before", "missed"]);

/** Whether nothing differs but what was typed, with the days that go with it, and what would be undone by it. */
export function onlyTyped(now: PlannerState, before: PlannerState): boolean {
  const typed = now.text !== before.text;
  return (Object.keys(now) as (keyof PlannerState)[]).every(
    (key) => now[key] === before[key] || (typed && (key === "text" || datedByTyping.has(key))),
  );
}

const lines = (text: string): number => text.split("\n").length;

/** Whether one text is the other but for one letter more, less or other, within a line. What is pasted, picked or taken back is no letter. */
export function isLetter(now: string, before: string): boolean {
  if (Math.abs(now.length - before.length) > 1 || lines(now) !== lines(before)) return false;
  const shorter = Math.min(now.length, before.length);
  let same = 0;
  while (same < shorter && now[same] === before[same]) same++;
  const after = Math.max(now.length, before.length) - same - 1;
  return now.slice(now.length - after) === before.slice(before.length - after);
}

/**
 * Tells of what is kept: of letters once the hand rests or the line is ended, of anything else at once.
 *
 * @returns stops telling
 */
export function whenRested(keeper: Pick<Keeper, "listen" | "now">, tell: (kept: Kept) => void): () => void {
  let heard = keeper.now().state;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tellNow = () => {
    clearTimeout(timer);
    timer = undefined;
    tell(keeper.now());
  };
  const stop = keeper.listen(() => {
    const { state } = keeper.now();
    const typed = onlyTyped(state, heard);
    const letter = typed && state.text !== heard.text && isLetter(state.text, heard.text);
    const waiting = typed && timer !== undefined && state.text === heard.text;
    heard = state;
    if (!letter && !waiting) tellNow();
    else if (letter) {
      clearTimeout(timer);
      timer = setTimeout(tellNow, rest);
    }
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}
