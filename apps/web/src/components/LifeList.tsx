import { type HandoutContext, type LifeView, lotReasonLines } from "@keepwright/handout";
import type { LotReason, Plan } from "@keepwright/planner";

interface LifeListProps {
  readonly heading: string;
  readonly lives: readonly LifeView[];
  readonly reasons: readonly LotReason[];
  readonly context: HandoutContext;
  readonly plan: Plan;
}

/** How long each lot lasts, shortest first; opened, it says why, from the computed amounts. */
export function LifeList({ heading, lives, reasons, context, plan }: LifeListProps) {
  return (
    <section className="words">
      <h3>{heading}</h3>
      <ul className="lives">
        {lives.map((life) => {
          const reason = reasons.find((each) => each.part === life.lot);
          return (
            <li key={life.lot}>
              <details>
                <summary>
                  <span className="life-name">{life.name}</span>
                  <span className="life-span">
                    {life.span}; {life.endedBy}
                  </span>
                </summary>
                <ul>
                  {[
                    life.lookByLine,
                    ...life.reasons,
                    ...(reason ? lotReasonLines(context, plan, reason) : []),
                  ].map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              </details>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
