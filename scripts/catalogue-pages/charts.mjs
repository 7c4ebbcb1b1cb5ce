import { referenceEthylene } from "@keepwright/physics";
import { ripenessOnArrival } from "./curves.mjs";
import { element } from "./html.mjs";
import { humidityChart } from "./humidityChart.mjs";
import { signed } from "./numbers.mjs";
import { humidityTable, temperatureTable } from "./numbersTable.mjs";
import { temperatureChart } from "./temperatureChart.mjs";

const ripenessWords = (kind) =>
  kind.ripening
    ? `at ripeness ${signed(ripenessOnArrival(kind))} as it usually arrives (0 unripe, 1 ready to eat)`
    : "ready to eat as it comes";

const readingHelp =
  "The line is the middle: half are past their best by then. The band goes from the day by which one in ten is, to the day by which nine " +
  "in ten are. Days are on a logarithmic scale, the same on every page; what is shorter than half a day lies at its foot. What ends the life stands above the curve.";

const figure = (chart, caption, tables) =>
  element("figure", {}, chart, element("figcaption", {}, caption), tables);

/** Both charts with the same numbers as tables, and the conditions they hold for. */
export function chartParts(kind, curves) {
  const { humidity, best, byTemperature, byHumidity } = curves;
  const ends = byHumidity.length > 1 ? " What ends the life is told for the first." : "";
  const other = byHumidity.length > 1 ? ", and in a cold refrigerator" : "";
  return [
    element(
      "p",
      {},
      `Computed by the model for it whole, bare (no wrap), alone and in the dark, ${ripenessWords(kind)}, in air with ` +
        `${referenceEthylene} µL/L of ethylene as in ordinary stores. ${readingHelp}`,
    ),
    element(
      "div",
      { class: "charts" },
      figure(
        temperatureChart(kind, curves),
        `Life against temperature at ${signed(humidity)} % humidity, the middle of the recommended span.`,
        temperatureTable(byTemperature, humidity),
      ),
      figure(
        humidityChart(kind, curves),
        `Life against humidity at ${signed(best)} °C, the middle of the recommended span${other}.${ends}`,
        byHumidity.map(humidityTable),
      ),
    ),
  ];
}
