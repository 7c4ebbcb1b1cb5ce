import { relativesSource } from "@keepwright/catalogue";
import { signed, span, twoDigits } from "./numbers.mjs";

/** Units as people write them, with the parts of one unit held together. */
const unitWords = {
  d: "days",
  "d at 20 °C": "days at 20 °C",
  ripeness: "",
  "mg CO2/(kg h)": "mg CO₂/(kg\u00a0h)",
  "µL/(kg h)": "µL/(kg\u00a0h)",
  "ng/(kg s Pa)": "ng/(kg\u00a0s\u00a0Pa)",
};
const withUnit = (text, unit) => `${text} ${unitWords[unit] ?? unit ?? ""}`.trim();

/** What is inferred from relatives comes out of a computation and is rounded; what somebody stated is given as stated. */
const writerFor = ({ source }) => (source === relativesSource ? twoDigits : signed);

/** The range of a figure without its unit: "3–5". */
export const rangeText = (figure) => span(figure.low, figure.high, writerFor(figure));

/** A figure in words: value, range and unit, as far as it has them. */
export function figureText(figure) {
  const write = writerFor(figure);
  const { value, low, high, unit } = figure;
  const range = low !== undefined && high !== undefined ? span(low, high, write) : undefined;
  if (value === undefined) return withUnit(range, unit);
  const only = withUnit(write(value), unit);
  if (range === undefined && low !== undefined) return `${only} (from ${write(low)})`;
  if (range === undefined && high !== undefined) return `${only} (up to ${write(high)})`;
  return range === undefined || range === write(value) ? only : `${only} (${range})`;
}

/** A row of the list of figures: its name, what it is in words, where it comes from, and the rival figures. */
export const shared = (name, text, evidence) => ({ name, text, evidence, rivals: [] });

export const single = (name, figure) => ({
  ...shared(name, figureText(figure), figure),
  rivals: (figure.rivals ?? []).map((rival) => ({ text: figureText(rival), evidence: rival })),
});

const sameEvidence = (one, other) =>
  ["source", "place", "kind", "fromMemory", "note"].every((key) => one[key] === other[key]);

/** Figures at several temperatures; those with the very same evidence share a row. */
export function tabled(name, figures, before = () => "") {
  const rows = [];
  for (const figure of figures) {
    const text = `${before(figure)}${signed(figure.temperature)} °C: ${figureText(figure)}`;
    const last = rows.at(-1);
    if (last && sameEvidence(last.evidence, figure)) last.text += `; ${text}`;
    else rows.push(shared(name, text, figure));
  }
  return rows;
}
