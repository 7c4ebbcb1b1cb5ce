import { useRef, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { useSettingsWords } from "../../words/settingsWords.js";

/** Takes everything off the device, after asking. */
export function ForgetEverything() {
  const say = useSettingsWords();
  const { keeper, undo } = useDesk().haul;
  const question = useRef<HTMLDialogElement>(null);
  const [refused, setRefused] = useState(false);
  const forget = async () => setRefused(!(await keeper.forget()));
  return (
    <section aria-labelledby="forget-heading">
      <h3 id="forget-heading">{say("forget.heading")}</h3>
      <p>{say("forget.about")}</p>
      <button type="button" onClick={() => question.current?.showModal()}>
        {say("forget.open")}
      </button>
      <p role="status">{undo === "forgotten" ? say("forget.done") : ""}</p>
      {refused && (
        <p role="alert" className="wrong">
          {say("forget.refused")}
        </p>
      )}
      <dialog ref={question} aria-labelledby="forget-question">
        <form method="dialog">
          <h2 id="forget-question">{say("forget.question")}</h2>
          <p>{say("forget.detail")}</p>
          <p className="dialog-buttons">
            <button type="submit">{say("forget.no")}</button>
            <button type="submit" className="main-button" onClick={() => void forget()}>
              {say("forget.yes")}
            </button>
          </p>
        </form>
      </dialog>
    </section>
  );
}
