import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import {
  percentPerDay,
  produceAtTemperature,
  produceFromCommodity,
  surfaceWaterActivity,
  transpirationRate,
} from "../../src/index.js";
import { whole } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";
import { useOf } from "./useOf.js";

const rows = readTable("waterLossDays");

/** Share of burnt glucose that leaves as carbon [1], 72 of 180 g/mol: the oxygen taken up goes with it, the water set free stays. */
const carbonOfGlucose = 0.4;

/** Weight lost a day [%], water and the carbon of respiration, in air of a relative humidity [0…1]. */
function weightLossPerDay(kind: string, celsius: number, humidity: number): number {
  const lot = produceAtTemperature(produceFromCommodity(commodityOf(catalogue(), kind)), whole, celsius);
  const pressure = humidity * lot.saturationVapourPressure;
  const water = transpirationRate(1, surfaceWaterActivity * lot.saturationVapourPressure, pressure);
  return percentPerDay(lot.conductance, water) + 100 * carbonOfGlucose * lot.carbonRate;
}

describe("published weight losses over days", () => {
  test.each(rows)("$kind, $days d at $celsius °C and $humidity %", (row) => {
    const days = Number(row.days);
    const model = days * weightLossPerDay(row.kind!, Number(row.celsius), Number(row.humidity) / 100);
    const given = commodityOf(catalogue(), row.kind!).water.transpiration.source;
    const [recorded] = record("water-loss-days", [
      {
        room: "water loss",
        what: `weight loss of ${row.kind} in ${row.days} d at ${row.celsius} °C and ${row.humidity} %`,
        model,
        ...publishedRange(row.low, row.high),
        unit: "%",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        use: useOf(row, [given]),
        tolerance: Number(row.tolerance),
        note: `coefficient from ${given}${row.misfit ? `; known misfit: ${row.why}` : ""}`,
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });

  test("a misfit says why", () => {
    for (const { misfit, why, source } of rows) expect(misfit === "" || why !== "", source).toBe(true);
  });
});
