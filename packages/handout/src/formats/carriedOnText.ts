import type { CarriedOnView } from "../view/carriedOnView.js";
import type { HandoutContext } from "../view/context.js";
import { blankLine, item, section, wrapped } from "./lines.js";
import { planText } from "./text.js";

/** A plan carried on as plain text: what may no longer be eaten, what changes and why, what stays, what is gone; then the plan itself. */
export function carriedOnText(context: HandoutContext, view: CarriedOnView): string {
  const { speaker } = context;
  const items = (lines: readonly string[]) => lines.flatMap((line) => item(line));
  const head = [
    view.title,
    ...wrapped(view.summary),
    blankLine,
    ...section(speaker, "heading.throwAway", items(view.throwAway)),
    ...section(speaker, "heading.begun", items(view.begun)),
    ...section(speaker, "heading.changes", items(view.changes)),
    ...section(speaker, "heading.staying", items(view.staying)),
    ...section(speaker, "heading.gone", items(view.gone)),
  ];
  return `${head.join("\n")}\n${planText(context, { ...view.plan, throwAway: [] })}`;
}
