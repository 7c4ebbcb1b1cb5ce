import { useEffect, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { useWords } from "../../words/words.js";
import { isTyping } from "./isTyping.js";
import { useStepWords } from "./useStepWords.js";

/**
 * Undo and redo, on every screen, each named by what it would do. They stand there when there is nothing to undo too, so that nothing moves
 * and the focus stays; and the keys for it work wherever no text is being typed.
 */
export function UndoButtons() {
  const say = useWords();
  const wordsOf = useStepWords();
  const [said, setSaid] = useState("");
  const { undo, redo, steps, keeper } = useDesk().haul;
  const takeBack = () => {
    if (!undo) return;
    keeper.undo();
    const left = undo === "forgotten" ? steps : Math.max(0, steps - 1);
    setSaid(say("history.undone", { step: wordsOf(undo), left }));
  };
  const doAgain = () => {
    if (!redo) return;
    keeper.redo();
    setSaid(say("history.redone", { step: wordsOf(redo) }));
  };
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const asked = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === "z";
      if (!asked || isTyping(event.target)) return;
      event.preventDefault();
      if (event.shiftKey) doAgain();
      else takeBack();
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  });
  return (
    <section className="history" aria-label={say("history.label")}>
      <button type="button" aria-disabled={!undo} aria-keyshortcuts="Control+Z" onClick={takeBack}>
        <span>{undo ? say("history.undoStep", { step: wordsOf(undo) }) : say("history.undo")}</span>
      </button>
      <button type="button" aria-disabled={!redo} aria-keyshortcuts="Control+Shift+Z" onClick={doAgain}>
        <span>{redo ? say("history.redoStep", { step: wordsOf(redo) }) : say("history.redo")}</span>
      </button>
      <p role="status" className="unseen">
        {said}
      </p>
    </section>
  );
}
