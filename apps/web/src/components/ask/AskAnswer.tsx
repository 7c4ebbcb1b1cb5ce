import type { KindGuidance } from "@keepwright/catalogue";
import { askNames, askView, type HandoutContext } from "@keepwright/handout";
import type { Kitchen } from "@keepwright/planner";
import { type ReactNode, useMemo, useRef } from "react";
import { useAsked } from "../../behaviour/useAsked.js";
import { useWords } from "../../words/words.js";
import { AskFacts } from "./AskFacts.js";
import { AskSources } from "./AskSources.js";
import { type AskFor, AskStates } from "./AskStates.js";
import { useFit } from "./useFit.js";

interface AskAnswerProps {
  readonly id: string;
  readonly context: HandoutContext;
  readonly guidance: KindGuidance | undefined;
  readonly kitchen: Kitchen;
  /** Whether the person's kitchen is another than the ordinary one. */
  readonly own: boolean;
  readonly asked: AskFor;
  readonly onAsk: (asked: AskFor) => void;
  readonly children: ReactNode;
}

/** Everything about one kind, as large as fits. */
export function AskAnswer({ id, context, guidance, kitchen, own, asked, onAsk, children }: AskAnswerProps) {
  const say = useWords();
  const box = useRef<HTMLElement>(null);
  const ripens = context.catalogue.commodities.get(id)?.ripening !== undefined;
  const { form, ripeness } = asked;
  const state = ripens && form === "whole" ? { form, ripeness } : { form };
  const heard = useAsked({ id, kitchen, ...state });
  const { title, alsoCalled } = useMemo(() => askNames(context, id), [context, id]);
  const view = useMemo(
    () => (heard?.kind === "asked" ? askView(context, heard.answer, guidance) : undefined),
    [context, heard, guidance],
  );
  useFit(box, view);
  return (
    <section className="ask-answer" ref={box} aria-labelledby="ask-title">
      <h2 id="ask-title" tabIndex={-1}>
        {title}
      </h2>
      {heard?.kind === "problem" ? (
        <p role="alert" className="wrong wrong-box">
          {say("ask.failed", { message: heard.message })}
        </p>
      ) : (
        <AskFacts view={view} />
      )}
      <AskStates asked={asked} own={own} ripens={ripens} onChange={onAsk} />
      {alsoCalled && <p className="soft ask-also">{alsoCalled}</p>}
      <div className="ask-parts">
        {view?.sections.map(({ part, heading, lines }) => (
          <section key={part} className={`ask-part ask-${part}`}>
            <h3>{heading}</h3>
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
      <div className="ask-foot">
        {view?.note && <p className="soft">{view.note}</p>}
        {children}
        <AskSources id={id} context={context} guidance={guidance} />
      </div>
      <p role="status" className="unseen">
        {view && say("ask.said", { name: title, where: view.where, how: view.how, until: view.until })}
      </p>
    </section>
  );
}
