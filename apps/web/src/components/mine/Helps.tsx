import {
  type HandoutContext,
  type ImprovementsView,
  improvementSource,
  improvementsView,
} from "@keepwright/handout";
import type { Improvement, Kitchen } from "@keepwright/planner";
import { useMemo, useState } from "react";
import type { Improving } from "../../behaviour/judgeMessages.js";
import type { PlanAsked } from "../../behaviour/planMessages.js";
import { useImprovements } from "../../behaviour/useImprovements.js";
import { useProblemWords } from "../../behaviour/useProblemWords.js";
import { portionRange } from "../../state/plannerState.js";
import { useWords } from "../../words/words.js";
import { SpanBar } from "./SpanBar.js";

/** A change taken over: a kitchen made by it, or so many portions a day. */
export type TakenOver =
  | { readonly kind: "kitchen"; readonly kitchen: Kitchen }
  | { readonly kind: "portions"; readonly portions: number };

interface HelpsProps {
  readonly asked: PlanAsked;
  readonly context: HandoutContext;
  readonly onTake: (taken: TakenOver) => void;
}

/** What would help most: looked for on a press, shown one by one as it is found, stopped at any time. */
export function Helps({ asked, context, onTake }: HelpsProps) {
  const say = useWords();
  const [did, setDid] = useState(false);
  const improvements = useImprovements(asked);
  const { stage, found, start, stop, asked: about } = improvements;
  const problem = useProblemWords(improvements);
  const begin = () => {
    setDid(false);
    start();
  };
  const take = (taken: TakenOver) => {
    setDid(true);
    onTake(taken);
  };
  return (
    <section className="helps" aria-labelledby="helps-heading">
      <h2 id="helps-heading">{say("helps.heading")}</h2>
      <p>{say("helps.lead")}</p>
      <p className="helps-buttons">
        <button type="button" className="main-button" onClick={stage === "working" ? stop : begin}>
          {say(stage === "working" ? "helps.stop" : stage === "not asked" ? "helps.start" : "helps.again")}
        </button>
        <Progress stage={stage} found={found} did={did} />
      </p>
      {problem !== undefined && (
        <p role="alert" className="wrong wrong-box">
          {say("helps.problem", { problem: problem || say("mine.stopped") })}
        </p>
      )}
      {found && about && (
        <FoundHelps found={found} asked={about} done={stage === "done"} context={context} onTake={take} />
      )}
    </section>
  );
}

type Stage = ReturnType<typeof useImprovements>["stage"];

/** Said aloud where it begins, stops and ends; the count between is only shown, for it would be read out again and again. */
function Progress(props: {
  readonly stage: Stage;
  readonly found: Improving | undefined;
  readonly did: boolean;
}) {
  const say = useWords();
  const { stage, found, did } = props;
  const { tried, of } = found?.step ?? { tried: 0, of: 0 };
  const said = (): string => {
    if (stage === "working") return say("helps.beginning");
    if (stage === "stopped")
      return tried > 0 ? say("helps.stopped", { tried, of }) : say("helps.stoppedEarly");
    if (stage === "done") return of > 0 ? say("helps.done", { of }) : "";
    return did ? say("helps.did") : "";
  };
  const counting = stage === "working" && of > 0;
  return (
    <span className="helps-progress">
      <span role="status" className={counting ? "unseen" : undefined}>
        {said()}
      </span>
      {counting && (
        <>
          <progress value={tried} max={of} aria-label={say("helps.heading")} />{" "}
          <span>{say("helps.tried", { tried, of })}</span>
        </>
      )}
    </span>
  );
}

interface FoundHelpsProps extends Pick<HelpsProps, "context" | "onTake"> {
  readonly found: Improving;
  readonly asked: PlanAsked;
  readonly done: boolean;
}

function FoundHelps({ found, asked, done, context, onTake }: FoundHelpsProps) {
  const say = useWords();
  const { improvements, tried, of } = found.step;
  const view = useMemo(
    () => improvementsView(context, improvements, { kitchen: asked.kitchen, lots: asked.lots }),
    [context, improvements, asked],
  );
  const rows = improvements.changes
    .map((one, index) => ({ one, kitchen: found.kitchens[index] }))
    .filter(({ one }) => one.matters)
    .map((row, index) => ({ ...row, line: view.helps[index]! }));
  const most = Math.max(improvements.expectedWaste.value, ...rows.map(({ one }) => one.gain.high));
  const [asItIs] = view.lead;
  return (
    <>
      {(of === 0 || improvements.changes.length > 0) && <p className="helps-lead">{asItIs}</p>}
      {tried > 0 && rows.length === 0 && (
        <p className="helps-none">{say(done ? "helps.none" : "helps.noneYet")}</p>
      )}
      <ol className="helps-rows">
        {rows.map((row) => (
          <HelpRow key={row.line} {...row} most={most} found={found} context={context} onTake={onTake} />
        ))}
      </ol>
      <Little view={view} context={context} />
    </>
  );
}

interface HelpRowProps extends Pick<FoundHelpsProps, "found" | "context" | "onTake"> {
  readonly one: Improvement;
  readonly kitchen: Kitchen | undefined;
  readonly line: string;
  readonly most: number;
}

/** Changes that a person can make at once: not a drawer that has to be bought first. */
function takenOver({ change }: Improvement, kitchen: Kitchen | undefined): TakenOver | undefined {
  if (change.name === "portion more a day")
    return change.to <= portionRange.most ? { kind: "portions", portions: change.to } : undefined;
  return kitchen && change.name !== "vented drawer more" ? { kind: "kitchen", kitchen } : undefined;
}

function HelpRow({ one, kitchen, line, most, found, context, onTake }: HelpRowProps) {
  const say = useWords();
  const taken = takenOver(one, kitchen);
  return (
    <li>
      <p className="helps-line">{line}</p>
      <SpanBar low={Math.max(0, one.gain.low)} high={one.gain.high} most={most} />
      <div className="helps-more">
        {taken && (
          <button
            type="button"
            aria-label={say("helps.doNamed", { change: line })}
            onClick={() => onTake(taken)}
          >
            {say("helps.do")}
          </button>
        )}
        <details>
          <summary aria-label={say("helps.fromNamed", { change: line })}>{say("helps.from")}</summary>
          {improvementSource(context, found.step.improvements, one).map((source) => (
            <p key={source}>{source}</p>
          ))}
        </details>
      </div>
    </li>
  );
}

function Little({ view, context }: { readonly view: ImprovementsView; readonly context: HandoutContext }) {
  const { speaker } = context;
  return (
    <>
      {view.little.length > 0 && (
        <details>
          <summary>{speaker.say("heading.helpsLittle")}</summary>
          <ul>
            {view.little.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      {view.how.length > 0 && (
        <details>
          <summary>{speaker.say("heading.improveHow")}</summary>
          {view.how.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </details>
      )}
    </>
  );
}
