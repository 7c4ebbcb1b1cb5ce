import type { HandoutContext } from "@keepwright/handout";
import { memo } from "react";
import { type ReadLine, waits } from "../state/readLots.js";
import { useWords } from "../words/words.js";
import { type LineChanges, LotLine } from "./LotLine.js";

interface UnderstoodListProps extends LineChanges {
  readonly lines: readonly ReadLine[];
  readonly context: HandoutContext;
}

/** What was understood, line by line, each correctable; how many lines still need an answer is said first. */
export const UnderstoodList = memo(function UnderstoodList({ lines, ...rest }: UnderstoodListProps) {
  const say = useWords();
  const waiting = lines.filter(waits).length;
  return (
    <section className="understood" aria-labelledby="understood-heading">
      <h2 id="understood-heading">{say("understood.heading")}</h2>
      <div className="understood-count">
        <p role="status">
          {lines.length === 0 ? say("understood.none") : say("understood.count", { count: lines.length })}{" "}
          {waiting > 0 && <strong>{say("understood.waiting", { count: waiting })}</strong>}
        </p>
        {lines.length > 0 && <a href="#plan">{say("understood.toPlan")}</a>}
      </div>
      <ul className="lines">
        {lines.map((line) => (
          <li key={line.key} className={waits(line) ? "wide" : undefined}>
            <LotLine line={line} {...rest} />
          </li>
        ))}
      </ul>
    </section>
  );
});
