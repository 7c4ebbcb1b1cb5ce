import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { produceFromCommodity } from "../../src/index.js";
import { constantLife } from "../fixtures/constantLife.js";
import { air } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { record } from "./record.js";

/** The end of a published range nearest to the model's value, or the value itself inside the range. */
const nearest = (days: number, low: number, high: number) => Math.min(high, Math.max(low, days));

const rows = readTable("lives");

describe("published lives at several temperatures", () => {
  test("the table has at least a dozen checks", () => {
    expect(rows.filter(({ use }) => use === "check").length).toBeGreaterThanOrEqual(12);
  });

  test.each(rows)("$kind at $celsius °C ($use)", (row) => {
    const [celsius, low, high] = [Number(row.celsius), Number(row.low), Number(row.high)];
    const produce = produceFromCommodity(commodityOf(catalogue(), row.kind!));
    const conditions = air(celsius, { ethylene: Number(row.ethylene), relativeHumidity: 0.985 });
    const { days, endedBy } = constantLife(produce, conditions, { leaveOut: ["water"] });
    const [recorded] = record("lives", [
      {
        room: "keeping quality",
        what: `life of ${row.kind} at ${row.celsius} °C`,
        model: days,
        published: nearest(days, low, high),
        unit: "d",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        use: row.use as "fit" | "check",
        tolerance: Number(row.tolerance),
        note: `published ${low}–${high} d; the model ends it by ${endedBy}${row.misfit ? "; known misfit" : ""}`,
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });
});
