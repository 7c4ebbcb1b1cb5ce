import type { Catalogue } from "@keepwright/catalogue";
import type { HandoutContext } from "@keepwright/handout";
import type { Correction } from "../state/corrections.js";
import type { ReadLine } from "../state/readLots.js";
import { LotLine } from "./LotLine.js";
import { QuestionItem } from "./QuestionItem.js";

interface UnderstoodListProps {
  readonly lines: readonly ReadLine[];
  readonly catalogue: Catalogue;
  readonly context: HandoutContext;
  readonly onCorrect: (key: string, correction: Correction) => void;
}

const doubtful = (line: ReadLine): boolean => line.kind === "question" || line.item.questions.length > 0;

/** What was understood, line by line, each correctable; doubtful lines first in the count so that they are not missed. */
export function UnderstoodList({ lines, catalogue, context, onCorrect }: UnderstoodListProps) {
  const questions = lines.filter((line) => doubtful(line) && !line.correction?.leftOut).length;
  return (
    <section className="understood" aria-labelledby="understood-heading">
      <h2 id="understood-heading">What was understood</h2>
      <p role="status" className="understood-count">
        {lines.length === 0 ? "Nothing yet." : `${lines.length} ${lines.length === 1 ? "line" : "lines"}.`}{" "}
        {questions > 0 && (
          <strong>{questions === 1 ? "One needs a look." : `${questions} need a look.`}</strong>
        )}
      </p>
      <ul>
        {lines.map((line) => (
          <li key={line.key}>
            {line.kind === "lot" ? (
              <LotLine line={line} catalogue={catalogue} context={context} onCorrect={onCorrect} />
            ) : (
              <QuestionItem line={line} catalogue={catalogue} context={context} onCorrect={onCorrect} />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
