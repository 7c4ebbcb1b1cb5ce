import { useEffect, useState } from "react";

/** Where one is among the evenings, and the ways to go on. */
export interface Steps {
  readonly at: number;
  readonly last: number;
  /** Goes to an evening, and ends playing. */
  readonly go: (to: number) => void;
  readonly playing: boolean;
  readonly play: () => void;
  readonly stop: () => void;
}

/** How long an evening stands when they go by themselves [ms]: to read two figures aloud and say a sentence. Declared, no source. */
const eachFor = 4000;

/** Goes through so many evenings. By itself only when asked to, and then to the last one, from the first if it is there already. */
export function useSteps(count: number): Steps {
  const last = Math.max(0, count - 1);
  const [wanted, setWanted] = useState(0);
  const [playing, setPlaying] = useState(false);
  const at = Math.min(wanted, last);
  useEffect(() => {
    if (!playing) return;
    if (at >= last) {
      setPlaying(false);
      return;
    }
    const timer = setTimeout(() => setWanted(at + 1), eachFor);
    return () => clearTimeout(timer);
  }, [playing, at, last]);
  return {
    at,
    last,
    go(to) {
      setPlaying(false);
      setWanted(Math.min(last, Math.max(0, to)));
    },
    playing,
    play() {
      if (at === last) setWanted(0);
      setPlaying(true);
    },
    stop: () => setPlaying(false),
  };
}
