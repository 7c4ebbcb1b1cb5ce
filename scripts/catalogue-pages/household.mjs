import { seasonOf } from "@keepwright/catalogue";
import { pair } from "./guidance.mjs";
import { element } from "./html.mjs";
import { signed, span, twoDigits } from "./numbers.mjs";
import { portionsOf } from "./portions.mjs";
import { seasonWords } from "./season.mjs";
import { spanishUnit, words } from "./words.mjs";

/** When it is harvested in both hemispheres, in both languages. */
export function seasonPart({ season }) {
  const { northern, southern, inferred } = seasonOf(season);
  return pair((language) => {
    const own = words[language];
    const south = seasonWords(language, southern);
    return [
      element("h3", {}, own.season),
      element("p", {}, `${own.north}: ${seasonWords(language, northern)}.`),
      element("p", {}, `${own.south}: ${south}${inferred ? ` (${own.moved})` : ""}.`),
    ];
  });
}

const unitCell = (name) => {
  const spanish = spanishUnit(name);
  return element("th", { scope: "row" }, name, spanish && [" / ", element("span", { lang: "es" }, spanish)]);
};

const withRange = ({ value, low, high }, write) =>
  write(low) === write(high) ? write(value) : `${write(value)} (${span(low, high, write)})`;

const portionRow = ({ name, grams, portions }) =>
  element(
    "tr",
    {},
    unitCell(name),
    element("td", {}, withRange(grams, signed)),
    element("td", {}, withRange(portions, twoDigits)),
  );

/** How many portions each household unit of a kind makes. */
export function portionsPart({ household }) {
  const { portion, seasoning } = household;
  const { en, es } = words;
  const grams = withRange(
    { value: portion.value, low: portion.low ?? portion.value, high: portion.high ?? portion.value },
    signed,
  );
  const columns = ["unit", "grams", "portion"];
  return [
    pair((language) => [
      element("h3", {}, words[language].portions),
      seasoning && element("p", {}, words[language].seasoning),
    ]),
    element(
      "table",
      { class: "numbers" },
      element("caption", {}, `Grams of the unit divided by the grams of a portion: ${grams} g`),
      element(
        "thead",
        {},
        element(
          "tr",
          {},
          columns.map((column) =>
            element("th", { scope: "col" }, en[column], " / ", element("span", { lang: "es" }, es[column])),
          ),
        ),
      ),
      element("tbody", {}, portionsOf(household).map(portionRow)),
    ),
  ];
}
