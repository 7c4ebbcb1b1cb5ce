import { type RefObject, useEffect } from "react";
import type { Steps } from "./useSteps.js";

/** Least way of a wipe [px], and how much longer it must be than high. */
const leastWipe = 60;
const flatter = 2;

const keySteps: Readonly<Record<string, -1 | 1>> = { ArrowLeft: -1, PageUp: -1, ArrowRight: 1, PageDown: 1 };

/**
 * Arrow keys, Page Up and Page Down (which a presenter's remote sends) and a wipe sideways, while the focus or the finger is within the evenings. A field that
 * uses a key keeps it, and past either end the keys do what they always do.
 */
export function useStepKeys(area: RefObject<HTMLElement | null>, { at, last, go }: Steps): void {
  useEffect(() => {
    const element = area.current;
    if (!element) return;
    const onKey = (event: KeyboardEvent) => {
      const step = keySteps[event.key];
      if (step === undefined || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
      if (event.target instanceof HTMLInputElement || at + step < 0 || at + step > last) return;
      event.preventDefault();
      go(at + step);
    };
    let began: { readonly x: number; readonly y: number } | undefined;
    const onStart = ({ touches }: TouchEvent) => {
      const [finger, second] = touches;
      began = finger && !second ? { x: finger.clientX, y: finger.clientY } : undefined;
    };
    const onEnd = ({ changedTouches: [finger], target }: TouchEvent) => {
      if (!began || !finger || target instanceof HTMLInputElement) return;
      const [x, y] = [finger.clientX - began.x, finger.clientY - began.y];
      if (Math.abs(x) >= leastWipe && Math.abs(x) > flatter * Math.abs(y)) go(at + (x < 0 ? 1 : -1));
    };
    element.addEventListener("keydown", onKey);
    element.addEventListener("touchstart", onStart, { passive: true });
    element.addEventListener("touchend", onEnd, { passive: true });
    return () => {
      element.removeEventListener("keydown", onKey);
      element.removeEventListener("touchstart", onStart);
      element.removeEventListener("touchend", onEnd);
    };
  }, [area, at, last, go]);
}
