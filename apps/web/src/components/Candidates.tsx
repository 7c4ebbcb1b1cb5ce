import { type HandoutContext, kindName } from "@keepwright/handout";
import type { Question } from "@keepwright/planner";
import { useWords } from "../words/words.js";

/** Most kinds offered as buttons; the list beside them holds all. */
const mostOffered = 6;

/** Kinds that the questions of a line name, best first. */
export const candidatesOf = (questions: readonly Question[]): readonly string[] =>
  questions.flatMap((question) => ("candidates" in question ? question.candidates : []));

interface CandidatesProps {
  readonly candidates: readonly string[];
  readonly chosen: string | undefined;
  readonly context: HandoutContext;
  readonly onPick: (commodity: string) => void;
}

/** Likely answers as buttons: one touch each. */
export function Candidates({ candidates, chosen, context, onPick }: CandidatesProps) {
  const say = useWords();
  if (candidates.length === 0) return null;
  return (
    <p className="candidates">
      <span>{say("line.perhaps")}</span>
      {candidates.slice(0, mostOffered).map((id) => (
        <button key={id} type="button" aria-pressed={id === chosen} onClick={() => onPick(id)}>
          {kindName(context, id)}
        </button>
      ))}
    </p>
  );
}
