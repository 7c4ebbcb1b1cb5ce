import { type RefObject, useEffect } from "react";

/**
 * The hand has left the keys for so long that it may go elsewhere [ms]. Less than a finger takes from the keys to what lies below; declared preference,
 * no source.
 */
const rest = 1000;

/**
 * Marks an element while something is typed in it, for the styles: what is off the screen may be left out of the layout then. Not by the focus: that goes with the
 * touch that comes next, and what is laid out at that moment would move from under the finger.
 */
export function useTypingClass(element: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const { current } = element;
    if (!current) return undefined;
    let resting: ReturnType<typeof setTimeout> | undefined;
    const rested = () => current.classList.remove("typing");
    const typed = () => {
      current.classList.add("typing");
      clearTimeout(resting);
      resting = setTimeout(rested, rest);
    };
    current.addEventListener("input", typed);
    return () => {
      current.removeEventListener("input", typed);
      clearTimeout(resting);
    };
  }, [element]);
}
