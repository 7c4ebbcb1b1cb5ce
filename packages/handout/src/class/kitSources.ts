import type { Evidence } from "@keepwright/catalogue";
import { citationWords, type NamedSource, sourceGroups } from "../view/sourceLines.js";
import { type MarkedLine, markedLine } from "../words/markedLine.js";
import type { ClassContext } from "./classContext.js";
import type { KitSource, SourceStanding } from "./classKit.js";

/** How well a source is known, told of in one word. */
export const standingOf = ({ kind, fromMemory }: Pick<NamedSource, "kind" | "fromMemory">): SourceStanding =>
  kind === "common practice" || kind === "inferred" ? kind : fromMemory ? "memory" : "read";

/** Sources as lines, those that stand on the same ground together. */
export const kitSources = (context: ClassContext, sources: readonly NamedSource[]): KitSource[] =>
  sourceGroups(context.handout, sources).map(({ line, first }) => ({
    ...line,
    standing: standingOf(first),
  }));

const shortKeys = {
  read: "brief.source.read",
  memory: "brief.source.memory",
  "common practice": "brief.source.practice",
  inferred: "brief.source.inferred",
} as const;

/** Sources by their names alone, for a page that leaves their places and grounds to the whole list. */
export const shortSources = (context: ClassContext, sources: readonly NamedSource[]): MarkedLine[] => {
  const lines = sourceGroups(context.handout, sources).map(({ first }) =>
    context.say(shortKeys[standingOf(first)], { citation: citationWords(context.handout, first) }),
  );
  return lines.map(markedLine);
};

/** Evidence from the catalogue as a source, with what it is told of. */
export const namedEvidence = (context: ClassContext, figure: string, evidence: Evidence): NamedSource => ({
  figure,
  source: evidence.source,
  citation: context.catalogue.sources.get(evidence.source)?.citation ?? evidence.source,
  place: evidence.place,
  kind: evidence.kind,
  fromMemory: evidence.fromMemory,
});
