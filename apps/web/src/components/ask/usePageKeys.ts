import { useEffect } from "react";
import { addressOf } from "../../state/route.js";

/** Pixels by which the end of a page may be missed by rounding. */
const nearly = 2;

/** Page Down and Page Up, which also a presenter's remote control sends: on to the next answer where there is nothing left to scroll. */
export function usePageKeys(before: string | undefined, after: string | undefined): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return;
      const { scrollTop, scrollHeight, clientHeight } = document.documentElement;
      const atEnd = scrollTop + clientHeight >= scrollHeight - nearly;
      const to =
        event.key === "PageDown" && atEnd
          ? after
          : event.key === "PageUp" && scrollTop <= nearly
            ? before
            : undefined;
      if (to === undefined) return;
      event.preventDefault();
      location.hash = addressOf("ask", to);
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [before, after]);
}
