import {
  alongAxis,
  bandPath,
  chartFrame,
  chartLine,
  keyRow,
  linePath,
  plotBottom,
  plotTop,
} from "./chartFrame.mjs";
import { stretches, temperatures } from "./curves.mjs";
import { endingStrip } from "./endingStrip.mjs";
import { element } from "./html.mjs";
import { daysText, signed, span } from "./numbers.mjs";
import { recommendedMark, recommendedStrip } from "./recommendedStrip.mjs";
import { endingWords } from "./words.mjs";

const place = alongAxis(temperatures[0], temperatures.at(-1));
const placeOf = ({ temperature }) => place(temperature);
const ticks = [0, 5, 10, 15, 20, 25, 30].map((value) => ({ value, name: String(value) }));

const verticalAt = (celsius, className) =>
  chartLine(place(celsius), plotTop, place(celsius), plotBottom, className);
const lineMark =
  (className) =>
  ({ x, y, width }) =>
    chartLine(x, y, x + width, y, className);

/** The lowest safe temperature, or both where a ripe one bears more cold, as lines with their key. */
function lowestSafe({ chilling }) {
  if (!chilling) return undefined;
  const { threshold, thresholdWhenRipe } = chilling;
  const named = `lowest safe temperature ${signed(threshold.value)} °C`;
  return [
    verticalAt(threshold.value, "safe"),
    keyRow(1, lineMark("safe"), thresholdWhenRipe ? `${named}, unripe` : named),
    thresholdWhenRipe && [
      verticalAt(thresholdWhenRipe.value, "safe ripe"),
      keyRow(2, lineMark("safe ripe"), `lowest safe temperature ${signed(thresholdWhenRipe.value)} °C, ripe`),
    ],
  ];
}

function described(points) {
  const longest = points.reduce((best, point) => (point.middle > best.middle ? point : best));
  const told = (point) =>
    `${signed(point.temperature)} °C: ${daysText(point.middle)} days (${daysText(point.early)} to ${daysText(point.late)})`;
  const ends = stretches(points, ({ temperature }) => temperature)
    .map(({ endedBy, from, to }) => `${endingWords(endedBy)} at ${span(from, to)} °C`)
    .join("; ");
  const at = (celsius) => points.find(({ temperature }) => temperature === celsius);
  return `Longest at ${told(longest)}. At ${told(at(4))}. At ${told(at(20))}. Ended by ${ends}.`;
}

/** Days of life against temperature: the band from early to late, the middle, what ends it, and the temperatures to know. */
export function temperatureChart(kind, { byTemperature }) {
  const recommended = kind.storage.temperature;
  const runs = stretches(byTemperature, ({ temperature }) => temperature);
  return chartFrame(
    {
      id: "temperature",
      title: `How long ${kind.names.en.many} keep at each temperature`,
      description: described(byTemperature),
      place,
      ticks,
      label: "temperature, °C",
    },
    recommendedStrip(place, { ...recommended, low: Math.max(temperatures[0], recommended.low) }),
    keyRow(0, recommendedMark, `recommended ${span(recommended.low, recommended.high)} °C`),
    element("path", { d: bandPath(byTemperature, placeOf), class: "band" }),
    element("path", { d: linePath(byTemperature, placeOf), class: "middle" }),
    lowestSafe(kind),
    endingStrip(runs, place),
  );
}
