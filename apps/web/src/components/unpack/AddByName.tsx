import { kindNames, namesFor, type Suggestion, stemKey, suggestKinds } from "@keepwright/catalogue";
import { type KeyboardEvent, useId, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { withLine, wordsForKind } from "../../state/addedLine.js";
import { useWords } from "../../words/words.js";

/** A line added by picking a kind from what is suggested while its name is typed, in either language, misspelt too. */
export function AddByName() {
  const say = useWords();
  const { haul, figures, tag } = useDesk();
  const [added, setAdded] = useState<string | undefined>(undefined);
  const add = (id: string) => {
    const words = wordsForKind(id, tag, figures);
    haul.change({ change: "text", text: withLine(haul.keeper.now().state.text, words) });
    setAdded(words);
  };
  return (
    <div className="add-by-name">
      <NameBox onPick={add} />
      <p role="status" className="soft">
        {added !== undefined && say("add.added", { name: added })}
      </p>
    </div>
  );
}

/** Name of the kind as the page's readers have it. */
function shownName(id: string, tag: string): string {
  const names = kindNames().get(id);
  return names ? namesFor(names, tag).many : id;
}

/** What the arrows do: along the suggestions and round. */
function moved(key: string, active: number, count: number): number | undefined {
  if (count === 0) return undefined;
  if (key === "ArrowDown") return (active + 1) % count;
  if (key === "ArrowUp") return active <= 0 ? count - 1 : active - 1;
  return undefined;
}

function NameBox({ onPick }: { readonly onPick: (id: string) => void }) {
  const say = useWords();
  const { language } = useDesk();
  const id = useId();
  const [typed, setTyped] = useState("");
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const found = open ? suggestKinds(kindNames(), typed, { language }) : [];
  const pick = (suggestion: Suggestion | undefined) => {
    if (!suggestion) return;
    onPick(suggestion.id);
    setTyped("");
    setOpen(false);
    setActive(-1);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const next = moved(event.key, active, found.length);
    if (next !== undefined) setActive(next);
    else if (event.key === "Enter") pick(found[Math.max(active, 0)]);
    else if (event.key === "Escape") {
      if (!open) setTyped("");
      setOpen(false);
    } else return;
    event.preventDefault();
  };
  return (
    <div className="name-box">
      <label htmlFor={id}>{say("add.label")}</label>
      <input
        id={id}
        role="combobox"
        aria-expanded={found.length > 0}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={found[active] ? `${id}-${found[active].id}` : undefined}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
          setOpen(true);
          setActive(-1);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => setOpen(false)}
      />
      <Suggestions id={id} label={say("add.label")} found={found} active={active} onPick={pick} />
      {open && typed.trim() !== "" && found.length === 0 && (
        <p className="none">{say("add.none", { typed })}</p>
      )}
    </div>
  );
}

interface SuggestionsProps {
  readonly id: string;
  readonly label: string;
  readonly found: readonly Suggestion[];
  readonly active: number;
  readonly onPick: (suggestion: Suggestion) => void;
}

function Suggestions({ id, label, found, active, onPick }: SuggestionsProps) {
  const { tag } = useDesk();
  return (
    <div
      id={`${id}-list`}
      role="listbox"
      tabIndex={-1}
      aria-label={label}
      className="suggestions"
      hidden={found.length === 0}
    >
      {found.map((suggestion, index) => {
        const shown = shownName(suggestion.id, tag);
        return (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the focus stays in the box, whose keys pick the active suggestion.
          <div
            key={suggestion.id}
            tabIndex={-1}
            id={`${id}-${suggestion.id}`}
            role="option"
            aria-selected={index === active}
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => onPick(suggestion)}
          >
            {shown}
            {stemKey(shown) !== stemKey(suggestion.name) && <span className="soft"> {suggestion.name}</span>}
          </div>
        );
      })}
    </div>
  );
}
