import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { pressurePerDensity, produceAtTemperature, produceFromCommodity, wrapAir } from "../../src/index.js";
import { whole } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";

const rows = readTable("wraps");

/** Share of burnt glucose that leaves as carbon [1], 72 of 180 g/mol: the oxygen taken up goes with it, the water set free stays. */
const carbonOfGlucose = 0.4;

interface Lot {
  readonly kind: string;
  readonly celsius: number;
  /** Relative humidity of the place, 0…1. */
  readonly humidity: number;
  readonly days: number;
  readonly kilograms: number;
}

/**
 * Weight lost [%] and relative humidity inside [%] of a lot in a wrap: the settled air of simulate/airAround, written out again from its equations
 * (docs/model/climate.md, Wraps) so that the comparison does not lean on the stepper. Dry wraps only.
 */
function inWrap({ kind, celsius, humidity, days, kilograms }: Lot, wrap: string) {
  const lot = produceAtTemperature(produceFromCommodity(commodityOf(catalogue(), kind)), whole, celsius);
  const around = wrapAir(catalogue().wraps.get(wrap)!, kilograms);
  const passes = around.exchange / pressurePerDensity(celsius);
  const gives = lot.conductance * kilograms;
  const outside = humidity * lot.saturationVapourPressure;
  const inside = (passes * outside + gives * lot.surfaceVapourPressure) / (passes + gives);
  const pressure = Math.min(inside, lot.saturationVapourPressure);
  const water = lot.conductance * Math.max(0, lot.surfaceVapourPressure - pressure) * 86_400;
  return {
    loss: 100 * days * (water + carbonOfGlucose * lot.carbonRate),
    humidity: (100 * pressure) / lot.saturationVapourPressure,
  };
}

function modelled(lot: Lot, wrap: string, quantity: string): number {
  const wrapped = inWrap(lot, wrap);
  if (quantity === "humidity") return wrapped.humidity;
  return quantity === "loss" ? wrapped.loss : wrapped.loss / inWrap(lot, "none").loss;
}

const told = { ratio: "loss relative to bare", humidity: "humidity inside", loss: "loss" } as const;

describe("published effects of wraps", () => {
  test.each(rows)("$kind in a $wrap at $celsius °C ($quantity)", (row) => {
    const lot = {
      kind: row.kind!,
      celsius: Number(row.celsius),
      humidity: Number(row.humidity) / 100,
      days: Number(row.days),
      kilograms: Number(row.kilograms),
    };
    const quantity = row.quantity as keyof typeof told;
    const model = modelled(lot, row.wrap!, quantity);
    const [recorded] = record("wraps", [
      {
        room: "wraps",
        what: `${row.kind} in a ${row.wrap}, ${row.kilograms} kg, ${row.days} d at ${row.celsius} °C: ${told[quantity]}`,
        model,
        ...publishedRange(row.low, row.high),
        unit: quantity === "ratio" ? "1" : "%",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        use: "check",
        tolerance: Number(row.tolerance),
        note: `not told and taken: ${row.taken || "nothing"}${row.misfit ? `; known misfit: ${row.why}` : ""}`,
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });

  test("a misfit says why", () => {
    for (const { misfit, why, source } of rows) expect(misfit === "" || why !== "", source).toBe(true);
  });
});
