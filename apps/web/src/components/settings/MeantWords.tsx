import { kindNames, namesFor } from "@keepwright/catalogue";
import { useDesk } from "../../behaviour/desk.js";
import { leftOutAlways } from "../../state/meant.js";
import { useSettingsWords } from "../../words/settingsWords.js";

/** What was once answered about words, each to be asked about again. */
export function MeantWords() {
  const say = useSettingsWords();
  const { haul, tag } = useDesk();
  const meant = Object.entries(haul.state.meant);
  if (meant.length === 0) return null;
  const told = (word: string, meaning: string): string => {
    if (meaning === leftOutAlways) return say("meant.leftOut", { word });
    const kind = kindNames().get(meaning);
    return say("meant.kind", { word, kind: kind ? namesFor(kind, tag).many : meaning });
  };
  return (
    <section aria-labelledby="meant-heading">
      <h3 id="meant-heading">{say("meant.heading")}</h3>
      <p>{say("meant.about")}</p>
      <ul className="meant">
        {meant.map(([word, meaning]) => (
          <li key={word}>
            <span>{told(word, meaning)}</span>
            <button
              type="button"
              aria-label={say("meant.againNamed", { word })}
              onClick={() => haul.change({ change: "forget word", word })}
            >
              {say("meant.again")}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
