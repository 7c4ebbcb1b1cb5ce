import type { HandoutContext } from "../view/context.js";
import type { JudgementView } from "../view/judgementView.js";
import { blankLine, item, placesLines, section, wrapped } from "./lines.js";
import { kitchenText, readingText } from "./text.js";

const items = (lines: readonly string[]): string[] => lines.flatMap((line) => item(line));

/** A judgement as plain text: what is unsafe first, then what it costs and why, then how it lies. */
export function judgementText(context: HandoutContext, view: JudgementView): string {
  const { speaker } = context;
  const conflicts = view.conflicts.flatMap(({ line, why }) => [
    ...item(line),
    ...why.flatMap((reason) => wrapped(reason, "      ")),
  ]);
  const lines = [
    view.title,
    ...view.summary.flatMap((line) => wrapped(line)),
    blankLine,
    ...section(speaker, "heading.throwAway", items(view.throwAway)),
    ...section(speaker, "heading.unsafe", items(view.unsafe)),
    ...(view.reading ? readingText(context, view.reading) : []),
    ...(view.kitchen ? section(speaker, "heading.kitchen", kitchenText(view.kitchen)) : []),
    ...section(speaker, "heading.notTold", items(view.notTold)),
    ...section(
      speaker,
      "heading.beside",
      [...view.cost, speaker.say("waste.note")].flatMap((line) => wrapped(line, "  ")),
    ),
    ...section(speaker, "heading.conflicts", conflicts),
    ...section(speaker, "heading.alsoSeen", items(view.alsoSeen)),
    ...section(speaker, "heading.lotByLot", items(view.lots)),
    ...section(speaker, "heading.asYouHaveIt", placesLines(context, view.places)),
    ...section(speaker, "heading.moves", items(view.moves.map(({ line }) => line))),
    ...section(speaker, "heading.cautions", items(view.cautions)),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}
