import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { produceFromCommodity, ripeningSlopes } from "../../src/index.js";
import { constantLife } from "../fixtures/constantLife.js";
import { air } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";
import { useOf } from "./useOf.js";

const produceOf = (kind: string) => produceFromCommodity(commodityOf(catalogue(), kind));

describe("published days to ripen", () => {
  test.each(readTable("ripening"))("$kind at $celsius °C in $ethylene µL/L", (row) => {
    const conditions = air(Number(row.celsius), { ethylene: Number(row.ethylene), relativeHumidity: 0.985 });
    const { ripeDay } = constantLife(produceOf(row.kind!), conditions, {
      ripeness: 0,
      leaveOut: ["water", "decay"],
    });
    const [recorded] = record("ripening", [
      {
        room: "ripening",
        what: `${row.kind}: days to ripen at ${row.celsius} °C in ${row.ethylene} µL/L`,
        model: ripeDay,
        ...publishedRange(row.low, row.high),
        unit: "d",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        use: useOf(row, []),
        tolerance: Number(row.tolerance),
        note: row.misfit
          ? "known misfit: bananas sold as green have met ethylene already, so the catalogue's days are short"
          : "",
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });
});

describe("published lives of ripe fruit", () => {
  test.each(readTable("ripeLife"))("$kind at $celsius °C", (row) => {
    const leaveOut = ["water", "decay", "chilling", "senescence"] as const;
    const { days } = constantLife(produceOf(row.kind!), air(Number(row.celsius)), { ripeness: 1, leaveOut });
    const [recorded] = record("ripe-life", [
      {
        room: "ripening",
        what: `ripe ${row.kind}: days to over-ripe at ${row.celsius} °C`,
        model: days,
        ...publishedRange(row.low, row.high),
        unit: "d",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        use: useOf(row, []),
        tolerance: Number(row.tolerance),
        note: row.misfit
          ? "known misfit: the trade's limit for firm-ripe fruit in stores comes before over-ripeness"
          : "",
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });
});

test("response to ethylene keeps the order of Wills et al. 2001: banana and kiwifruit, then mango, then tomato, avocado and peach", () => {
  const slope = (kind: string) => produceOf(kind).ripening!.ethyleneSlope;
  expect(Math.min(slope("banana"), slope("kiwifruit"))).toBeGreaterThan(slope("mango"));
  for (const kind of ["tomato", "avocado", "peach"]) expect(slope("mango")).toBeGreaterThan(slope(kind));
  expect(ripeningSlopes.moderate).toBeGreaterThan(0);
});

test("the paper bag: an avocado with the ethylene of a ripe banana in a bag ripens sooner", () => {
  const days = (ethylene: number) =>
    constantLife(produceOf("avocado"), air(20, { ethylene }), { ripeness: 0, leaveOut: ["water", "decay"] })
      .ripeDay;
  expect(days(2)).toBeLessThan(0.75 * days(0.06));
});

test("in the cold unripe fruit does not ripen: avocado and tomato at 4 °C", () => {
  for (const kind of ["avocado", "tomato"]) {
    expect(constantLife(produceOf(kind), air(4), { ripeness: 0 }).ripeDay).toBe(Number.POSITIVE_INFINITY);
  }
});
