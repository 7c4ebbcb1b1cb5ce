import { type HandoutContext, lotLine, shortText } from "@keepwright/handout";
import { memo, type ReactNode, useMemo, useRef, useState } from "react";
import { useNarrow } from "../behaviour/useNarrow.js";
import { mostOpenNarrow } from "../state/manyThings.js";
import { type ReadLine, waits } from "../state/readLots.js";
import { useWords } from "../words/words.js";
import { type LineChanges, LotLine } from "./LotLine.js";

interface UnderstoodListProps extends Omit<LineChanges, "onSaid"> {
  readonly lines: readonly ReadLine[];
  readonly context: HandoutContext;
}

/** What was understood, line by line, each correctable; how many lines still need an answer is said first. */
export const UnderstoodList = memo(function UnderstoodList({ lines, ...rest }: UnderstoodListProps) {
  const say = useWords();
  const [said, setSaid] = useState("");
  const waiting = lines.filter(waits).length;
  const nths = useMemo(() => nthOf(lines), [lines]);
  const folded = useNarrow();
  const apart = useApart(lines, folded);
  const plain = lines.filter((line) => !apart.includes(line));
  const drawn = (line: ReadLine) => (
    <li key={line.key} className={waits(line) ? "wide" : undefined}>
      <LotLine line={line} nth={nths.get(line)} onSaid={setSaid} {...rest} />
    </li>
  );
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
      {lines.length > 0 && <p className="soft usual-note">{say("understood.usual")}</p>}
      <p role="status" className="unseen">
        {said}
      </p>
      {apart.length > 0 && <ul className="lines">{apart.map(drawn)}</ul>}
      {folded && plain.length > 0 && <Folded lines={plain} context={rest.context} drawn={drawn} />}
    </section>
  );
});

/**
 * Lines in a narrow window: the first few stand by themselves, and what is in doubt or was touched; the others run on, and open to one below the other. A line
 * that once stood by itself stays so, that none goes from under the finger that answers it.
 */
function useApart(lines: readonly ReadLine[], folded: boolean): readonly ReadLine[] {
  const stood = useRef(new Set<string>());
  if (!folded) return lines;
  for (const [index, line] of lines.entries())
    if (index < mostOpenNarrow.lines || waits(line) || line.correction || line.recalled)
      stood.current.add(line.key);
  return lines.filter(({ key }) => stood.current.has(key));
}

interface FoldedProps extends Pick<UnderstoodListProps, "lines" | "context"> {
  readonly drawn: (line: ReadLine) => ReactNode;
}

function Folded({ lines, context, drawn }: FoldedProps) {
  const say = useWords();
  const [open, setOpen] = useState(false);
  return (
    <>
      <p className="run-on">
        {lines.map((line) => line.lot && <span key={line.key}>{lotLine(context, line.lot)}</span>)}
      </p>
      <details className="fold" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>{say("understood.fold")}</summary>
        {open && <ul className="lines">{lines.map(drawn)}</ul>}
      </details>
    </>
  );
}

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
