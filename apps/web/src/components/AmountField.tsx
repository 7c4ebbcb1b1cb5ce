import { useId, useState } from "react";
import { useWords } from "../words/words.js";

interface AmountFieldProps {
  readonly grams: number | undefined;
  readonly onChange: (grams: number) => void;
}

const mostGrams = 200_000;

/** An amount in grams. A value that cannot be is shown with what would work, and the last good one stays in force. */
export function AmountField({ grams, onChange }: AmountFieldProps) {
  const say = useWords();
  const id = useId();
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const shown = typed ?? (grams === undefined ? "" : String(Math.round(grams)));
  const wrong = typed !== undefined && !isAmount(typed);
  const accept = (text: string) => {
    setTyped(text);
    if (isAmount(text)) onChange(amountOf(text));
  };
  return (
    <div className="field">
      <label htmlFor={id}>{say("line.grams")}</label>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={shown}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => accept(event.target.value)}
        onBlur={() => setTyped((text) => (text !== undefined && isAmount(text) ? undefined : text))}
      />
      {wrong && (
        <p id={`${id}-wrong`} className="wrong">
          {say("line.gramsWrong", { typed, most: mostGrams })}
        </p>
      )}
    </div>
  );
}

const amountOf = (text: string): number => Number(text.trim().replace(",", "."));

function isAmount(text: string): boolean {
  const value = amountOf(text);
  return text.trim() !== "" && Number.isFinite(value) && value > 0 && value <= mostGrams;
}
