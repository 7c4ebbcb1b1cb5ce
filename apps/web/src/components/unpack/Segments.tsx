import { useId } from "react";

interface SegmentsProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly { readonly value: Value; readonly words: string }[];
  readonly chosen: Value | undefined;
  readonly onChoose: (value: Value) => void;
}

/** A few answers side by side, each one touch: native radios under their words. */
export function Segments<Value extends string>({ legend, options, chosen, onChoose }: SegmentsProps<Value>) {
  const name = useId();
  return (
    <fieldset className="segments">
      <legend>{legend}</legend>
      {options.map(({ value, words }) => (
        <label key={value}>
          <input type="radio" name={name} checked={value === chosen} onChange={() => onChoose(value)} />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
