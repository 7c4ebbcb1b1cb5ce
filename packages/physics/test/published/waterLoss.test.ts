import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import {
  percentPerDay,
  produceFromCommodity,
  saturationPressure,
  surfaceWaterActivity,
} from "../../src/index.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";
import { useOf } from "./useOf.js";

/** Source id of coefficients taken from the classes. */
const ofClasses = "postharvest-australia-display";

const difference = (surfaceWaterActivity - 0.8) * saturationPressure(5);

describe("water loss at 5 °C and 80 % relative humidity against the classes of postharvest.net.au", () => {
  const rows = readTable("waterLoss").filter(({ kind }) => catalogue().commodities.has(kind!));
  const comparisons = rows.map((row) => {
    const { kind, low, high } = row;
    const commodity = commodityOf(catalogue(), kind!);
    const model = percentPerDay(produceFromCommodity(commodity).transpiration, difference);
    const { source } = commodity.water.transpiration;
    return {
      room: "water loss",
      what: `water loss of ${kind} at 5 °C and 80 %`,
      model,
      ...publishedRange(low, high),
      unit: "%/d",
      source: "postharvest.net.au, summary tables, display considerations",
      fromMemory: false,
      // Coefficients that were inferred or taken from these very classes do not check them.
      use:
        source === "keepwright-inference"
          ? ("fit" as const)
          : useOf({ ...row, sourceKey: ofClasses }, [source]),
      tolerance: 2,
      note: `coefficient from ${source}`,
    };
  });
  const recorded = record("water-loss", comparisons);

  test("has at least six true checks", () =>
    expect(recorded.filter(({ use }) => use === "check").length).toBeGreaterThanOrEqual(6));
  // Robinson, Browne & Burton 1975 measured single pieces in moving air; in a display they lie close together. Nobody's figure is bent to the other's.
  const knownMisfits = ["brussels-sprouts", "cauliflower", "celery"];
  test("agrees within a factor of 2, save three kinds known to be 2 to 3 times too fast by Robinson's coefficients", () => {
    for (const { what, use, within, ratio } of recorded) {
      const known = knownMisfits.some((kind) => what.includes(` ${kind} `));
      if (use === "check" && known) expect(ratio > 2 && ratio < 3, `${what}: ${ratio}`).toBe(true);
      else expect(within, what).toBe(true);
    }
  });
});

test("tomatoes at 10 °C and 90 % lose 1.41 % in 15 days (AIMS Agriculture and Food 2020, 5(2):272, stored at once after harvest; read)", () => {
  const { transpiration } = produceFromCommodity(commodityOf(catalogue(), "tomato"));
  const [recorded] = record("water-loss-tomato", [
    {
      room: "water loss",
      what: "water loss of tomato at 10 °C and 90 % in 15 days",
      model: 15 * percentPerDay(transpiration, (surfaceWaterActivity - 0.9) * saturationPressure(10)),
      published: 1.41,
      unit: "%",
      source: "AIMS Agriculture and Food 2020, 5(2):272 (abstract): immediate storage",
      fromMemory: false,
      use: "check",
      tolerance: 1.5,
    },
  ]);
  expect(recorded!.within, String(recorded!.ratio)).toBe(true);
});
