import type { Catalogue } from "@keepwright/catalogue";
import { type HandoutContext, questionLine } from "@keepwright/handout";
import type { Correction } from "../state/corrections.js";
import type { QuestionLine } from "../state/readLots.js";
import { AmountField } from "./AmountField.js";
import { KindPicker } from "./KindPicker.js";

interface QuestionItemProps {
  readonly line: QuestionLine;
  readonly catalogue: Catalogue;
  readonly context: HandoutContext;
  readonly onCorrect: (key: string, correction: Correction) => void;
}

/** Words that were not understood: asked about, answered with a kind and an amount, or left out on purpose. */
export function QuestionItem({ line, catalogue, context, onCorrect }: QuestionItemProps) {
  const correct = (correction: Correction) => onCorrect(line.key, correction);
  const leftOut = line.correction?.leftOut === true;
  const candidates = line.item.questions.flatMap((question) =>
    question.ask === "which commodity" ? question.candidates : [],
  );
  return (
    <div className={leftOut ? "line left-out" : line.lot ? "line" : "line asked"}>
      <p className="typed">{line.item.typed}</p>
      {!leftOut &&
        line.item.questions.map((question) => (
          <p key={question.ask} className="question">
            {questionLine(context, question)}
          </p>
        ))}
      <div className="fields">
        {!leftOut && (
          <>
            <KindPicker
              label="Kind"
              value={line.correction?.commodity ?? ""}
              candidates={candidates}
              catalogue={catalogue}
              onPick={(id) => correct({ commodity: id })}
            />
            <AmountField grams={line.correction?.grams} onChange={(grams) => correct({ grams })} />
          </>
        )}
        <button type="button" onClick={() => correct({ leftOut: !leftOut })}>
          {leftOut ? "Put back" : "Leave out"}
        </button>
      </div>
    </div>
  );
}
