import { useId, useState } from "react";
import { useWords } from "../words/words.js";

interface WholeNumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly range: { readonly least: number; readonly most: number };
  readonly onChange: (value: number) => void;
}

/** A whole number within a range. What cannot be is shown with what would work; the last good value stays in force. */
export function WholeNumberField({ label, value, range, onChange }: WholeNumberFieldProps) {
  const say = useWords();
  const id = useId();
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const fits = (text: string) =>
    /^\d+$/.test(text.trim()) && Number(text) >= range.least && Number(text) <= range.most;
  const wrong = typed !== undefined && !fits(typed);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        inputMode="numeric"
        autoComplete="off"
        value={typed ?? String(value)}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => {
          setTyped(event.target.value);
          if (fits(event.target.value)) onChange(Number(event.target.value));
        }}
        onBlur={() => setTyped((text) => (text !== undefined && fits(text) ? undefined : text))}
      />
      {wrong && (
        <p id={`${id}-wrong`} className="wrong">
          {say("number.wrong", { typed, ...range })}
        </p>
      )}
    </div>
  );
}
