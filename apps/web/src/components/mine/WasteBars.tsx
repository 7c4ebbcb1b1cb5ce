import type { BesideView } from "@keepwright/handout";
import { useWords } from "../../words/words.js";
import { SpanBar } from "./SpanBar.js";

/** What goes to waste on both sides: a bar, and beside it the range in mass and in portions. */
export function WasteBars({ view }: { readonly view: BesideView }) {
  const say = useWords();
  const most = Math.max(view.yours.high, view.yours.middle, view.plan.high, view.plan.middle);
  const rows = [
    { name: say("mine.yours"), row: view.yours, plan: false },
    { name: say("mine.plan"), row: view.plan, plan: true },
  ];
  return (
    <>
      <h4>{say("mine.waste")}</h4>
      <dl className="waste-bars">
        {rows.map(({ name, row, plan }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <SpanBar low={row.low} high={Math.max(row.high, row.middle)} most={most} plan={plan} />
              <strong>{row.grams}</strong> <span className="soft">({row.portions})</span>
            </dd>
          </div>
        ))}
      </dl>
      {view.how && <p className="soft small">{view.how}</p>}
    </>
  );
}
