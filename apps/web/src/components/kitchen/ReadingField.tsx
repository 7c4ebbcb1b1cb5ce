import type { TypedReading } from "@keepwright/planner";
import { useId } from "react";
import { useKitchenWords } from "./kitchenWords.js";

interface TypedFieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly typed: string;
  readonly wrong: boolean;
  /** Id of the sentence that says what is wrong. */
  readonly wrongId: string;
  readonly onType: (typed: string) => void;
}

/** Something read off and typed in. What will not do stays as it was typed. */
export function TypedField({ label, hint, typed, wrong, wrongId, onType }: TypedFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={typed}
        aria-invalid={wrong}
        aria-describedby={[hint && `${id}-hint`, wrong && wrongId].filter(Boolean).join(" ") || undefined}
        onChange={(event) => onType(event.target.value)}
      />
      {hint && (
        <p id={`${id}-hint`} className="soft">
          {hint}
        </p>
      )}
    </div>
  );
}

interface ReadingFieldProps extends Omit<TypedFieldProps, "typed" | "onType"> {
  readonly reading: TypedReading | undefined;
  /** The unit of a reading not typed yet. */
  readonly usualUnit: TypedReading["unit"];
  readonly onRead: (reading: TypedReading) => void;
}

const units = ["°C", "°F"] as const;

/** A temperature with the unit it was read in, which stays as it is when the page is shown in the other. */
export function ReadingField({ reading, usualUnit, onRead, ...field }: ReadingFieldProps) {
  const say = useKitchenWords();
  const name = useId();
  const { typed, unit } = reading ?? { typed: "", unit: usualUnit };
  return (
    <div className="reading">
      <TypedField {...field} typed={typed} onType={(next) => onRead({ typed: next, unit })} />
      <fieldset className="segments">
        <legend>{say("reading.unit")}</legend>
        {units.map((each) => (
          <label key={each}>
            <input
              type="radio"
              name={name}
              checked={each === unit}
              onChange={() => onRead({ typed, unit: each })}
            />
            <span>{each}</span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}
