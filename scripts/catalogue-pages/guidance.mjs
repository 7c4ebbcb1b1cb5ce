import { element } from "./html.mjs";
import { languages, words, wrapNames } from "./words.mjs";

const list = (items) =>
  element(
    "ul",
    {},
    items.map((item) => element("li", {}, item)),
  );

/** One part in both languages beside each other. */
export const pair = (contents) =>
  element(
    "div",
    { class: "pair" },
    languages.map((language) => element("section", { lang: language }, contents(language))),
  );

const part = (name, guidance, items) =>
  pair((language) => [element("h3", {}, words[language][name]), list(items(guidance[language].words))]);

const sentences = (name, guidance) =>
  guidance.en.words[name].length > 0 && part(name, guidance, (own) => own[name]);

const preparation = (guidance) =>
  part("prepare", guidance, ({ prepare }) =>
    prepare.map((step) => [step.do, " ", element("span", { class: "why" }, step.why)]),
  );

/** Wraps by name, each with whether it is plastic, in words. */
const wraps = (guidance, table) =>
  pair((language) => {
    const { free, plastic } = words[language];
    return [
      element("h3", {}, words[language].wraps),
      list(
        guidance[language].wraps.suit.map(
          (id) => `${wrapNames[language][id]} (${table.get(id)?.plastic ? plastic : free})`,
        ),
      ),
    ];
  });

/** What is told of a kind, English and Spanish side by side; `guidance` holds the same kind in both languages, or nothing. */
export const guidanceParts = (guidance, table) =>
  guidance.en && guidance.es
    ? [
        ...["ripe", "going", "discard"].map((name) => sentences(name, guidance)),
        preparation(guidance),
        wraps(guidance, table),
        ...["trimmings", "save", "hazards"].map((name) => sentences(name, guidance)),
      ]
    : element("p", {}, "No guidance has been written for this kind yet.");
