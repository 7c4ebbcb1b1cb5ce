import type { HandoutContext } from "../view/context.js";
import type { WhyView } from "../view/whyView.js";
import { item, section, wrapped } from "./lines.js";

/** Why lots lie where they do, as plain text to stand below a plan. */
export function whyText({ speaker }: HandoutContext, views: readonly WhyView[]): string {
  const lines = section(
    speaker,
    "heading.why",
    views.flatMap(({ line, reasons }) => [
      ...wrapped(line, "  "),
      ...reasons.flatMap((reason) => item(reason, "    ")),
    ]),
  );
  return `${lines.join("\n").trimEnd()}\n`;
}
