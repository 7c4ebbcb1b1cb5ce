import { type RefObject, useEffect } from "react";

const takesLetters = (element: Element | null): boolean =>
  element instanceof HTMLTextAreaElement ||
  element instanceof HTMLSelectElement ||
  (element instanceof HTMLInputElement && element.type === "text");

/** A letter or digit typed anywhere on the screen goes into the field; keys with Ctrl, Alt or ⌘ and open dialogs are left alone. */
export function useTypingAnywhere(field: RefObject<HTMLInputElement | null>, wanted: boolean): void {
  useEffect(() => {
    if (!wanted) return;
    const onKey = (event: KeyboardEvent) => {
      const plain = !event.ctrlKey && !event.altKey && !event.metaKey && !event.defaultPrevented;
      if (!plain || !/^[\p{L}\p{N}]$/u.test(event.key)) return;
      if (takesLetters(document.activeElement) || document.querySelector("dialog[open]")) return;
      // The letter itself follows into what has the focus now.
      field.current?.focus();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [field, wanted]);
}
