import type { Catalogue } from "@keepwright/catalogue";

interface KindPickerProps {
  readonly label: string;
  readonly value: string;
  /** Kinds the words may have meant, best first. */
  readonly candidates: readonly string[];
  readonly catalogue: Catalogue;
  readonly onPick: (commodity: string) => void;
}

/** A native list of every kind, likely ones first: one control that every phone, keyboard and screen reader knows. */
export function KindPicker({ label, value, candidates, catalogue, onPick }: KindPickerProps) {
  const nameOf = (id: string): string => catalogue.commodities.get(id)?.names.en.many ?? id;
  const all = [...catalogue.commodities.keys()].sort((first, second) =>
    nameOf(first).localeCompare(nameOf(second)),
  );
  const likely = candidates.filter((id) => catalogue.commodities.has(id));
  const option = (id: string) => (
    <option key={id} value={id}>
      {nameOf(id)}
    </option>
  );
  return (
    <label className="field">
      <span>{label}</span>
      <select value={value} onChange={(event) => event.target.value && onPick(event.target.value)}>
        {value === "" && <option value="">Choose …</option>}
        {likely.length > 0 && <optgroup label="Perhaps">{likely.map(option)}</optgroup>}
        <optgroup label="All kinds">{all.map(option)}</optgroup>
      </select>
    </label>
  );
}
