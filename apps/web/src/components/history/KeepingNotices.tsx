import { useDesk } from "../../behaviour/desk.js";
import { addressOf } from "../../state/route.js";
import { useWords } from "../../words/words.js";

/** What the person has to know about how their things are kept; nothing where all is well. */
export function KeepingNotices() {
  const say = useWords();
  const { keeping, undo, asides } = useDesk().haul;
  const otherTab = undo !== undefined && undo !== "forgotten" && undo.what === "over another tab";
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
      {otherTab && (
        <p role="status" className="keeping-note">
          {say("history.otherTab")}
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
