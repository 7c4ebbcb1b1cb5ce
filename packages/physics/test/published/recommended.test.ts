import { type Commodity, catalogue } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { produceFromCommodity } from "../../src/index.js";
import { constantLife } from "../fixtures/constantLife.js";
import { air } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { record } from "./record.js";

const commodities = [...catalogue().commodities.values()];
const misfits = new Map(readTable("recommended").map((row) => [row.kind!, row]));

/** Largest factor off the nearest end of the published range that is still called agreement; the same as in lives.csv, for the same reason. */
const tolerance = 1.5;

/**
 * Life at the recommended temperature and the middle of the recommended humidity, which is what a wrap that keeps to the recommendation holds around it; every ending
 * counted, water, rot and sprouting too. Mature but unripe where it ripens, unless it comes home ripe.
 */
function recommendedLife(commodity: Commodity) {
  const { storage, ripening } = commodity;
  const produce = produceFromCommodity(commodity);
  const { low, high } = storage.relativeHumidity;
  const conditions = air(produce.storageTemperature, { relativeHumidity: (low + high) / 200 });
  // A storage life is told by quality; the safe time of what is sold under control is a rule beside it.
  return constantLife(produce, conditions, {
    leaveOut: ["safety"],
    ripeness: ripening && ripening.arrives.value < 1 ? 0 : 1,
  });
}

describe("published lives at the recommended conditions, every ending but safe time counted", () => {
  test.each(commodities.map((commodity) => [commodity.id, commodity] as const))("%s", (id, commodity) => {
    const { life, temperature, relativeHumidity } = commodity.storage;
    const { days, endedBy } = recommendedLife(commodity);
    const known = misfits.get(id);
    const at = `${temperature.low}–${temperature.high} °C and ${relativeHumidity.low}–${relativeHumidity.high} %`;
    const [recorded] = record("recommended", [
      {
        room: "recommended conditions",
        what: `life of ${id} at its recommended conditions`,
        model: days,
        publishedLow: life.low,
        publishedHigh: life.high,
        unit: "d",
        source: `${life.source}, ${life.place}`,
        fromMemory: life.fromMemory,
        // The model was given this life: what can be off is what it adds (water loss, rot, sprouting), so it is no independent check.
        use: "fit",
        tolerance,
        note: `at ${at}; the model ends it by ${endedBy}${known ? `; known misfit: ${known.why}` : ""}`,
      },
    ]);
    expectAgreement(recorded, known?.misfit);
  });

  test("a known misfit is of a kind there is, and says which figure seems to blame", () => {
    const ids = new Set(commodities.map(({ id }) => id));
    for (const [kind, { why }] of misfits) expect(ids.has(kind) && why !== "", kind).toBe(true);
  });
});
