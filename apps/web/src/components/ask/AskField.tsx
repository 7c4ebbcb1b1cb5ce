import type { Suggestion } from "@keepwright/catalogue";
import { type KeyboardEvent, type RefObject, useId, useState } from "react";
import { useWords } from "../../words/words.js";

interface AskFieldProps {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly text: string;
  readonly found: readonly Suggestion[];
  /** What a kind is called on the page. */
  readonly nameOf: (id: string) => string;
  readonly onType: (text: string) => void;
  readonly onPick: (id: string) => void;
}

/**
 * One field over the whole catalogue: a list of kinds opens beneath while a name is typed. The focus stays in the field; arrow keys go
 * through the list, Enter takes the one marked, Escape closes the list and a second time empties the field.
 */
export function AskField({ field, text, found, nameOf, onType, onPick }: AskFieldProps) {
  const say = useWords();
  const id = useId();
  const [marked, setMarked] = useState(0);
  const [closed, setClosed] = useState(false);
  const typed = text.trim();
  const open = typed !== "" && found.length > 0 && !closed;
  const at = Math.min(marked, found.length - 1);
  const optionId = (index: number) => `${id}-${index}`;
  const pick = (kind: string) => {
    setMarked(0);
    onPick(kind);
  };
  const step = (by: number) => {
    if (closed) setClosed(false);
    else setMarked((at + by + found.length) % Math.max(1, found.length));
  };
  const keys: Record<string, (() => void) | undefined> = {
    ArrowDown: found.length > 0 ? () => step(1) : undefined,
    ArrowUp: found.length > 0 ? () => step(-1) : undefined,
    Enter: open && found[at] ? () => pick(found[at]!.id) : undefined,
    Escape: typed === "" ? undefined : () => (open ? setClosed(true) : onType("")),
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const act = event.nativeEvent.isComposing ? undefined : keys[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  };
  return (
    <div className="ask-field">
      <label htmlFor={id}>{say("ask.field")}</label>
      <input
        id={id}
        ref={field}
        type="text"
        role="combobox"
        aria-expanded={open}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={open ? optionId(at) : undefined}
        aria-describedby={`${id}-hint`}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="go"
        value={text}
        onChange={(event) => {
          setMarked(0);
          setClosed(false);
          onType(event.target.value);
        }}
        onKeyDown={onKeyDown}
      />
      <p id={`${id}-hint`} className="soft small ask-hint">
        {say("ask.hint")}
      </p>
      <div id={`${id}-list`} role="listbox" aria-label={say("ask.field")} hidden={!open}>
        {open &&
          found.map(({ id: kind, name }, index) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the field's, which keeps the focus.
            <div
              key={kind}
              id={optionId(index)}
              role="option"
              aria-selected={index === at}
              tabIndex={-1}
              onPointerDown={(event) => event.preventDefault()}
              onClick={() => pick(kind)}
            >
              {nameOf(kind)} <OtherName name={name} shown={nameOf(kind)} />
            </div>
          ))}
      </div>
      <p role="status" className={found.length > 0 || typed === "" ? "unseen" : "ask-none"}>
        {typed !== "" &&
          (found.length > 0 ? say("ask.found", { count: found.length }) : say("ask.none", { typed }))}
      </p>
    </div>
  );
}

/** The name that was recognised, where it is not the one shown. */
function OtherName({ name, shown }: { readonly name: string; readonly shown: string }) {
  const say = useWords();
  const same = shown.toLowerCase().startsWith(name.toLowerCase());
  return same ? null : <span className="soft">{say("ask.by", { name })}</span>;
}
