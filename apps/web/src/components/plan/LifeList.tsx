import { type HandoutContext, type LifeView, lotReasonLines } from "@keepwright/handout";
import type { LotReason, Plan } from "@keepwright/planner";
import { useWords } from "../../words/words.js";

interface LifeListProps {
  readonly heading: string;
  readonly lives: readonly LifeView[];
  readonly reasons: readonly LotReason[];
  readonly context: HandoutContext;
  readonly plan: Plan;
}

/** How long each lot lasts, shortest first, with the reason that tells most; the rest of the reasons on opening. */
export function LifeList({ heading, lives, reasons, context, plan }: LifeListProps) {
  return (
    <section className="words">
      <h3>{heading}</h3>
      <ul className="lives">
        {lives.map((life) => {
          const reason = reasons.find((each) => each.part === life.lot);
          const others = reason ? lotReasonLines(context, plan, reason) : [];
          return <Life key={life.lot} life={life} more={[...life.more, ...others]} />;
        })}
      </ul>
    </section>
  );
}

function Life({ life, more }: { readonly life: LifeView; readonly more: readonly string[] }) {
  const say = useWords();
  return (
    <li>
      <p className="life-line">
        <strong>{life.name}</strong>{" "}
        <span>{say("life.span", { span: life.span, ending: life.endedBy })}</span>
      </p>
      <p>{life.lead}</p>
      <p className="soft">{life.lookByLine}</p>
      {more.length > 0 && (
        <details>
          <summary aria-label={say("life.moreNamed", { name: life.name })}>{say("life.more")}</summary>
          <ul>
            {more.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </li>
  );
}
