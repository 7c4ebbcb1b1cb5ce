import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import {
  chillingRate,
  produceAtTemperature,
  produceFromCommodity,
  ripeThresholdShare,
} from "../../src/index.js";
import { whole } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";
import { useOf } from "./useOf.js";

const rows = readTable("chilling");

/** Days entered where the model expects no injury at all. */
const noInjury = 1000;

/** Days at a constant temperature [°C] until chilling alone ends a lot of a ripeness, by the model. */
function daysToInjury(kind: string, celsius: number, ripeness: number): number {
  const lot = produceAtTemperature(produceFromCommodity(commodityOf(catalogue(), kind)), whole, celsius);
  const deficit = lot.chillingDeficit + lot.chillingDeficitChange * ripeThresholdShare(ripeness);
  return Math.min(noInjury, 1 / chillingRate(lot.chillingCurve, deficit));
}

describe("published days to chilling injury", () => {
  test.each(rows)("$kind at $celsius °C, ripeness $ripeness ($sourceKey)", (row) => {
    const celsius = Number(row.celsius);
    const model = daysToInjury(row.kind!, celsius, Number(row.ripeness));
    const given = commodityOf(catalogue(), row.kind!).chilling!.injury.filter(
      ({ temperature }) => temperature === celsius,
    );
    const use = useOf(
      row,
      given.map(({ source }) => source),
    );
    // The catalogue's times are of unripe fruit.
    const beside = use === "check" && given.length > 0 && row.ripeness === "0";
    const notes = [
      beside ? "the catalogue was given another source's time here" : "",
      row.misfit ? `known misfit: ${row.why}` : "",
    ];
    const [recorded] = record("chilling", [
      {
        room: "chilling",
        what: `${row.kind}, ripeness ${row.ripeness}: days to injury at ${row.celsius} °C (${row.sourceKey})`,
        model,
        ...publishedRange(row.low, row.high),
        unit: "d",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        never: model === noInjury,
        use,
        tolerance: Number(row.tolerance),
        note: notes.filter(Boolean).join("; "),
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });

  test("the table has ten kinds, and a misfit says why", () => {
    expect(new Set(rows.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(10);
    for (const { misfit, why, source } of rows) expect(misfit === "" || why !== "", source).toBe(true);
  });
});
