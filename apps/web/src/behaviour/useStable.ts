import { useCallback, useLayoutEffect, useRef } from "react";

/** A function that stays one and the same and does what the newest one does, for what is only called when something happens. */
export function useStable<Given extends readonly unknown[], Result>(
  act: (...given: Given) => Result,
): (...given: Given) => Result {
  const newest = useRef(act);
  useLayoutEffect(() => {
    newest.current = act;
  });
  return useCallback((...given: Given) => newest.current(...given), []);
}
