import type { Suggestion } from "@keepwright/catalogue";
import { type RefObject, useId } from "react";
import { useWords } from "../../words/words.js";
import { AskOptions } from "./AskOptions.js";
import { useListKeys } from "./useListKeys.js";

interface AskFieldProps {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly text: string;
  readonly found: readonly Suggestion[];
  /** What a kind is called on the page. */
  readonly nameOf: (id: string) => string;
  readonly onType: (text: string) => void;
  readonly onPick: (id: string) => void;
}

/** One field over the whole catalogue: a list of kinds opens beneath while a name is typed, and the focus stays in the field. */
export function AskField({ field, text, found, nameOf, onType, onPick }: AskFieldProps) {
  const say = useWords();
  const id = useId();
  const typed = text.trim();
  const list = useListKeys({ typed, found, onPick, onEmpty: () => onType("") });
  return (
    <div className="ask-field">
      <label htmlFor={id}>{say("ask.field")}</label>
      <input
        id={id}
        ref={field}
        type="text"
        role="combobox"
        aria-expanded={list.open}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={list.open ? `${id}-${list.at}` : undefined}
        aria-describedby={`${id}-hint`}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="go"
        value={text}
        onChange={(event) => {
          list.again();
          onType(event.target.value);
        }}
        onKeyDown={list.onKeyDown}
      />
      <p id={`${id}-hint`} className="soft small ask-hint">
        {say("ask.hint")}
      </p>
      <AskOptions
        id={id}
        found={list.open ? found : []}
        marked={list.at}
        nameOf={nameOf}
        onPick={list.pick}
      />
      <p role="status" className={found.length > 0 || typed === "" ? "unseen" : "ask-none"}>
        {typed !== "" &&
          (found.length > 0 ? say("ask.found", { count: found.length }) : say("ask.none", { typed }))}
      </p>
    </div>
  );
}
