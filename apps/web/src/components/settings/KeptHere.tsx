import { useDesk } from "../../behaviour/desk.js";
import { useSettingsWords } from "../../words/settingsWords.js";

/** Steps kept for undoing, as the database keeps them. */
const mostSteps = 500;

/** Tasks, each as it stands in the list: what goes into one place, or is done to several things, is one. */
const tasksTicked = (keys: readonly string[]): number =>
  new Set(keys.map((key) => (key.startsWith("vent|") ? key : key.split("|").slice(0, 2).join("|")))).size;

/** What lies on this device, in counts. */
export function KeptHere() {
  const say = useSettingsWords();
  const { state, steps } = useDesk().haul;
  const lines = state.text.split("\n").filter((line) => line.trim() !== "").length;
  const counts = {
    "kept.corrections": Object.keys(state.corrections).length,
    "kept.kitchens": state.kitchens.length,
    "kept.lying": Object.keys(state.lying).length,
    "kept.done": tasksTicked(state.done),
  } as const;
  const kinds = Object.keys(counts) as (keyof typeof counts)[];
  return (
    <section aria-labelledby="kept-heading">
      <h3 id="kept-heading">{say("kept.heading")}</h3>
      <p>{say("kept.where")}</p>
      <ul>
        <li>{say("kept.lines", { count: lines })}</li>
        {kinds
          .filter((key) => counts[key] > 0)
          .map((key) => (
            <li key={key}>{say(key, { count: counts[key] })}</li>
          ))}
        <li>{say("kept.steps", { count: steps, most: mostSteps })}</li>
      </ul>
    </section>
  );
}
