import { type RefObject, type SyntheticEvent, useLayoutEffect, useRef } from "react";
import { movedPlace } from "../state/history/merged.js";

/** Keeps the caret of a box beside the same letters where its text is changed elsewhere, by another tab. */
export function useCaret(box: RefObject<HTMLTextAreaElement | null>, text: string) {
  const marked = useRef({ text, from: 0, to: 0 });
  useLayoutEffect(() => {
    const { text: before, from, to } = marked.current;
    const own = box.current;
    if (!own || before === text) return;
    const [first, last] = [movedPlace(from, before, text), movedPlace(to, before, text)];
    marked.current = { text, from: first, to: last };
    if (document.activeElement === own) own.setSelectionRange(first, last);
  }, [box, text]);
  return {
    remember({ currentTarget }: SyntheticEvent<HTMLTextAreaElement>) {
      const { value, selectionStart, selectionEnd } = currentTarget;
      marked.current = { text: value, from: selectionStart, to: selectionEnd };
    },
  };
}
