import type { Catalogue, Commodity } from "@keepwright/catalogue";
import { type HandoutContext, lotLine, questionLine } from "@keepwright/handout";
import { type RipenessWord, ripenessWords } from "@keepwright/planner";
import type { Correction } from "../state/corrections.js";
import type { UnderstoodLine } from "../state/readLots.js";
import { AmountField } from "./AmountField.js";
import { KindPicker } from "./KindPicker.js";

interface LotLineProps {
  readonly line: UnderstoodLine;
  readonly catalogue: Catalogue;
  readonly context: HandoutContext;
  readonly onCorrect: (key: string, correction: Correction) => void;
}

/**
 * One understood line. Closed it says what was understood; opened (Enter or Space on the summary) it can be corrected.
 * Lines with a question start open.
 */
export function LotLine({ line, catalogue, context, onCorrect }: LotLineProps) {
  const commodity = catalogue.commodities.get(line.lot.commodity);
  const correct = (correction: Correction) => onCorrect(line.key, correction);
  const leftOut = line.correction?.leftOut === true;
  const asked = line.item.questions.length > 0 && line.correction === undefined;
  const candidates = line.item.questions.flatMap((question) =>
    question.ask === "which commodity" ? question.candidates : [],
  );
  return (
    <details className={leftOut ? "line left-out" : asked ? "line asked" : "line"} open={asked || undefined}>
      <summary>
        <span className="typed">{line.item.typed}</span>
        <span className="read-as">
          {leftOut ? "left out" : lotLine(context, line.lot, line.correction ? [] : line.item.assumed)}
        </span>
      </summary>
      {line.item.questions.map((question) => (
        <p key={question.ask} className="question">
          {questionLine(context, question)}
        </p>
      ))}
      <div className="fields">
        <KindPicker
          label="Kind"
          value={line.lot.commodity}
          candidates={candidates}
          catalogue={catalogue}
          onPick={(id) => correct({ commodity: id })}
        />
        <AmountField grams={line.lot.grams} onChange={(grams) => correct({ grams })} />
        {commodity && <StateFields line={line} commodity={commodity} correct={correct} />}
        <button type="button" onClick={() => correct({ leftOut: !leftOut })}>
          {leftOut ? "Put back" : "Leave out"}
        </button>
      </div>
    </details>
  );
}

interface StateFieldsProps {
  readonly line: UnderstoodLine;
  readonly commodity: Commodity;
  readonly correct: (correction: Correction) => void;
}

function StateFields({ line, commodity, correct }: StateFieldsProps) {
  const ripeness = typeof line.lot.ripeness === "string" ? line.lot.ripeness : "";
  return (
    <>
      {commodity.ripening && (
        <label className="field">
          <span>Ripeness</span>
          <select
            value={ripeness}
            onChange={(event) =>
              event.target.value && correct({ ripeness: event.target.value as RipenessWord })
            }
          >
            {ripeness === "" && <option value="">as it usually comes</option>}
            {ripenessWords.map((word) => (
              <option key={word}>{word}</option>
            ))}
          </select>
        </label>
      )}
      <label className="field">
        <span>State</span>
        <select
          value={line.lot.form}
          onChange={(event) => correct({ form: event.target.value === "cut" ? "cut" : "whole" })}
        >
          <option>whole</option>
          <option>cut</option>
        </select>
      </label>
      {commodity.water.transpirationWithTops && (
        <label className="tick">
          <input
            type="checkbox"
            checked={line.lot.tops}
            onChange={(event) => correct({ tops: event.target.checked })}
          />
          <span>with leaves on</span>
        </label>
      )}
    </>
  );
}
