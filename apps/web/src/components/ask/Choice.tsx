import { useId } from "react";

interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value;
  readonly onChange: (value: Value) => void;
}

/** A few states of which one holds: native radio buttons in a row. */
export function Choice<Value extends string>({ legend, options, value, onChange }: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value}>
          <input
            type="radio"
            name={name}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
}
