import type { Catalogue, KindGuidance } from "@keepwright/catalogue";
import {
  type AskedState,
  type AskTold,
  askedBeforehand,
  askFacts,
  askNames,
  askRoom,
  askTold,
  type HandoutContext,
  starNote,
} from "@keepwright/handout";
import type { Kitchen } from "@keepwright/planner";
import { type ReactNode, useMemo, useRef } from "react";
import type { AskAnswer as AskAnswerHeard } from "../../behaviour/askMessages.js";
import { useAsked } from "../../behaviour/useAsked.js";
import { useBodyClass } from "../../behaviour/useBodyClass.js";
import { useProblemWords } from "../../behaviour/useProblemWords.js";
import { useWords } from "../../words/words.js";
import { AskFacts } from "./AskFacts.js";
import { AskSources } from "./AskSources.js";
import { type AskFor, AskStates } from "./AskStates.js";
import { useFit } from "./useFit.js";

interface AskAnswerProps {
  readonly id: string;
  readonly context: HandoutContext;
  readonly catalogue: Catalogue;
  readonly guidance: KindGuidance | undefined;
  readonly kitchen: Kitchen;
  /** Whether the person's kitchen is another than the ordinary one. */
  readonly own: boolean;
  readonly asked: AskFor;
  readonly onAsk: (asked: AskFor) => void;
  readonly children: ReactNode;
}

/**
 * Everything about one kind, as large as fits. What is known of it stands there at once, what can do harm first; what has to be worked out comes into the room that is kept
 * for it.
 */
export function AskAnswer(props: AskAnswerProps) {
  const { id, context, guidance, kitchen, own, asked, onAsk, children } = props;
  const say = useWords();
  const box = useRef<HTMLElement>(null);
  const ripens = context.catalogue.commodities.get(id)?.ripening !== undefined;
  const { form, ripeness } = asked;
  const state = useMemo(
    () => (ripens && form === "whole" ? { form, ripeness } : { form }),
    [ripens, form, ripeness],
  );
  const heard = useAsked({ id, kitchen, ...state });
  const { message: problem, findings } = heard?.kind === "problem" ? heard : {};
  const failed = useProblemWords({ problem, findings });
  const { title, alsoCalled } = useMemo(() => askNames(context, id), [context, id]);
  const { told, room, facts, note } = useTold({ ...props, state, heard });
  useBodyClass("answered");
  useFit(box, told, facts);
  return (
    <section className="ask-answer" ref={box} aria-labelledby="ask-title">
      <h2 id="ask-title" tabIndex={-1}>
        {title}
      </h2>
      <AskPressing lines={told.pressing} />
      {heard?.kind === "problem" ? (
        <p role="alert" className="wrong wrong-box">
          {say("ask.failed", { message: failed || say("ask.stopped") })}
        </p>
      ) : (
        <AskFacts facts={facts} room={room} />
      )}
      <Lines lines={told.hazards} className="ask-hazards" />
      <AskStates asked={asked} own={own} ripens={ripens} onChange={onAsk} />
      {alsoCalled && <p className="soft ask-also">{alsoCalled}</p>}
      <AskSections told={told} />
      <div className="ask-foot">
        {note && <p className="soft">{note}</p>}
        {children}
        <AskSources id={id} context={context} guidance={guidance} />
      </div>
      <p role="status" className="unseen">
        {facts && say("ask.said", { name: title, where: facts.where, how: facts.how, until: facts.until })}
      </p>
    </section>
  );
}

interface ToldFor extends Pick<AskAnswerProps, "id" | "context" | "catalogue" | "guidance" | "kitchen"> {
  readonly state: AskedState;
  readonly heard: AskAnswerHeard | undefined;
}

/** In words: what is known at once, the most room the rest may take, and the rest as soon as it is there. */
function useTold({ id, context, catalogue, guidance, kitchen, state, heard }: ToldFor) {
  const { told, room } = useMemo(() => {
    const known = askedBeforehand(catalogue, id, kitchen, state);
    return { told: askTold(context, known, guidance), room: askRoom(context, known, kitchen) };
  }, [context, catalogue, id, kitchen, state, guidance]);
  const facts = useMemo(
    () => (heard?.kind === "asked" ? askFacts(context, heard.answer) : undefined),
    [context, heard],
  );
  const headings = told.sections.map(({ heading }) => heading);
  return { told, room, facts, note: starNote(context, [...(facts ?? room).first, ...headings]) };
}

/** What can do harm, before where it goes. */
function AskPressing({ lines }: { readonly lines: readonly string[] }) {
  const say = useWords();
  if (lines.length === 0) return null;
  return (
    <section className="ask-pressing" aria-label={say("plan.pressing")}>
      <Lines lines={lines} />
    </section>
  );
}

interface LinesProps {
  readonly lines: readonly string[];
  readonly className?: string;
}

function Lines({ lines, className }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <ul className={className}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

/** What is told of the kind, part by part; what stands above already is not said twice. */
function AskSections({ told }: { readonly told: AskTold }) {
  const above = new Set([...told.pressing, ...told.hazards]);
  return (
    <div className="ask-parts">
      {told.sections.map(({ part, heading, lines }) => (
        <section key={part} className={`ask-part ask-${part}`}>
          <h3>{heading}</h3>
          <Lines lines={lines.filter((line) => !above.has(line))} />
        </section>
      ))}
    </div>
  );
}
