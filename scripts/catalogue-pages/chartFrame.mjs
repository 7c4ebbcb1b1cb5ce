import { element } from "./html.mjs";
import { shortestDays } from "./numbers.mjs";

/** The drawing's own units; a chart is shown at about its own size, so that its words are as large as those around it. */
export const view = { width: 400, height: 346 };
const plot = { left: 74, right: 384, top: 64, bottom: 256 };
export const { left: plotLeft, top: plotTop, bottom: plotBottom } = plot;

/** The longest life that can be told apart [d]; all pages share one scale, so that they can be laid side by side. */
const longestDays = 730;
const dayMarks = [
  [0.5, "half a day"],
  [1, "1 day"],
  [2, "2 days"],
  [4, "4 days"],
  [7, "1 week"],
  [14, "2 weeks"],
  [30, "1 month"],
  [90, "3 months"],
  [180, "6 months"],
  [365, "1 year"],
];

/** Height of a life on the logarithmic scale, held to its ends. */
export function dayPlace(days) {
  const held = Math.min(longestDays, Math.max(shortestDays, days));
  const share = Math.log(held / shortestDays) / Math.log(longestDays / shortestDays);
  return Math.round(plot.bottom - share * (plot.bottom - plot.top));
}

/** Places along the axis for values between two ends. */
export const alongAxis = (first, last) => (value) =>
  Math.round(plot.left + ((value - first) / (last - first)) * (plot.right - plot.left));

export const chartLine = (x1, y1, x2, y2, className) => element("line", { x1, y1, x2, y2, class: className });
export const chartText = (x, y, text, attributes = {}) => element("text", { x, y, ...attributes }, text);

/** About how wide a word is drawn, in the drawing's units; on the wide side. */
export const textWidth = (text) => Math.ceil(text.length * 7);

/** A row below the axis that says what a mark in the chart stands for: the mark, then its words. */
export const keyRow = (row, mark, words) => {
  const y = plot.bottom + 34 + row * 15;
  return [mark({ x: plot.left, y: y - 4, width: 26 }), chartText(plot.left + 34, y, words)];
};

const yAxis = () =>
  element(
    "g",
    { class: "axis" },
    dayMarks.map(([days, name]) => [
      chartLine(plot.left, dayPlace(days), plot.right, dayPlace(days), "grid"),
      chartText(plot.left - 5, dayPlace(days) + 4, name, { "text-anchor": "end" }),
    ]),
  );

const xAxis = (place, ticks, label) =>
  element(
    "g",
    { class: "axis" },
    chartLine(plot.left, plot.bottom, plot.right, plot.bottom, "rim"),
    ticks.map(({ value, name }) => [
      chartLine(place(value), plot.bottom, place(value), plot.bottom + 4, "rim"),
      chartText(place(value), plot.bottom + 17, name, { "text-anchor": "middle" }),
    ]),
    chartText((plot.left + plot.right) / 2, view.height - 6, label, {
      "text-anchor": "middle",
      class: "label",
    }),
  );

/** The path of the band from the early to the late end of every point. */
export function bandPath(points, place) {
  const at = (point, end) => `${place(point)},${dayPlace(point[end])}`;
  const late = points.map((point) => at(point, "late"));
  const early = points.map((point) => at(point, "early")).reverse();
  return `M${[...late, ...early].join(" ")}Z`;
}

export const linePath = (points, place, end = "middle") =>
  `M${points.map((point) => `${place(point)},${dayPlace(point[end])}`).join(" ")}`;

/** A chart with its name and description for those who do not see it, the two axes, and what is drawn between them. */
export function chartFrame({ id, title, description, place, ticks, label }, ...drawn) {
  return element(
    "svg",
    {
      viewBox: `0 0 ${view.width} ${view.height}`,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-description`,
    },
    element("title", { id: `${id}-title` }, title),
    element("desc", { id: `${id}-description` }, description),
    yAxis(),
    drawn,
    xAxis(place, ticks, label),
  );
}
