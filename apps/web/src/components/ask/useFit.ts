import { type RefObject, useLayoutEffect } from "react";

/**
 * Sizes of type tried [px] where the whole answer may fit into the window: declared preferences, no source. Smaller is not read from the back
 * of a room, and larger has too few words in a line. Each answer has the largest that leaves nothing to scroll.
 */
const sizes = { least: 17, most: 40 } as const;
/** Windows narrower or lower than this are held in a hand: there the page's own size holds, and one scrolls. */
const wide = "(min-width: 64rem) and (min-height: 40rem)";

const property = "--ask-size";

function fit(box: HTMLElement): void {
  box.style.removeProperty(property);
  if (!matchMedia(wide).matches) return;
  const page = document.documentElement;
  const fits = (size: number) => {
    box.style.setProperty(property, `${size}px`);
    return page.scrollHeight <= innerHeight && page.scrollWidth <= page.clientWidth;
  };
  let { least: low, most: high }: { least: number; most: number } = sizes;
  if (!fits(low)) {
    // It has to be scrolled anyway: in type that is easily read.
    box.style.removeProperty(property);
    return;
  }
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  box.style.setProperty(property, `${low}px`);
}

/** Whether something has to be scrolled where nothing had to be. */
const overflows = (box: HTMLElement): boolean =>
  box.style.getPropertyValue(property) !== "" && document.documentElement.scrollHeight > innerHeight;

/**
 * Sets the type of an answer as large as lets all of it be seen at once, anew for every answer and every size of the window. What comes later into the room kept for it
 * changes nothing, unless it is more than there was room for.
 */
export function useFit(box: RefObject<HTMLElement | null>, shown: unknown, later: unknown): void {
  useLayoutEffect(() => {
    if (shown === undefined) return;
    const again = () => box.current && fit(box.current);
    again();
    addEventListener("resize", again);
    return () => removeEventListener("resize", again);
  }, [box, shown]);
  useLayoutEffect(() => {
    if (later !== undefined && box.current && overflows(box.current)) fit(box.current);
  }, [box, later]);
}
