import { useRef } from "react";
import { useWords } from "../words/words.js";

interface HaulButtonsProps {
  readonly empty: boolean;
  readonly example: boolean;
  /** What was just replaced and can be brought back. */
  readonly replaced: "cleared" | "example" | undefined;
  readonly onClear: () => void;
  readonly onExample: () => void;
  readonly onBringBack: () => void;
}

/** Starting again (after asking), opening the example, and bringing back what either of them replaced. */
export function HaulButtons(props: HaulButtonsProps) {
  const say = useWords();
  const question = useRef<HTMLDialogElement>(null);
  const { empty, example, replaced, onClear, onExample, onBringBack } = props;
  return (
    <div className="haul-buttons">
      {example && <p className="soft">{say("haul.exampleNote")}</p>}
      {example && (
        <button type="button" className="main-button" onClick={onClear}>
          {say("haul.ownInstead")}
        </button>
      )}
      {!example && !empty && (
        <button type="button" onClick={() => question.current?.showModal()}>
          {say("haul.again")}
        </button>
      )}
      {!example && (
        <button type="button" onClick={onExample}>
          {say("haul.example")}
        </button>
      )}
      <p role="status" className="replaced">
        {replaced && say(replaced === "cleared" ? "haul.cleared" : "haul.exampleOpened")}
      </p>
      {replaced && (
        <button type="button" onClick={onBringBack}>
          {say("haul.bringBack")}
        </button>
      )}
      <dialog ref={question} aria-labelledby="clear-question">
        <form method="dialog">
          <h2 id="clear-question">{say("clear.question")}</h2>
          <p>{say("clear.detail")}</p>
          <p className="dialog-buttons">
            <button type="submit">{say("clear.no")}</button>
            <button type="submit" className="main-button" onClick={onClear}>
              {say("clear.yes")}
            </button>
          </p>
        </form>
      </dialog>
    </div>
  );
}
