import { plotBottom, plotTop } from "./chartFrame.mjs";
import { element } from "./html.mjs";

/** A single recommended value is drawn as wide as can be seen. */
const leastWidth = 4;

/** The recommended span as a strip over the whole height of a chart. */
export function recommendedStrip(place, { low, high }) {
  const [from, to] = [place(low), place(high)];
  const width = Math.max(leastWidth, to - from);
  const x = Math.round((from + to - width) / 2);
  return element("rect", { x, y: plotTop, width, height: plotBottom - plotTop, class: "recommended" });
}

/** The strip's mark in the key. */
export const recommendedMark = ({ x, y, width }) =>
  element("rect", { x, y: y - 5, width, height: 10, class: "recommended" });
