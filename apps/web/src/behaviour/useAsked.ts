import { useEffect, useReducer } from "react";
import { askDesk } from "./askDesk.js";
import type { AskAnswer, KindAsked } from "./askMessages.js";
import { startWorker } from "./startWorker.js";

/** One for the page's life: answers stay when the screen is left. */
const desk = askDesk(startWorker);

/** The answer to a question about one kind; undefined while it is worked out. */
export function useAsked(asked: KindAsked | undefined): AskAnswer | undefined {
  const [, heard] = useReducer((count: number) => count + 1, 0);
  const text = asked === undefined ? undefined : JSON.stringify(asked);
  useEffect(() => {
    if (text !== undefined) desk.ask(JSON.parse(text), heard);
  }, [text]);
  return asked && desk.known(asked);
}
