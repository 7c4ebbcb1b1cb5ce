import { useDesk } from "../behaviour/desk.js";
import type { LanguageChoice } from "../state/language.js";
import { useWords } from "../words/words.js";

const choices: readonly LanguageChoice[] = ["device", "en", "es"];

/** Language and units. */
export default function SettingsPage() {
  const say = useWords();
  const { haul } = useDesk();
  return (
    <section aria-labelledby="settings-heading">
      <h2 id="settings-heading">{say("screen.settings")}</h2>
      <label className="field wide">
        <span>{say("settings.language")}</span>
        <select
          value={haul.state.language}
          onChange={(event) =>
            haul.change({ change: "language", language: event.target.value as LanguageChoice })
          }
        >
          {choices.map((choice) => (
            <option key={choice} value={choice}>
              {say(`settings.language.${choice}`)}
            </option>
          ))}
        </select>
      </label>
    </section>
  );
}
