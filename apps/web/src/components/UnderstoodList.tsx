import { type HandoutContext, shortText } from "@keepwright/handout";
import { memo, useMemo } from "react";
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
  const nths = useMemo(() => nthOf(lines), [lines]);
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
            <LotLine line={line} nth={nths.get(line)} {...rest} />
          </li>
        ))}
      </ul>
    </section>
  );
});

/** The number of each line among those of the same words, from 1; of a line with words of its own nothing. */
function nthOf(lines: readonly ReadLine[]): ReadonlyMap<ReadLine, number> {
  const words = ({ item }: ReadLine) => shortText(item.typed).toLowerCase();
  const count = new Map<string, number>();
  for (const line of lines) count.set(words(line), (count.get(words(line)) ?? 0) + 1);
  const met = new Map<string, number>();
  return new Map(
    lines
      .filter((line) => (count.get(words(line)) ?? 0) > 1)
      .map((line) => {
        const nth = (met.get(words(line)) ?? 0) + 1;
        met.set(words(line), nth);
        return [line, nth] as const;
      }),
  );
}
