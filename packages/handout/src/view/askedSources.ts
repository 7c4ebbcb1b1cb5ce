import { type Catalogue, commodityOf, type Evidence, type KindGuidance } from "@keepwright/catalogue";
import { sourcesOf } from "../answer/sourcesOf.js";
import type { MarkedLine } from "../words/markedLine.js";
import type { HandoutContext } from "./context.js";
import { type NamedSource, sourceLines } from "./sourceLines.js";

type Told = "signs" | "save" | "trimmings" | "hazards" | "season" | "preparation" | "smells" | "cutLife";

/** All that is told about a kind with where it comes from: figures, signs, advice. Needs the catalogue with its sources. */
export function askedNamedSources(
  context: HandoutContext,
  catalogue: Catalogue,
  id: string,
  guidance: KindGuidance | undefined,
): NamedSource[] {
  const { speaker } = context;
  const commodity = commodityOf(catalogue, id);
  const figures = sourcesOf(commodity, catalogue.sources).map(
    (one): NamedSource => ({ ...one, figure: speaker.say(`item.figure.${one.figure}`) }),
  );
  const basis = guidance?.basis;
  const smells = catalogue.odours.filter(({ giver, taker }) => giver === id || taker === id);
  const told: [Told, Evidence | undefined][] = [
    ["cutLife", commodity.cut.life],
    ...commodity.preparation.map((step): [Told, Evidence] => ["preparation", step]),
    ...smells.map((pair): [Told, Evidence] => ["smells", pair]),
    ["signs", basis?.signs],
    ["save", basis?.save],
    ["trimmings", basis?.trimmings],
    ["hazards", basis?.hazards],
    ["season", guidance?.season],
  ];
  const advice = told.flatMap(([name, evidence]): NamedSource[] =>
    evidence
      ? [
          {
            figure: speaker.say(`ask.figure.${name}`),
            source: evidence.source,
            citation: catalogue.sources.get(evidence.source)?.citation ?? evidence.source,
            place: evidence.place,
            kind: evidence.kind,
            fromMemory: evidence.fromMemory,
          },
        ]
      : [],
  );
  return [...figures, ...advice];
}

/** The same in lines, one a source. */
export const askedSources = (
  context: HandoutContext,
  catalogue: Catalogue,
  id: string,
  guidance: KindGuidance | undefined,
): MarkedLine[] =>
  sourceLines({ ...context, catalogue }, askedNamedSources(context, catalogue, id, guidance));
