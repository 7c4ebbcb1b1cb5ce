import type { Commodity } from "@keepwright/catalogue";
import { type Lot, type RipenessWord, ripenessWords } from "@keepwright/planner";
import type { Correction } from "../state/corrections.js";
import { useWords } from "../words/words.js";

interface StateFieldsProps {
  readonly lot: Lot;
  readonly commodity: Commodity;
  readonly correct: (correction: Correction) => void;
}

/** The state a lot is in: only what matters for its kind is asked. */
export function StateFields({ lot, commodity, correct }: StateFieldsProps) {
  const say = useWords();
  return (
    <>
      {commodity.ripening && <RipenessField lot={lot} correct={correct} />}
      <label className="field">
        <span>{say("line.form")}</span>
        <select
          value={lot.form}
          onChange={(event) => correct({ form: event.target.value === "cut" ? "cut" : "whole" })}
        >
          <option value="whole">{say("line.form.whole")}</option>
          <option value="cut">{say("line.form.cut")}</option>
        </select>
      </label>
      {commodity.water.transpirationWithTops && (
        <Tick words={say("line.tops")} ticked={lot.tops} onChange={(tops) => correct({ tops })} />
      )}
      <Tick words={say("line.washed")} ticked={lot.washed} onChange={(washed) => correct({ washed })} />
    </>
  );
}

function RipenessField({ lot, correct }: Omit<StateFieldsProps, "commodity">) {
  const say = useWords();
  const ripeness = typeof lot.ripeness === "string" ? lot.ripeness : "";
  return (
    <label className="field">
      <span>{say("line.ripeness")}</span>
      <select
        value={ripeness}
        onChange={(event) => event.target.value && correct({ ripeness: event.target.value as RipenessWord })}
      >
        {ripeness === "" && <option value="">{say("line.ripenessUsual")}</option>}
        {ripenessWords.map((word) => (
          <option key={word} value={word}>
            {say(`line.ripeness.${word}`)}
          </option>
        ))}
      </select>
    </label>
  );
}

interface TickProps {
  readonly words: string;
  readonly ticked: boolean;
  readonly onChange: (ticked: boolean) => void;
}

function Tick({ words, ticked, onChange }: TickProps) {
  return (
    <label className="tick">
      <input type="checkbox" checked={ticked} onChange={(event) => onChange(event.target.checked)} />
      <span>{words}</span>
    </label>
  );
}
