import type { Suggestion } from "@keepwright/catalogue";
import { useWords } from "../../words/words.js";

interface AskOptionsProps {
  /** Of the field whose list it is. */
  readonly id: string;
  readonly found: readonly Suggestion[];
  readonly marked: number;
  readonly nameOf: (id: string) => string;
  readonly onPick: (id: string) => void;
}

/** The kinds found, each with the name it was known by where that is another. A touch takes one; the keys are the field's. */
export function AskOptions({ id, found, marked, nameOf, onPick }: AskOptionsProps) {
  const say = useWords();
  return (
    <div id={`${id}-list`} role="listbox" aria-label={say("ask.field")} hidden={found.length === 0}>
      {found.map(({ id: kind, name }, index) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the field's, which keeps the focus.
        <div
          key={kind}
          id={`${id}-${index}`}
          role="option"
          aria-selected={index === marked}
          tabIndex={-1}
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => onPick(kind)}
        >
          {nameOf(kind)} <OtherName name={name} shown={nameOf(kind)} />
        </div>
      ))}
    </div>
  );
}

/** The name that was recognised, where it is not the one shown. */
function OtherName({ name, shown }: { readonly name: string; readonly shown: string }) {
  const say = useWords();
  const same = shown.toLowerCase().startsWith(name.toLowerCase());
  return same ? null : <span className="soft">{say("ask.by", { name })}</span>;
}
