import { chartParts } from "./charts.mjs";
import { curvesOf } from "./curves.mjs";
import { figureSections, inferredRows } from "./figures.mjs";
import { figuresTable } from "./figuresTable.mjs";
import { guidanceParts } from "./guidance.mjs";
import { portionsPart, seasonPart } from "./household.mjs";
import { element, htmlPage } from "./html.mjs";
import { keepingParts, nameParts } from "./opening.mjs";
import { sourceNumbers } from "./sources.mjs";

const rule =
  "Where sources disagree, the default is chosen by rule: a figure that was read before one that was remembered; a handbook or paper before " +
  "a secondary page; then the one whose conditions are nearest to a household’s. The others stand beside it.";

const inferredNote = (count) =>
  count > 0 &&
  element(
    "p",
    {},
    `${count === 1 ? "One row is" : `${count} rows are`} inferred from relatives of this kind, for want of a publication; such rows say so, and their range is as wide as the rule’s errors on kinds with figures of their own.`,
  );

const safety =
  "This is advice on quality with the usual cautions. Follow your local food-safety authority, and throw away what is mouldy, slimy or doubtful.";

const sectionOf = (id, heading, ...children) =>
  element("section", { "aria-labelledby": id }, element("h2", { id }, heading), children);

const navigation = () =>
  element("nav", { "aria-label": "Catalogue" }, element("a", { href: "index.html" }, "All kinds"));

/** The page of one kind as the text of its file; `guidance` holds the kind's guidance by language, as far as it is written. */
export function kindPage(kind, catalogue, guidance) {
  const sources = sourceNumbers(catalogue.sources);
  const { en, es } = kind.names;
  const keeping = keepingParts(kind, sources);
  const sections = figureSections(kind, catalogue, guidance.en);
  const figures = figuresTable(sections, sources);
  return htmlPage(
    {
      title: `${en.many} / ${es.many} – how they keep`,
      description: `How ${en.many} keep: what to look for, computed lives by temperature and humidity, and every figure with its source.`,
    },
    element("header", {}, navigation(), nameParts(kind), keeping),
    element(
      "main",
      {},
      sectionOf("guidance", "What to do and what to look for", guidanceParts(guidance, catalogue.wraps)),
      sectionOf(
        "household",
        "Season and portions",
        guidance.en && seasonPart(guidance.en),
        portionsPart(kind),
      ),
      sectionOf("life", "How long it keeps", chartParts(kind, curvesOf(kind))),
      sectionOf(
        "figures",
        "Figures and where they come from",
        element("p", {}, rule),
        inferredNote(inferredRows(sections).length),
        figures,
      ),
      sectionOf("sources", "Sources", sources.list()),
    ),
    element(
      "footer",
      {},
      element("p", {}, safety),
      element("p", {}, "Written by a program from the catalogue’s data and the model."),
    ),
  );
}
