import { useDesk } from "../../behaviour/desk.js";
import { useSettingsWords } from "../../words/settingsWords.js";

/** Steps kept for undoing, as the database keeps them. */
const mostSteps = 500;

/** What lies on this device, in counts. */
export function KeptHere() {
  const say = useSettingsWords();
  const { state, steps } = useDesk().haul;
  const lines = state.text.split("\n").filter((line) => line.trim() !== "").length;
  return (
    <section aria-labelledby="kept-heading">
      <h3 id="kept-heading">{say("kept.heading")}</h3>
      <p>{say("kept.where")}</p>
      <ul>
        <li>{say("kept.lines", { count: lines })}</li>
        <li>{say("kept.corrections", { count: Object.keys(state.corrections).length })}</li>
        <li>{say("kept.kitchens", { count: state.kitchens.length })}</li>
        <li>{say("kept.lying", { count: Object.keys(state.lying).length })}</li>
        <li>{say("kept.done", { count: state.done.length })}</li>
        <li>{say("kept.steps", { count: steps, most: mostSteps })}</li>
      </ul>
    </section>
  );
}
