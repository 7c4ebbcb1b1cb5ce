import { useWords } from "../../words/words.js";
import type { Steps } from "./useSteps.js";

/** From evening to evening by button or slider, and by itself where that is asked for. Always in one place, whatever the evening is called. */
export function EveningSteps({ steps, heading }: { readonly steps: Steps; readonly heading: string }) {
  const say = useWords();
  const { at, last, go, playing, play, stop } = steps;
  return (
    <fieldset className="ways-steps">
      <legend className="unseen">{say("ways.steps")}</legend>
      <button type="button" aria-disabled={at === 0} onClick={() => go(at - 1)}>
        {say("ways.before")}
      </button>
      <button type="button" className="main-button" aria-disabled={at === last} onClick={() => go(at + 1)}>
        {say("ways.next")}
      </button>
      <input
        type="range"
        min="0"
        max={last}
        value={at}
        aria-label={say("ways.slider")}
        aria-valuetext={heading}
        onChange={({ target }) => go(Number(target.value))}
      />
      <button type="button" onClick={playing ? stop : play}>
        {say(playing ? "ways.stop" : "ways.play")}
      </button>
    </fieldset>
  );
}
