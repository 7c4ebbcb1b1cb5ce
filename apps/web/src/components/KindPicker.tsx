import { type HandoutContext, kindName } from "@keepwright/handout";
import { useDeferredValue, useMemo } from "react";
import { useWords } from "../words/words.js";

interface KindPickerProps {
  readonly value: string;
  /** Kinds the words may have meant, best first. */
  readonly candidates: readonly string[];
  readonly context: HandoutContext;
  readonly onPick: (commodity: string) => void;
}

/** A native list of every kind, likely ones first: one control that every phone, keyboard and screen reader knows. */
export function KindPicker({ value, candidates, context, onPick }: KindPickerProps) {
  const say = useWords();
  const kinds = kindsByName(context);
  const likely = kinds.filter(({ id }) => candidates.includes(id));
  // Some two hundred take as long to draw as all else about a line: they come in a piece of their own.
  const all = useDeferredValue(kinds, noKinds);
  const held = useMemo(
    () => (all === noKinds ? kinds.filter(({ id }) => id === value) : all),
    [all, kinds, value],
  );
  const option = ({ id, name }: Kind) => (
    <option key={id} value={id}>
      {name}
    </option>
  );
  return (
    <label className="field">
      <span>{say("line.kind")}</span>
      <select
        className="kinds"
        value={value}
        onChange={(event) => event.target.value && onPick(event.target.value)}
      >
        {value === "" && <option value="">{say("line.choose")}</option>}
        {likely.length > 0 && <optgroup label={say("line.likely")}>{likely.map(option)}</optgroup>}
        <optgroup label={say("line.allKinds")}>{held.map(option)}</optgroup>
      </select>
    </label>
  );
}

interface Kind {
  readonly id: string;
  readonly name: string;
}

const noKinds: readonly Kind[] = [];
const known = new WeakMap<HandoutContext, readonly Kind[]>();

/** Every kind by its name, in the order of the alphabet. */
function kindsByName(context: HandoutContext): readonly Kind[] {
  const before = known.get(context);
  if (before) return before;
  const kinds = [...context.catalogue.commodities.keys()]
    .map((id) => ({ id, name: kindName(context, id) }))
    .sort((first, second) => first.name.localeCompare(second.name, context.speaker.tag));
  known.set(context, kinds);
  return kinds;
}
