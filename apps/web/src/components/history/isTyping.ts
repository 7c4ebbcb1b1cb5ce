/** Inputs in which nothing is written. */
const notWritten = ["checkbox", "radio", "button", "submit", "reset", "file", "range", "color"];

/** Whether keys pressed there are for the text: such a field undoes its own letters. Nor is anything undone behind an open question. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLInputElement) return !notWritten.includes(target.type);
  return document.querySelector("dialog[open]") !== null;
}
