import type { AnsweredSource } from "../answer/itemAnswer.js";
import { foreign, type MarkedLine, markedLine } from "../words/markedLine.js";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";

/** Where a figure or an advice comes from, with its name in words. */
export interface NamedSource extends Omit<AnsweredSource, "figure"> {
  readonly figure: string;
}

/** How well a source is known: what it is, and whether it was read. */
const standing = ({ source, kind, fromMemory }: NamedSource): string =>
  kind === "common practice" || kind === "inferred" ? kind : `${source}|${fromMemory}`;

/** The language of places in publications, and of what is told of an inference: all of the catalogue's records are written in it. */
const ofRecords = "en";

/** A citation without its full stop, in the language of its title. */
export const citationWords = (
  { speaker, catalogue }: HandoutContext,
  { source, citation }: Pick<NamedSource, "source" | "citation">,
): string =>
  foreign(
    speaker.tag,
    catalogue.sources.get(source)?.language ?? ofRecords,
    plainText(citation).replace(/\.$/, ""),
  );

function sourceLine(context: HandoutContext, group: readonly NamedSource[]): MarkedLine {
  const { speaker } = context;
  const [first] = group;
  const values = {
    figure: speaker.capital(speaker.list([...new Set(group.map(({ figure }) => figure))])),
    citation: first ? citationWords(context, first) : "",
    where: foreign(
      speaker.tag,
      ofRecords,
      [...new Set(group.map(({ place }) => plainText(place)))].join("; "),
    ),
  };
  if (first?.kind === "common practice") return markedLine(speaker.say("item.sourcePractice", values));
  if (first?.kind === "inferred") return markedLine(speaker.say("item.sourceInferred", values));
  return markedLine(speaker.say(first?.fromMemory ? "item.sourceMemory" : "item.source", values));
}

/** Sources that stand on the same ground, in a line; and the first of them. */
export function sourceGroups(
  context: HandoutContext,
  sources: readonly NamedSource[],
): { readonly line: MarkedLine; readonly first: NamedSource }[] {
  const groups = new Map<string, NamedSource[]>();
  for (const source of sources)
    groups.set(standing(source), [...(groups.get(standing(source)) ?? []), source]);
  return [...groups.values()].map((group) => ({ line: sourceLine(context, group), first: group[0]! }));
}

/** One line for each source, with all that is taken from it. */
export const sourceLines = (context: HandoutContext, sources: readonly NamedSource[]): MarkedLine[] =>
  sourceGroups(context, sources).map(({ line }) => line);

/** The same for a kind's figures. */
export const figureSourceLines = (
  context: HandoutContext,
  sources: readonly AnsweredSource[],
): MarkedLine[] =>
  sourceLines(
    context,
    sources.map((one) => ({ ...one, figure: context.speaker.say(`item.figure.${one.figure}`) })),
  );
