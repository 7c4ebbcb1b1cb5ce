import { useId, useRef, useState } from "react";
import { isName } from "../../state/ownKitchens.js";
import { useKitchenWords } from "./kitchenWords.js";

interface OwnKitchenButtonsProps {
  readonly name: string;
  readonly onRename: (name: string) => void;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
}

/** The kitchen's name, a copy of it, and its removal, which is asked about first. */
export function OwnKitchenButtons({ name, onRename, onCopy, onRemove }: OwnKitchenButtonsProps) {
  const say = useKitchenWords();
  const id = useId();
  const question = useRef<HTMLDialogElement>(null);
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const wrong = typed !== undefined && !isName(typed);
  return (
    <div className="own-buttons">
      <div className="field wide">
        <label htmlFor={id}>{say("own.name")}</label>
        <input
          id={id}
          autoComplete="off"
          value={typed ?? name}
          aria-invalid={wrong}
          aria-describedby={wrong ? `${id}-wrong` : undefined}
          onChange={(event) => {
            setTyped(event.target.value);
            if (isName(event.target.value)) onRename(event.target.value);
          }}
          onBlur={() => setTyped((text) => (text !== undefined && isName(text) ? undefined : text))}
        />
        {wrong && (
          <p id={`${id}-wrong`} className="wrong">
            {say("own.nameWrong", { name })}
          </p>
        )}
      </div>
      <button type="button" onClick={onCopy}>
        {say("own.copy")}
      </button>
      <button type="button" onClick={() => question.current?.showModal()}>
        {say("own.remove")}
      </button>
      <dialog ref={question} aria-labelledby={`${id}-question`}>
        <form method="dialog">
          <h2 id={`${id}-question`}>{say("own.removeQuestion", { name })}</h2>
          <p>{say("own.removeDetail")}</p>
          <p className="dialog-buttons">
            <button type="submit">{say("own.removeNo")}</button>
            <button type="submit" className="main-button" onClick={onRemove}>
              {say("own.removeYes")}
            </button>
          </p>
        </form>
      </dialog>
    </div>
  );
}
