import type { PlannerState } from "../state/plannerState.js";
import type { Keeper, Kept } from "../storage/keeper.js";

/**
 * How long the hand rests before anything but the box hears of a letter [ms]: longer than between two letters of whoever types without looking for
 * them, so that half a word is not asked about. Declared preference, no source.
 */
export const rest = 250;

/** Whether nothing differs but what was typed, and what would be undone by it. */
export const onlyTyped = (now: PlannerState, before: PlannerState): boolean =>
  (Object.keys(now) as (keyof PlannerState)[]).every((key) => key === "text" || now[key] === before[key]);

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
  let told = keeper.now();
  let heard = told.state.text;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tellNow = () => {
    clearTimeout(timer);
    timer = undefined;
    told = keeper.now();
    tell(told);
  };
  const stop = keeper.listen(() => {
    const { state } = keeper.now();
    const letter = state.text !== heard && isLetter(state.text, heard);
    const waiting = timer !== undefined && state.text === heard;
    heard = state.text;
    if (!onlyTyped(state, told.state) || !(letter || waiting)) tellNow();
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
