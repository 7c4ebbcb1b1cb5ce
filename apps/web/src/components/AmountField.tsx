import type { Commodity } from "@keepwright/catalogue";
import { soleNumber } from "@keepwright/planner";
import { useId, useState } from "react";
import { useDesk } from "../behaviour/desk.js";
import { type EnteredAmount, gramsOf, mostGrams, sameAmount } from "../state/enteredAmount.js";
import { decimalMarkOf } from "../state/region.js";
import { amountWords, inUnit, offeredUnits, stepped } from "../state/shownAmount.js";
import { useWords } from "../words/words.js";
import { Segments } from "./unpack/Segments.js";
import { unitWords } from "./unpack/unitWords.js";

interface AmountFieldProps {
  readonly amount: EnteredAmount | undefined;
  readonly commodity: Commodity | undefined;
  readonly onChange: (amount: EnteredAmount) => void;
}

/**
 * An amount in the unit the person thinks in, with a step up and down and its units one touch away. A value that cannot be
 * stays in the box with what would do, and the last good one stays in force.
 */
export function AmountField({ amount, commodity, onChange }: AmountFieldProps) {
  const say = useWords();
  const { haul, tag } = useDesk();
  const id = useId();
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const offered = offeredUnits(commodity, haul.state.units.mass, amount);
  const unit = amount?.unit ?? offered[0] ?? "g";
  const inAnother = useInAnotherUnit(amount, commodity);
  const amountOf = (text: string): number => soleNumber(text, unit, decimalMarkOf(tag)) ?? Number.NaN;
  const fits = (text: string) => gramsOf({ value: amountOf(text), unit }, commodity) !== undefined;
  const wrong = typed !== undefined && !fits(typed);
  const accept = (text: string) => {
    setTyped(text);
    if (fits(text)) onChange({ value: amountOf(text), unit });
  };
  const step = (direction: 1 | -1) => {
    const next = amount && stepped(amount, direction);
    setTyped(undefined);
    if (next && gramsOf(next, commodity) !== undefined) onChange(next);
  };
  const choose = (next: string) => {
    setTyped(undefined);
    const same = amount ? inAnother(next) : { value: 1, unit: next };
    if (same) onChange(same);
  };
  const less = amount && stepped(amount, -1);
  return (
    <div className="amount">
      <div className="field">
        <label htmlFor={id}>{say("line.amount")}</label>
        <div className="stepper">
          <Step words={say("line.less")} sign="−" able={less !== undefined} onStep={() => step(-1)} />
          <input
            id={id}
            inputMode="decimal"
            autoComplete="off"
            value={typed ?? (amount ? amountWords(amount.value, tag) : "")}
            aria-invalid={wrong}
            aria-describedby={wrong ? `${id}-wrong` : undefined}
            onChange={(event) => accept(event.target.value)}
            onBlur={() => setTyped((text) => (text !== undefined && fits(text) ? undefined : text))}
          />
          <Step words={say("line.more")} sign="+" able={amount !== undefined} onStep={() => step(1)} />
        </div>
        {wrong && (
          <p id={`${id}-wrong`} className="wrong">
            {say("line.amountWrong", { typed, most: mostGrams / 1000 })}
          </p>
        )}
      </div>
      <Segments
        legend={say("line.unit")}
        options={offered.map((value) => ({ value, words: unitWords(say, value) }))}
        chosen={unit}
        onChoose={choose}
      />
    </div>
  );
}

interface StepProps {
  readonly words: string;
  readonly sign: string;
  readonly able: boolean;
  readonly onStep: () => void;
}

const Step = ({ words, sign, able, onStep }: StepProps) => (
  <button type="button" aria-label={words} disabled={!able} onClick={onStep}>
    {sign}
  </button>
);

/** The amount in another unit, always from what was entered last: through however many units, it comes back to that. */
function useInAnotherUnit(amount: EnteredAmount | undefined, commodity: Commodity | undefined) {
  const [turned, setTurned] = useState<{ readonly from: EnteredAmount; readonly to: EnteredAmount }>();
  const from = turned && sameAmount(turned.to, amount) ? turned.from : amount;
  return (unit: string): EnteredAmount | undefined => {
    const to = from && (from.unit === unit ? from : inUnit(from, unit, commodity));
    if (from && to) setTurned({ from, to });
    return to;
  };
}
