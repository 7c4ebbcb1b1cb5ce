import type { SlideChart } from "@keepwright/handout";
import type Maker from "pptxgenjs";
import { type Box, chartText, colours, fonts } from "./looks.js";

type Slide = Maker.default.Slide;

/** Colours that stand for the fills of series; `patterned` turns the second into hatching and the third into white with a rim. */
const fills = { full: colours.ink, hatched: colours.accent, empty: colours.white } as const;
const inTurn = ["full", "hatched", "empty"] as const;

const axis = {
  catAxisLabelFontFace: fonts.body,
  catAxisLabelFontSize: chartText,
  catAxisLabelColor: colours.ink,
  valAxisLabelFontFace: fonts.body,
  valAxisLabelFontSize: 12,
  valAxisLabelColor: colours.soft,
  valGridLine: { color: "D5D6CD", size: 0.5 },
  catGridLine: { style: "none" },
} as const;

const legend = {
  showLegend: true,
  legendPos: "b",
  legendFontFace: fonts.body,
  legendFontSize: chartText,
  legendColor: colours.ink,
} as const;

const kinds = {
  // Bars of several series lie on one line: each category has a bar in one of them only.
  bars: { type: "bar", more: { barDir: "bar", barGapWidthPct: 55, barOverlapPct: 100 } },
  parts: { type: "bar", more: { barDir: "bar", barGrouping: "stacked", barGapWidthPct: 45 } },
  lines: { type: "line", more: { lineSize: 3, lineDataSymbolSize: 9, lineDataSymbol: "circle" } },
} as const;

/** Bars run from the bottom up, so what is to be read first is given last. */
const inOrder = <Value>(chart: SlideChart, values: readonly Value[]): Value[] =>
  chart.chart === "lines" ? [...values] : [...values].reverse();

/** The maker's workbook leaves out a zero that is a number; what is not there is taken out on packing. */
const written = (value: number | null): number => (value === 0 ? "0" : value) as number;

/** Puts a native chart on a slide, which can be opened and changed in the program that shows it. */
export function addChart(slide: Slide, chart: SlideChart, box: Box): void {
  const { type, more } = kinds[chart.chart];
  const format = chart.digits === 0 ? "0" : `0.${"0".repeat(chart.digits)}`;
  const data = chart.series.map(({ name, values }) => ({
    name,
    labels: inOrder(chart, chart.categories),
    values: inOrder(chart, values).map(written),
  }));
  slide.addChart(type as Maker.default.CHART_NAME, data, {
    ...box,
    ...axis,
    ...more,
    ...(chart.series.length > 1 ? legend : { showLegend: false }),
    chartColors: chart.series.map(({ fill }, at) => fills[fill ?? inTurn[at]!]),
    showValue: chart.chart === "bars",
    dataLabelFormatCode: format,
    dataLabelFontFace: fonts.body,
    dataLabelFontSize: chartText,
    dataLabelColor: colours.ink,
    ...(chart.chart === "bars" && { dataLabelPosition: "outEnd" as const }),
    showValAxisTitle: true,
    valAxisTitle: chart.axis,
    valAxisTitleFontFace: fonts.body,
    valAxisTitleFontSize: chartText,
    valAxisTitleColor: colours.soft,
    valAxisMinVal: 0,
    altText: chart.alt,
  });
}
