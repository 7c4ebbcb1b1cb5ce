import type { Evidence } from "@keepwright/catalogue";
import { type NamedSource, sourceGroups } from "../view/sourceLines.js";
import type { ClassContext } from "./classContext.js";
import type { KitSource, SourceStanding } from "./classKit.js";

const standingOf = ({ kind, fromMemory }: Pick<NamedSource, "kind" | "fromMemory">): SourceStanding =>
  kind === "common practice" || kind === "inferred" ? kind : fromMemory ? "memory" : "read";

/** Sources as lines, those that stand on the same ground together. */
export const kitSources = (context: ClassContext, sources: readonly NamedSource[]): KitSource[] =>
  sourceGroups(context.handout, sources).map(({ line, first }) => ({
    text: line,
    standing: standingOf(first),
  }));

/** Evidence from the catalogue as a source, with what it is told of. */
export const namedEvidence = (context: ClassContext, figure: string, evidence: Evidence): NamedSource => ({
  figure,
  source: evidence.source,
  citation: context.catalogue.sources.get(evidence.source)?.citation ?? evidence.source,
  place: evidence.place,
  kind: evidence.kind,
  fromMemory: evidence.fromMemory,
});
