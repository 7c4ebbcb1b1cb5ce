import { useId } from "react";
import { Picture, type PictureName } from "./pictures.js";

export interface Option<Value extends string> {
  readonly value: Value;
  readonly words: string;
  readonly picture: PictureName;
  readonly note?: string;
}

interface OptionCardsProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly Option<Value>[];
  readonly chosen: readonly Value[];
  /** Several may be chosen. */
  readonly several?: boolean;
  readonly onChoose: (value: Value, chosen: boolean) => void;
}

/** Answers as pictures with words: native radios, or ticks where several may hold, each as large as its card. */
export function OptionCards<Value extends string>(props: OptionCardsProps<Value>) {
  const { legend, options, chosen, several = false, onChoose } = props;
  const name = useId();
  return (
    <fieldset className="cards">
      <legend className="unseen">{legend}</legend>
      {options.map(({ value, words, picture, note }) => (
        <label key={value} className="card">
          <input
            type={several ? "checkbox" : "radio"}
            name={name}
            checked={chosen.includes(value)}
            onChange={(event) => onChoose(value, event.target.checked)}
          />
          <Picture of={picture} />
          <span>
            {words}
            {note && <span className="soft below">{note}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
