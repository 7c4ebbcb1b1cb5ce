import { useLayoutEffect } from "react";

/**
 * A class of the whole document while something is shown, for what else changes its looks meanwhile. The styles do not ask `:has()` of the body: the
 * browser then styles every second element of every screen again at each letter (decision 0020).
 */
export function useBodyClass(name: string): void {
  useLayoutEffect(() => {
    document.body.classList.add(name);
    return () => document.body.classList.remove(name);
  }, [name]);
}
