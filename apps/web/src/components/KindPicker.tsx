import { type HandoutContext, kindName } from "@keepwright/handout";
import { useMemo } from "react";
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
  const kinds = useMemo(() => kindsByName(context), [context]);
  const likely = kinds.filter(({ id }) => candidates.includes(id));
  const option = ({ id, name }: { id: string; name: string }) => (
    <option key={id} value={id}>
      {name}
    </option>
  );
  return (
    <label className="field">
      <span>{say("line.kind")}</span>
      <select value={value} onChange={(event) => event.target.value && onPick(event.target.value)}>
        {value === "" && <option value="">{say("line.choose")}</option>}
        {likely.length > 0 && <optgroup label={say("line.likely")}>{likely.map(option)}</optgroup>}
        <optgroup label={say("line.allKinds")}>{kinds.map(option)}</optgroup>
      </select>
    </label>
  );
}

const kindsByName = (context: HandoutContext) =>
  [...context.catalogue.commodities.keys()]
    .map((id) => ({ id, name: kindName(context, id) }))
    .sort((first, second) => first.name.localeCompare(second.name, context.speaker.tag));
