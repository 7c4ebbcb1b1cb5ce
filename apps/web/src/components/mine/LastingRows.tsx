import type { JudgedLotRow } from "@keepwright/handout";
import { useWords } from "../../words/words.js";
import { SpanBar } from "./SpanBar.js";

/** Rows shown at once; the others, which differ least, on opening. */
const shownAtOnce = 5;
/** Longest span that a bar shows [d]: what lasts longer runs to the end, and its words tell how long. */
const longestDrawn = 28;

/** How long each thing lasts as it lies and in the plan, what is worst off first. */
export function LastingRows({ rows }: { readonly rows: readonly JudgedLotRow[] }) {
  const say = useWords();
  const ends = rows.flatMap(({ here, planned }) => [here.late, planned.late]);
  const most = Math.min(longestDrawn, Math.max(...ends));
  const rest = rows.slice(shownAtOnce);
  const list = (some: readonly JudgedLotRow[]) => (
    <ul className="lasting-rows">
      {some.map((row) => (
        <LastingRow key={row.lot} row={row} most={most} />
      ))}
    </ul>
  );
  return (
    <>
      <h4>{say("mine.days")}</h4>
      {list(rows.slice(0, shownAtOnce))}
      {rest.length > 0 && (
        <details>
          <summary>{say("mine.days.more", { count: rest.length })}</summary>
          {list(rest)}
        </details>
      )}
    </>
  );
}

function LastingRow({ row, most }: { readonly row: JudgedLotRow; readonly most: number }) {
  const say = useWords();
  const sides = [
    { name: say("mine.yours"), side: row.here, plan: false },
    { name: say("mine.plan"), side: row.planned, plan: true },
  ];
  return (
    <li>
      <strong>{row.name}</strong>
      <dl className="waste-bars">
        {sides.map(({ name, side, plan }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <SpanBar low={side.early} high={side.late} most={most} plan={plan} />
              <span>{side.words}</span>
            </dd>
          </div>
        ))}
      </dl>
    </li>
  );
}
