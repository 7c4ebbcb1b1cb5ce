import { paperBytes } from "virtual:paper-files";
import { useEffect, useState } from "react";
import type { PaperState } from "../../behaviour/paper/usePaper.js";
import { isPaperKept } from "../../offline/isPaperKept.js";
import { type SayPaper, usePaperWords } from "../../words/paperWords.js";

/** Megabytes of what pages are set with. */
const megabytes = Math.ceil(paperBytes / 1_000_000);

function wrongWords(say: SayPaper, state: PaperState): string {
  switch (state.kind) {
    case "unreachable":
      return say("paper.unreachable", { size: megabytes });
    case "unprintable":
      return say("paper.unprintable", { characters: state.characters.join(" ") });
    case "wrong":
      return say("paper.wrong", { problem: state.message });
    default:
      return "";
  }
}

interface PaperStatusProps {
  readonly state: PaperState;
}

/** What becomes of the page that was asked for: that it is being set, saved, or why not. */
export function PaperStatus({ state }: PaperStatusProps) {
  const say = usePaperWords();
  const [kept, setKept] = useState(true);
  // Asked again whenever a page was set, since that brings what was missing.
  useEffect(() => void isPaperKept().then(setKept), [state.kind]);
  const wrong = wrongWords(say, state);
  return (
    <div className="paper-status">
      <p role="status">
        {state.kind === "working" && say("paper.working")}
        {state.kind === "saved" && say("paper.saved", { name: state.name, count: state.pages })}
      </p>
      <p role="alert" className="wrong">
        {wrong}
      </p>
      {!kept && wrong === "" && <p className="soft small">{say("paper.first", { size: megabytes })}</p>}
    </div>
  );
}
