import { addressOf } from "../../state/route.js";
import { useWords } from "../../words/words.js";

interface AskStepsProps {
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly nameOf: (id: string) => string;
}

/** The kinds before and after this one in the list that it was picked from. */
export function AskSteps({ before, after, nameOf }: AskStepsProps) {
  const say = useWords();
  return (
    <nav className="ask-steps" aria-label={say("ask.steps")}>
      {before && <a href={addressOf("ask", before)}>{say("ask.before", { name: nameOf(before) })}</a>}
      {after && <a href={addressOf("ask", after)}>{say("ask.after", { name: nameOf(after) })}</a>}
    </nav>
  );
}
