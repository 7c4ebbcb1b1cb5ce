import { besideView, type HandoutContext, judgementView } from "@keepwright/handout";
import { useMemo } from "react";
import type { JudgementState, MadeJudgement } from "../../behaviour/useJudgement.js";
import { useProblemWords } from "../../behaviour/useProblemWords.js";
import { useWords } from "../../words/words.js";
import { Cautions } from "../Cautions.js";
import { LastingRows } from "./LastingRows.js";
import { OneMovePart } from "./OneMovePart.js";
import { WasteBars } from "./WasteBars.js";

interface BesidePanelProps {
  readonly state: JudgementState;
  /** Whether anything is said that can be judged. */
  readonly said: boolean;
  readonly context: HandoutContext;
  readonly onMove: (made: MadeJudgement) => void;
}

/** What it costs beside the plan: told once, politely, whenever it has changed and all of it is known. */
export function BesidePanel({ state, said, context, onMove }: BesidePanelProps) {
  const say = useWords();
  const { made, working } = state;
  const problem = useProblemWords(state);
  const view = useMemo(() => made && besideView(context, made.judgement, made.draws), [context, made]);
  const told = made?.whole && view ? view.told : "";
  return (
    <section className="beside" aria-labelledby="beside-heading" aria-busy={working}>
      <h3 id="beside-heading">{say("mine.beside")}</h3>
      <p role="status" className="beside-told">
        {said ? told : say("mine.nothingSaid")}
      </p>
      <p className="beside-working soft">{said && working && say("mine.working")}</p>
      {problem !== undefined && (
        <p role="alert" className="wrong wrong-box">
          {say("mine.problem", { problem: problem || say("mine.stopped") })}
        </p>
      )}
      {said && made && view && <Found made={made} view={view} context={context} onMove={onMove} />}
    </section>
  );
}

interface FoundProps extends Pick<BesidePanelProps, "context" | "onMove"> {
  readonly made: MadeJudgement;
  readonly view: ReturnType<typeof besideView>;
}

function Found({ made, view, context, onMove }: FoundProps) {
  const say = useWords();
  const { speaker } = context;
  const full = useMemo(() => judgementView(context, made.judgement), [context, made.judgement]);
  const aside = [...full.notTold, ...full.alsoSeen];
  return (
    <>
      <Cautions heading={speaker.say("heading.unsafe")} lines={full.unsafe} pressing />
      <WasteBars view={view} />
      <OneMovePart made={made} context={context} onMove={onMove} />
      <h4>{speaker.say("heading.conflicts")}</h4>
      {full.conflicts.length === 0 && <p>{say("mine.noConflicts")}</p>}
      <ol className="conflicts">
        {full.conflicts.map(({ lot, line, why }) => (
          <li key={lot}>
            <strong>{line}</strong>
            {why.map((reason) => (
              <span key={reason} className="below">
                {reason}
              </span>
            ))}
          </li>
        ))}
      </ol>
      <LastingRows rows={view.lots} />
      {aside.length > 0 && (
        <ul className="aside-lines soft">
          {aside.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </>
  );
}
