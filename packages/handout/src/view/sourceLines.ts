import type { AnsweredSource } from "../answer/itemAnswer.js";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";

/** Where a figure or an advice comes from, with its name in words. */
export interface NamedSource extends Omit<AnsweredSource, "figure"> {
  readonly figure: string;
}

/** How well a source is known: what it is, and whether it was read. */
const standing = ({ source, kind, fromMemory }: NamedSource): string =>
  kind === "common practice" || kind === "inferred" ? kind : `${source}|${fromMemory}`;

function sourceLine({ speaker }: HandoutContext, group: readonly NamedSource[]): string {
  const [first] = group;
  const values = {
    figure: speaker.capital(speaker.list([...new Set(group.map(({ figure }) => figure))])),
    citation: plainText(first?.citation ?? "").replace(/\.$/, ""),
    where: [...new Set(group.map(({ place }) => plainText(place)))].join("; "),
  };
  if (first?.kind === "common practice") return speaker.say("item.sourcePractice", values);
  if (first?.kind === "inferred") return speaker.say("item.sourceInferred", values);
  return speaker.say(first?.fromMemory ? "item.sourceMemory" : "item.source", values);
}

/** Sources that stand on the same ground, in a line; and the first of them. */
export function sourceGroups(
  context: HandoutContext,
  sources: readonly NamedSource[],
): { readonly line: string; readonly first: NamedSource }[] {
  const groups = new Map<string, NamedSource[]>();
  for (const source of sources)
    groups.set(standing(source), [...(groups.get(standing(source)) ?? []), source]);
  return [...groups.values()].map((group) => ({ line: sourceLine(context, group), first: group[0]! }));
}

/** One line for each source, with all that is taken from it. */
export const sourceLines = (context: HandoutContext, sources: readonly NamedSource[]): string[] =>
  sourceGroups(context, sources).map(({ line }) => line);

/** The same for a kind's figures. */
export const figureSourceLines = (context: HandoutContext, sources: readonly AnsweredSource[]): string[] =>
  sourceLines(
    context,
    sources.map((one) => ({ ...one, figure: context.speaker.say(`item.figure.${one.figure}`) })),
  );
