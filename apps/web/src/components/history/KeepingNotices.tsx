import { useEffect, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { addressOf } from "../../state/route.js";
import { useWords } from "../../words/words.js";

/** What the person has to know about how their things are kept; nothing where all is well. */
export function KeepingNotices() {
  const say = useWords();
  const { keeping, undo, asides } = useDesk().haul;
  const otherTab = undo !== undefined && undo !== "forgotten" && undo.what === "over another tab";
  // Typing goes on, and what was done last is soon something else: it is told until the person has seen it.
  const [told, setTold] = useState(false);
  useEffect(() => {
    if (otherTab) setTold(true);
  }, [otherTab]);
  return (
    <>
      {keeping === "refused" && (
        <p role="alert" className="wrong wrong-box">
          {say("page.notKept")}
        </p>
      )}
      {keeping === "without history" && (
        <p role="status" className="keeping-note">
          {say("history.thisVisit")}
        </p>
      )}
      {told && (
        <p role="status" className="keeping-note">
          {say("history.otherTab")}{" "}
          <button type="button" onClick={() => setTold(false)}>
            {say("history.closeNote")}
          </button>
        </p>
      )}
      {asides > 0 && (
        <p role="status" className="keeping-note">
          {say("history.asides", { count: asides })}{" "}
          <a href={addressOf("settings", "asides")}>{say("history.toAsides")}</a>
        </p>
      )}
    </>
  );
}
