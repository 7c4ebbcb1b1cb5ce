import { useId } from "react";

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  /** Each with its words. */
  readonly choices: readonly (readonly [Value, string])[];
  /** What the choice comes to, below it. */
  readonly note?: string;
  readonly onChange: (value: Value) => void;
}

/** One out of a few. */
export function Choice<Value extends string>({ label, value, choices, note, onChange }: ChoiceProps<Value>) {
  const id = useId();
  return (
    <div className="field wide">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={note ? `${id}-note` : undefined}
        onChange={(event) => {
          const chosen = choices.find(([each]) => each === event.target.value);
          if (chosen) onChange(chosen[0]);
        }}
      >
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
      {note && (
        <p id={`${id}-note`} className="soft small">
          {note}
        </p>
      )}
    </div>
  );
}
