import { element } from "./html.mjs";
import { daysText, fahrenheit, signed } from "./numbers.mjs";
import { endingWords } from "./words.mjs";

const header = (names) =>
  element(
    "thead",
    {},
    element(
      "tr",
      {},
      names.map((name) => element("th", { scope: "col" }, name)),
    ),
  );

const lifeCells = ({ early, middle, late, endedBy }) =>
  [daysText(early), daysText(middle), daysText(late), endingWords(endedBy)].map((text) =>
    element("td", {}, text),
  );

const openable = (summary, caption, names, rows) =>
  element(
    "details",
    {},
    element("summary", {}, summary),
    element(
      "table",
      { class: "numbers" },
      element("caption", {}, caption),
      header(names),
      element("tbody", {}, rows),
    ),
  );

const rowHead = (text) => element("th", { scope: "row" }, text);
const lifeNames = ["early", "middle", "late", "ended by"];

/** Every point of the chart against temperature. */
export const temperatureTable = (points, humidity) =>
  openable(
    "The same numbers as a table",
    `Days until 10 %, 50 % and 90 % are past their best, at ${signed(humidity)} % humidity`,
    ["°C", "°F", ...lifeNames],
    points.map((point) =>
      element(
        "tr",
        {},
        rowHead(signed(point.temperature)),
        element("td", {}, signed(fahrenheit(point.temperature))),
        lifeCells(point),
      ),
    ),
  );

/** Every point of one curve of the chart against humidity. */
export const humidityTable = ({ temperature, points }) =>
  openable(
    `The same numbers as a table: at ${signed(temperature)} °C`,
    `Days until 10 %, 50 % and 90 % are past their best, at ${signed(temperature)} °C`,
    ["humidity, %", ...lifeNames],
    points.map((point) => element("tr", {}, rowHead(String(point.relativeHumidity)), lifeCells(point))),
  );
