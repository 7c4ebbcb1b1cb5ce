import type { RefObject } from "react";
import type { PlannerState } from "../../state/plannerState.js";
import type { Unused } from "../../storage/check.js";
import { useSettingsWords } from "../../words/settingsWords.js";
import { UnusedList } from "./UnusedList.js";

interface Opened {
  readonly name: string;
  readonly state: PlannerState;
  readonly unused: readonly Unused[];
}
interface ReplaceQuestionProps {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly opened: Opened | undefined;
  readonly onReplace: (opened: Opened) => void;
}

/** Asks before a file takes the place of what is here: what is in it, and what of it cannot be used. */
export function ReplaceQuestion({ dialog, opened, onReplace }: ReplaceQuestionProps) {
  const say = useSettingsWords();
  const lines = opened?.state.text.split("\n").filter((line) => line.trim() !== "") ?? [];
  return (
    <dialog ref={dialog} aria-labelledby="replace-question">
      {opened && (
        <form method="dialog">
          <h2 id="replace-question">{say("file.question", { name: opened.name })}</h2>
          <p>{say("file.lines", { count: lines.length, kitchens: opened.state.kitchens.length })}</p>
          {lines[0] !== undefined && <p>{say("file.first", { words: lines[0].slice(0, 60) })}</p>}
          {opened.unused.length > 0 && (
            <>
              <p className="wrong">{say("file.unused")}</p>
              <UnusedList unused={opened.unused} />
            </>
          )}
          <p>{say("file.undoable")}</p>
          <p className="dialog-buttons">
            <button type="submit">{say("file.no")}</button>
            <button type="submit" className="main-button" onClick={() => onReplace(opened)}>
              {say("file.yes")}
            </button>
          </p>
        </form>
      )}
    </dialog>
  );
}
