import { assumedLine, type HandoutContext, lotLine, questionLine, shortText } from "@keepwright/handout";
import type { Question } from "@keepwright/planner";
import { memo, useId, useState } from "react";
import type { Correction } from "../state/corrections.js";
import { leftOutAlways, type WordMeant } from "../state/meant.js";
import { isLeftOut, type ReadLine, stillAsked, waits } from "../state/readLots.js";
import { useWords } from "../words/words.js";
import { LineFields } from "./LineFields.js";
import { useLineActs } from "./unpack/useLineActs.js";

export interface LineChanges {
  /** `meant` is what the answer says of a word in every list. */
  readonly onCorrect: (key: string, correction: Correction, meant?: WordMeant) => void;
  /** `word` is asked about again. */
  readonly onAsRead: (key: string, word?: string) => void;
  /** Has it said aloud what was done. */
  readonly onSaid: (words: string) => void;
}

/** Which fields of a line are open: none, what answers its questions, or all. */
type Fields = "none" | "answers" | "all";

/** Whether one touch answers it: one of some kinds, or that it is left out, as what is no fruit or vegetable. */
const inOneTouch = (question: Question): boolean =>
  question.ask === "what is this" ||
  (question.ask === "which commodity" && question.candidates.length > 0) ||
  (question.ask === "unsafe or other" && question.candidates.length === 0);

/** What is open of a line until it is answered: no more than the touches that answer it, where one does. */
function answersTo(line: ReadLine): Fields {
  if (!waits(line)) return "none";
  const { item, correction } = line;
  const besides = item.kind === "lot" && item.questions.some(({ ask }) => ask === "what is this");
  // A kind was chosen of which the words do not tell how much.
  const chosen = line.kind === "question" && correction !== undefined;
  return item.questions.every(inOneTouch) && !besides && !chosen ? "answers" : "all";
}

interface LotLineProps extends LineChanges {
  readonly line: ReadLine;
  /** Its number among lines of the same words, where there are several. */
  readonly nth?: number | undefined;
  readonly context: HandoutContext;
}

/** One thing that was read: what it is taken to be, with one touch to change it and one to put back what was read. */
export const LotLine = memo(function LotLine({ line, nth, context, ...changes }: LotLineProps) {
  const say = useWords();
  const id = useId();
  const { ref, correct, asRead } = useLineActs(line, changes);
  const [opened, setOpened] = useState<Fields>(() => answersTo(line));
  const typed = shortText(line.item.typed);
  const read = line.lot ? lotLine(context, line.lot) : say("line.notUnderstood");
  const named = nth === undefined ? typed : say("line.nth", { typed, nth, read });
  const leftOut = isLeftOut(line);
  // What only other words can answer has no fields: too many things, or something cut that may be older than it seems.
  const inWords = line.item.questions.some(
    ({ ask }) => ask === "too many lots" || (ask === "how old" && line.kind === "question"),
  );
  const asked = waits(line);
  const fields = leftOut || inWords ? "none" : opened === "none" ? answersTo(line) : opened;
  const shown = fields !== "none";
  const all = fields === "all";
  const className = ["line", leftOut && "left-out", asked && "asked", shown && "open"]
    .filter(Boolean)
    .join(" ");
  return (
    <div className={className} ref={ref} tabIndex={-1}>
      <div className="line-words">
        <p className="typed">{typed}</p> <ReadAs line={line} context={context} />
        {asked && <Questions line={line} context={context} />}
      </div>
      <LineButtons
        named={named}
        controls={id}
        all={all}
        fixed={leftOut || inWords || answersTo(line) === "all"}
        recalled={line.recalled !== undefined}
        onAsRead={line.correction || line.recalled !== undefined ? asRead : undefined}
        onToggle={() => setOpened(all ? "none" : "all")}
      />
      <Note line={line} context={context} />
      <div id={id} className="line-fields" hidden={!shown}>
        {shown && <LineFields line={line} context={context} all={all} correct={correct} />}
      </div>
    </div>
  );
});

interface LineButtonsProps {
  /** What was typed, told apart from other lines of the same words. */
  readonly named: string;
  /** Id of the fields. */
  readonly controls: string;
  readonly all: boolean;
  /** Nothing can be opened or closed: left out, to be answered in words, or still to be answered. */
  readonly fixed: boolean;
  /** Answered in an earlier list. */
  readonly recalled: boolean;
  readonly onAsRead: (() => void) | undefined;
  readonly onToggle: () => void;
}

function LineButtons({ named, controls, all, fixed, recalled, onAsRead, onToggle }: LineButtonsProps) {
  const say = useWords();
  return (
    <div className="line-buttons">
      {onAsRead && (
        <button
          type="button"
          aria-label={say(recalled ? "line.askAgainNamed" : "line.undoNamed", { typed: named })}
          onClick={onAsRead}
        >
          {say(recalled ? "line.askAgain" : "line.undo")}
        </button>
      )}
      {!fixed && (
        <button
          type="button"
          aria-expanded={all}
          aria-controls={controls}
          aria-label={say(all ? "line.doneNamed" : "line.changeNamed", { typed: named })}
          onClick={onToggle}
        >
          {say(all ? "line.done" : "line.change")}
        </button>
      )}
    </div>
  );
}

type LineProps = Pick<LotLineProps, "line" | "context">;

function ReadAs({ line, context }: LineProps) {
  const say = useWords();
  if (isLeftOut(line))
    return (
      <p className="soft">{say(line.recalled === leftOutAlways ? "line.leftOutBefore" : "line.leftOut")}</p>
    );
  if (!line.lot) return null;
  return <p className="read-as">{lotLine(context, line.lot)}</p>;
}

/** Lighter, below: that the person had a say in it, or else what was taken for granted. */
function Note({ line, context }: LineProps) {
  const say = useWords();
  const { correction } = line;
  if (isLeftOut(line)) return null;
  if (!line.lot) return <p className="line-note">{say("line.notUnderstood")}</p>;
  if (correction) {
    const touched = Object.keys(correction).length > 0;
    return <p className="line-note">{say(touched ? "line.corrected" : "line.confirmed")}</p>;
  }
  if (line.recalled !== undefined) return <p className="line-note">{say("line.recalled")}</p>;
  const assumed = line.kind === "lot" ? assumedLine(context, line.item.assumed) : undefined;
  return assumed ? <p className="line-note assumed">{assumed}</p> : null;
}

function Questions({ line, context }: LineProps) {
  return stillAsked(line).map((question) => (
    <p key={`${question.ask} ${question.word}`} className="question">
      {questionLine(context, question)}
    </p>
  ));
}
