import { type UnitSystem, unitSystems } from "@keepwright/handout";
import { useDesk } from "../../behaviour/desk.js";
import { type LanguageChoice, languageKeys } from "../../state/language.js";
import { type RegionChoice, regions, tagFor } from "../../state/region.js";
import { useSettingsWords } from "../../words/settingsWords.js";
import { Choice } from "./Choice.js";

/** A day and a number that show how a region writes them: what they are means nothing. */
const sampleDay = new Date(Date.UTC(2026, 5, 13, 12));
const sampleNumber = 1234.5;

/** Language, region, and the units of temperatures and of weights. */
export function WordsAndMeasures() {
  const say = useSettingsWords();
  const { haul } = useDesk();
  const { units, language } = haul.state;
  const languages: readonly LanguageChoice[] = ["device", ...languageKeys];
  return (
    <section aria-labelledby="words-heading">
      <h3 id="words-heading">{say("settings.words")}</h3>
      <div className="fields">
        <Choice
          label={say("settings.language")}
          value={language}
          choices={languages.map((each) => [each, say(`settings.language.${each}`)])}
          onChange={(chosen) => haul.change({ change: "language", language: chosen })}
        />
        <RegionField />
        <Choice
          label={say("settings.temperature")}
          value={units.temperature}
          choices={unitSystems.map((each) => [each, say(`settings.temperature.${each}`)])}
          onChange={(temperature: UnitSystem) =>
            haul.change({ change: "units", units: { ...units, temperature } })
          }
        />
        <Choice
          label={say("settings.mass")}
          value={units.mass}
          choices={unitSystems.map((each) => [each, say(`settings.mass.${each}`)])}
          onChange={(mass: UnitSystem) => haul.change({ change: "units", units: { ...units, mass } })}
        />
      </div>
    </section>
  );
}

function RegionField() {
  const say = useSettingsWords();
  const { haul, language, tag } = useDesk();
  const { region } = haul.state;
  const names = new Intl.DisplayNames([tag], { type: "region", fallback: "code" });
  const device = new Intl.Locale(tagFor(language, "device", navigator.languages)).region ?? "";
  const offered: readonly RegionChoice[] = regions[language];
  const codes = region === "device" || offered.includes(region) ? offered : [region, ...offered];
  const date = new Intl.DateTimeFormat(tag, { dateStyle: "full", timeZone: "UTC" }).format(sampleDay);
  const number = new Intl.NumberFormat(tag).format(sampleNumber);
  return (
    <Choice
      label={say("settings.region")}
      value={region}
      choices={[
        ["device", say("settings.region.device", { region: names.of(device) ?? device })],
        ...codes.map((code): [RegionChoice, string] => [code, names.of(code) ?? code]),
      ]}
      note={say("settings.region.sample", { date, number })}
      onChange={(chosen) => haul.change({ change: "region", region: chosen })}
    />
  );
}
