import { rangeText } from "./figureRows.mjs";
import { element } from "./html.mjs";
import { signed, temperatureSpan } from "./numbers.mjs";
import { languages, words } from "./words.mjs";

export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** The name in both languages, each with its other names. */
export const nameParts = ({ names }) => [
  element("h1", {}, capital(names.en.many), " ", element("span", { lang: "es" }, capital(names.es.many))),
  element(
    "div",
    { class: "pair names" },
    languages.map((language) => {
      const { one, many, also } = names[language];
      const others = also.filter((name) => name !== one && name !== many);
      return element(
        "p",
        { lang: language },
        element("b", {}, one),
        others.length > 0 && `. ${words[language].also}: ${others.join(", ")}.`,
      );
    }),
  ),
];

const howKnown = {
  en: { true: "recalled, not checked in print", false: "" },
  es: { true: "citado de memoria, sin revisar el impreso", false: "" },
};

const templates = {
  en: (air, humidity, days) => `At the recommended ${air} and ${humidity} % humidity it keeps ${days} days, `,
  es: (air, humidity, days) => `Con lo recomendado, ${air} y ${humidity} % de humedad, dura ${days} días, `,
};

/** How the one who says it is named, where it is nobody's publication. */
const whoSays = {
  en: { inference: "as Keepwright infers", "common practice": "as common practice has it" },
  es: { inference: "según infiere Keepwright", "common practice": "según la costumbre" },
};
const says = { en: "says ", es: "según " };

const daysSpan = ({ low, high }, language) => {
  if (low === high) return signed(low);
  return language === "es" ? `de ${signed(low)} a ${signed(high)}` : `${signed(low)} to ${signed(high)}`;
};

function keeping({ storage }, language, sources) {
  const { temperature, relativeHumidity, life } = storage;
  const air = temperatureSpan(temperature, words[language].to);
  const known = howKnown[language][String(life.fromMemory)];
  const who = whoSays[language][sources.sourceOf(life.source).standing];
  return element(
    "p",
    { lang: language },
    templates[language](air, rangeText(relativeHumidity), daysSpan(life, language)),
    who === undefined && says[language],
    sources.link(life.source, who),
    known && ` (${known})`,
    ".",
  );
}

/** In one sentence, in each language: at which conditions it keeps how long, and from whom that is. */
export const keepingParts = (kind, sources) =>
  element(
    "div",
    { class: "pair keeping" },
    languages.map((language) => keeping(kind, language, sources)),
  );
