import { type ReactNode, useEffect, useRef } from "react";
import type { Screen } from "../state/route.js";
import { useWords } from "../words/words.js";

interface ScreenFocusProps {
  readonly screen: Screen;
  readonly children: ReactNode;
}

/** Names the document after its screen; after a change of screen, goes to its top, so that a screen reader begins there. */
export function ScreenFocus({ screen, children }: ScreenFocusProps) {
  const say = useWords();
  const shown = useRef(screen);
  useEffect(() => {
    document.title = say("screen.title", { screen: say(`screen.${screen}`) });
    if (shown.current === screen) return;
    shown.current = screen;
    document.getElementById("screen")?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [screen, say]);
  return children;
}
