import { startTransition, useEffect, useState } from "react";

/**
 * A value as each of so many sections shows it. A new one comes to one section after another, each in a task of its own, so that no task
 * draws them all and a letter typed meanwhile waits for one of them at most. What is there from the start is shown by all at once.
 */
export function useInTurn<Value>(newest: Value, sections: number): readonly Value[] {
  const [shown, setShown] = useState<readonly Value[]>(() => Array.from({ length: sections }, () => newest));
  const next = shown.findIndex((one) => one !== newest);
  useEffect(() => {
    if (next < 0) return;
    const timer = setTimeout(() => startTransition(() => setShown((before) => before.with(next, newest))));
    return () => clearTimeout(timer);
  }, [next, newest]);
  return shown;
}
