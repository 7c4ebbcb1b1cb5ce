import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { produceFromCommodity } from "../../src/index.js";
import { constantLife } from "../fixtures/constantLife.js";
import { air } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";
import { useOf } from "./useOf.js";

const rows = readTable("ripeningTreated");

/** Says so where the model only hands on the catalogue's days, which hold for 20 °C and the air of stores, so that two sources are compared. */
const handedOn = ({ celsius, celsiusAgainst, ethylene }: Record<string, string>) =>
  celsius === "20" && ethylene === "0.06" && !celsiusAgainst
    ? "the catalogue's own figure, from elsewhere"
    : "";

/** Days entered where the model does not ripen it at all. */
const neverRipe = 1000;

/** Days to ready to eat of mature-unripe fruit at a constant temperature [°C] in ethylene [µL/L], whatever else ends it being left aside. */
function daysToRipen(kind: string, celsius: number, ethylene: number): number {
  const conditions = air(celsius, { ethylene, relativeHumidity: 0.985 });
  const leaveOut = ["water", "decay", "chilling", "senescence"] as const;
  const produce = produceFromCommodity(commodityOf(catalogue(), kind));
  return Math.min(neverRipe, constantLife(produce, conditions, { ripeness: 0, leaveOut }).ripeDay);
}

describe("published days to ripen, treated, untreated and relative", () => {
  test.each(rows)("$kind at $celsius °C in $ethylene µL/L ($sourceKey)", (row) => {
    const [celsius, ethylene] = [Number(row.celsius), Number(row.ethylene)];
    const relative = row.celsiusAgainst !== "";
    const days = daysToRipen(row.kind!, celsius, ethylene);
    const model = relative ? days / daysToRipen(row.kind!, Number(row.celsiusAgainst), ethylene) : days;
    const given = commodityOf(catalogue(), row.kind!).ripening!.daysToRipe.source;
    const what = relative
      ? `${row.kind}: days to ripen at ${celsius} relative to ${row.celsiusAgainst} °C`
      : `${row.kind}: days to ripen at ${celsius} °C in ${ethylene} µL/L (${row.sourceKey})`;
    const [recorded] = record("ripening-treated", [
      {
        room: "ripening",
        what,
        model,
        ...publishedRange(row.low, row.high),
        unit: relative ? "1" : "d",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        never: model === neverRipe,
        use: useOf(row, [given]),
        tolerance: Number(row.tolerance),
        note: [handedOn(row), row.misfit ? `known misfit: ${row.why}` : ""].filter(Boolean).join("; "),
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });

  test("a misfit says why", () => {
    for (const { misfit, why, source } of rows) expect(misfit === "" || why !== "", source).toBe(true);
  });
});
