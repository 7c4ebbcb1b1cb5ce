import { type HandoutContext, oneMoveLines } from "@keepwright/handout";
import type { MadeJudgement } from "../../behaviour/useJudgement.js";
import { useWords } from "../../words/words.js";

interface OneMovePartProps {
  readonly made: MadeJudgement;
  readonly context: HandoutContext;
  readonly onMove: (made: MadeJudgement) => void;
}

/** The one move that helps most, with a button that does it here. Room is kept for it, so that nothing moves when it comes. */
export function OneMovePart({ made, context, onMove }: OneMovePartProps) {
  const say = useWords();
  const lines = made.looked
    ? oneMoveLines(context, made.judgement, made.oneMove, made.draws)
    : [say("mine.oneMove.looking")];
  return (
    <div className="one-move">
      <h4>{say("mine.oneMove")}</h4>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {made.oneMove && (
        <button type="button" className="main-button" onClick={() => onMove(made)}>
          {say("mine.oneMove.do")}
        </button>
      )}
    </div>
  );
}
