import { alongAxis, bandPath, chartFrame, chartLine, keyRow, linePath } from "./chartFrame.mjs";
import { humidities, stretches } from "./curves.mjs";
import { endingStrip } from "./endingStrip.mjs";
import { rangeText } from "./figureRows.mjs";
import { element } from "./html.mjs";
import { daysText, signed, span } from "./numbers.mjs";
import { recommendedMark, recommendedStrip } from "./recommendedStrip.mjs";
import { endingWords } from "./words.mjs";

const place = alongAxis(humidities[0], humidities.at(-1));
const placeOf = ({ relativeHumidity }) => place(relativeHumidity);
const ticks = [30, 40, 50, 60, 70, 80, 90, 100].map((value) => ({ value, name: String(value) }));

function described({ temperature, points }) {
  const told = (point) =>
    `${point.relativeHumidity} %: ${daysText(point.middle)} days (${daysText(point.early)} to ${daysText(point.late)})`;
  const ends = stretches(points, ({ relativeHumidity }) => relativeHumidity)
    .map(({ endedBy, from, to }) => `${endingWords(endedBy)} at ${span(from, to)} %`)
    .join("; ");
  return `At ${signed(temperature)} °C: at ${told(points[0])}, at ${told(points.at(-1))}; ended by ${ends}.`;
}

const curve = ({ points }, second) => [
  element("path", { d: bandPath(points, placeOf), class: second ? "band second" : "band" }),
  element("path", { d: linePath(points, placeOf), class: second ? "middle second" : "middle" }),
];

const curveMark =
  (className) =>
  ({ x, y, width }) =>
    chartLine(x, y, x + width, y, className);

/** Days of life against humidity: at the recommended temperature (filled, whole line), and in a refrigerator (outlined, broken line). */
export function humidityChart(kind, { byHumidity }) {
  const [best, cold] = byHumidity;
  const recommended = kind.storage.relativeHumidity;
  const runs = stretches(best.points, ({ relativeHumidity }) => relativeHumidity);
  return chartFrame(
    {
      id: "humidity",
      title: `How long ${kind.names.en.many} keep at each humidity`,
      description: byHumidity.map(described).join(" "),
      place,
      ticks,
      label: "relative humidity, %",
    },
    recommendedStrip(place, recommended),
    keyRow(0, recommendedMark, `recommended ${rangeText(recommended)} %`),
    curve(best, false),
    cold && [
      curve(cold, true),
      keyRow(1, curveMark("middle"), `at ${signed(best.temperature)} °C, with the filled band`),
      keyRow(2, curveMark("middle second"), `at ${signed(cold.temperature)} °C, with the dotted outline`),
    ],
    endingStrip(runs, place),
  );
}
