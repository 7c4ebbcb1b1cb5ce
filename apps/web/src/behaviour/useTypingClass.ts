import { type RefObject, useEffect } from "react";

/**
 * The hand has left the keys for so long that it may go elsewhere [ms]: longer than the plan takes, shorter than it takes to read what came. Declared
 * preference, no source.
 */
const rest = 2000;

/** Between two sections that are laid out, so that the page answers in between [ms]. Declared preference, no source. */
const between = 50;

/**
 * Marks an element while something is typed in it, for the styles: sections of the plan that are off the screen are left out of the layout then. Not by the focus:
 * that goes with the touch that comes next, and what is laid out at that moment would move from under the finger. Afterwards one section after another is laid out.
 */
export function useTypingClass(element: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const { current } = element;
    if (!current) return undefined;
    let next: ReturnType<typeof setTimeout> | undefined;
    const layOut = (left: readonly HTMLElement[]) => {
      const [first, ...others] = left;
      if (!first) {
        current.classList.remove("typing");
        return;
      }
      first.classList.add("laid-out");
      next = setTimeout(() => layOut(others), between);
    };
    const sections = () => [...document.querySelectorAll<HTMLElement>(".plan section")];
    const typed = () => {
      for (const section of sections()) section.classList.remove("laid-out");
      current.classList.add("typing");
      clearTimeout(next);
      next = setTimeout(() => layOut(sections()), rest);
    };
    current.addEventListener("input", typed);
    return () => {
      current.removeEventListener("input", typed);
      clearTimeout(next);
    };
  }, [element]);
}
