import { useSyncExternalStore } from "react";

/** A narrow window, as the styles have it. */
const narrow = "(max-width: 30rem)";

const watch = (changed: () => void): (() => void) => {
  const asked = matchMedia(narrow);
  asked.addEventListener("change", changed);
  return () => asked.removeEventListener("change", changed);
};

/** Whether the window is so narrow that each thing is told once, in the shortest form that holds all that is needed. */
export const useNarrow = (): boolean => useSyncExternalStore(watch, () => matchMedia(narrow).matches);
