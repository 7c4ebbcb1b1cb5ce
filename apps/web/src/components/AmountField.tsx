import { useId, useState } from "react";

interface AmountFieldProps {
  readonly grams: number | undefined;
  readonly onChange: (grams: number) => void;
}

const mostGrams = 200_000;

/** An amount in grams. A value that cannot be is shown with what would work, and the last good one stays in force. */
export function AmountField({ grams, onChange }: AmountFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const shown = typed ?? (grams === undefined ? "" : String(Math.round(grams)));
  const wrong = typed !== undefined && !isAmount(typed);
  const accept = (text: string) => {
    setTyped(text);
    if (isAmount(text)) onChange(Number(text.replace(",", ".")));
  };
  return (
    <div className="field">
      <label htmlFor={id}>Grams</label>
      <input
        id={id}
        inputMode="decimal"
        value={shown}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => accept(event.target.value)}
        onBlur={() => setTyped((text) => (text !== undefined && isAmount(text) ? undefined : text))}
      />
      {wrong && (
        <p id={`${id}-wrong`} className="wrong">
          “{typed}” is not an amount. Write a number of grams above 0, up to 200,000.
        </p>
      )}
    </div>
  );
}

function isAmount(text: string): boolean {
  const value = Number(text.trim().replace(",", "."));
  return text.trim() !== "" && Number.isFinite(value) && value > 0 && value <= mostGrams;
}
