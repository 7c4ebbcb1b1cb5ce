import { useEffect } from "react";

let ahead = "";

/** Letters typed while a screen that takes them was on its way; they are given once. */
export function takeLettersAhead(): string {
  const letters = ahead;
  ahead = "";
  return letters;
}

const inField = (element: Element | null): boolean =>
  element instanceof HTMLInputElement ||
  element instanceof HTMLTextAreaElement ||
  element instanceof HTMLSelectElement;

/** Keeps what is typed for the screen that is on its way. */
export function useLettersAhead(wanted: boolean): void {
  useEffect(() => {
    if (!wanted) return;
    ahead = "";
    const onKey = ({ key, ctrlKey, altKey, metaKey }: KeyboardEvent) => {
      if (ctrlKey || altKey || metaKey || inField(document.activeElement)) return;
      if (key === "Backspace") ahead = ahead.slice(0, -1);
      else if (/^[\p{L}\p{N}]$/u.test(key) || (key === " " && ahead !== "")) ahead += key;
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [wanted]);
}
