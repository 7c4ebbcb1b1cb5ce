import { ForgetEverything } from "../components/settings/ForgetEverything.js";
import { KeptHere } from "../components/settings/KeptHere.js";
import { MeantWords } from "../components/settings/MeantWords.js";
import { SavedFile } from "../components/settings/SavedFile.js";
import { SetAside } from "../components/settings/SetAside.js";
import { WordsAndMeasures } from "../components/settings/WordsAndMeasures.js";
import { useWords } from "../words/words.js";

/** Language, units, dates; what is kept, as a file to take along, and how to be rid of it. */
export default function SettingsPage({ on }: { readonly on: string | undefined }) {
  const say = useWords();
  return (
    <div className="settings">
      <h2>{say("screen.settings")}</h2>
      <WordsAndMeasures />
      <KeptHere />
      <MeantWords />
      <SetAside wanted={on === "asides"} />
      <SavedFile />
      <ForgetEverything />
    </div>
  );
}
