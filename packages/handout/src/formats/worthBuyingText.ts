import type { HandoutContext } from "../view/context.js";
import type { WorthBuyingView } from "../view/worthBuyingView.js";
import { blankLine, item, section, wrapped } from "./lines.js";
import { kitchenText, planText, readingText } from "./text.js";

const items = (lines: readonly string[]): string[] => lines.flatMap((line) => item(line));

/** How much of a wished list is worth buying, as plain text, and below it the plan for what is bought. */
export function worthBuyingText(context: HandoutContext, view: WorthBuyingView): string {
  const { speaker } = context;
  const lines = [
    view.title,
    ...view.summary.flatMap((line) => wrapped(line)),
    blankLine,
    ...(view.reading ? readingText(context, view.reading) : []),
    ...(view.kitchen ? section(speaker, "heading.kitchen", kitchenText(view.kitchen)) : []),
    ...section(speaker, "heading.buy", items(view.buy)),
    ...section(speaker, "heading.leaveUnbought", items(view.leave)),
    ...section(speaker, "heading.buySaves", items(view.saves)),
    ...section(speaker, "heading.buyHow", items(view.how)),
    ...section(speaker, "heading.cautions", items(view.cautions)),
  ];
  const plan = view.plan ? `\n\n${planText(context, view.plan)}` : "\n";
  return `${lines.join("\n").trimEnd()}${plan}`;
}
