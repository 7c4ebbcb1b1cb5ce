import { relativesSource } from "@keepwright/catalogue";
import { element } from "./html.mjs";

const kindWords = {
  measured: "Measured",
  recommended: "Recommended",
  inferred: "Inferred",
  "common practice": "Common practice, no source",
};

/** The rule's errors over all kinds are told once, on top: beside every figure they would change whenever a kind is added anywhere. */
const placeWords = ({ source, place }) =>
  source === relativesSource ? place.replace(/; the rule errs .*$/, "") : place;

/** Where a figure comes from: source, place in it, kind of evidence, whether from memory, and the note. */
export function evidenceWords(evidence, sources) {
  const { source, kind, fromMemory, note } = evidence;
  const marks = [
    source === relativesSource ? "Inferred from relatives" : kindWords[kind],
    fromMemory && "from memory: recalled, not checked in print",
  ].filter(Boolean);
  return [
    sources.link(source),
    `: ${placeWords(evidence)}. `,
    element("strong", {}, `${marks.join("; ")}.`),
    note && [" ", element("span", { class: "note" }, `Note: ${note}`)],
  ];
}

const rivalList = (rivals, sources) =>
  rivals.length > 0 && [
    element("p", { class: "rivals" }, "Sources disagree. Beside the default:"),
    element(
      "ul",
      {},
      rivals.map(({ text, evidence }) =>
        element("li", {}, element("b", {}, text), " ", evidenceWords(evidence, sources)),
      ),
    ),
  ];

const figureRow = ({ name, text, evidence, rivals }, sources) =>
  element(
    "tr",
    {},
    element("th", { scope: "row" }, name),
    element("td", {}, text),
    element("td", {}, evidenceWords(evidence, sources), rivalList(rivals, sources)),
  );

const columns = ["Figure", "Value (range), unit", "Where it comes from"];

/** The table of every figure, a body to each section. */
export const figuresTable = (sections, sources) =>
  element(
    "table",
    { class: "figures" },
    element("caption", {}, "Every figure that is used for this kind"),
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        columns.map((name) => element("th", { scope: "col" }, name)),
      ),
    ),
    sections.map(([heading, rows]) =>
      element(
        "tbody",
        {},
        element("tr", { class: "section" }, element("th", { scope: "rowgroup", colspan: 3 }, heading)),
        rows.map((row) => figureRow(row, sources)),
      ),
    ),
  );
