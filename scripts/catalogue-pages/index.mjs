import { element, htmlPage } from "./html.mjs";
import { capital } from "./opening.mjs";
import { plantParts, words } from "./words.mjs";

const bare = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
const byName = (one, other) => {
  const [left, right] = [bare(one.names.en.many), bare(other.names.en.many)];
  return left < right ? -1 : Number(left > right);
};

/** Name of a kind's file. */
export const pageName = ({ id }) => `${id}.html`;

const link = (kind) => element("a", { href: pageName(kind) }, kind.names.en.many);
const spanish = (text) => element("span", { lang: "es" }, text);

const partSection = ([organ, english, inSpanish], kinds) => {
  const own = kinds.filter((kind) => kind.organ === organ).sort(byName);
  return (
    own.length > 0 &&
    element(
      "section",
      {},
      element("h3", {}, english, " / ", spanish(inSpanish)),
      element(
        "ul",
        { class: "kinds" },
        own.map((kind) => element("li", {}, link(kind), " – ", spanish(kind.names.es.many))),
      ),
    )
  );
};

const everyName = ({ one, many, also }) => [...new Set([many, one, ...also])];

const nameLine = (kind) => {
  const [, ...others] = everyName(kind.names.en);
  return element(
    "li",
    {},
    link(kind),
    others.length > 0 && `, ${others.join(", ")}`,
    " – ",
    spanish(everyName(kind.names.es).join(", ")),
  );
};

const shared = [
  ["wraps", "wraps"],
  ["odours", "smells that pass from one kind to another"],
  ["safety", "safety limits"],
];

/** The list of all kinds: by plant part, and by every name. */
export function indexPage(catalogue) {
  const kinds = [...catalogue.commodities.values()];
  return htmlPage(
    {
      title: "Every kind of produce – how it keeps",
      description:
        "All kinds of produce of the catalogue, by plant part and by every name in English and Spanish.",
    },
    element(
      "header",
      {},
      element("h1", {}, "Every kind of produce"),
      element(
        "p",
        {},
        `${kinds.length} kinds. Each page tells what to look for and what to do in English and Spanish, how long it keeps at which temperature and humidity by ` +
          "the model’s computation, and every figure behind it with its source.",
      ),
      element(
        "p",
        { lang: "es" },
        `${kinds.length} productos, cada uno con su página, en español y en inglés.`,
      ),
    ),
    element(
      "main",
      {},
      element("h2", {}, "By plant part"),
      element(
        "div",
        { class: "parts" },
        plantParts.map((part) => partSection(part, kinds)),
      ),
      element("h2", {}, "By every name"),
      element("p", {}, `${capital(words.en.also)} and so on: look for a word on this page (Ctrl-F, or ⌘-F).`),
      element("ul", { class: "every-name" }, kinds.sort(byName).map(nameLine)),
      element("h2", {}, "Figures that all kinds share"),
      element(
        "ul",
        {},
        shared.map(([file, name]) =>
          element("li", {}, element("a", { href: `../../packages/catalogue/data/${file}.json` }, name)),
        ),
      ),
    ),
  );
}
