interface TickProps {
  readonly words: string;
  readonly ticked: boolean;
  readonly onChange: (ticked: boolean) => void;
}

/** A box to tick, with its words to touch as well. */
export function Tick({ words, ticked, onChange }: TickProps) {
  return (
    <label className="tick">
      <input type="checkbox" checked={ticked} onChange={(event) => onChange(event.target.checked)} />
      <span>{words}</span>
    </label>
  );
}
