import { catalogue } from "@keepwright/catalogue";
import { expect, test } from "vitest";
import { type Produce, produceFromCommodity, ripeningQ10 } from "../../src/index.js";

/** Kelvins a storage life must have been told below 20 °C for its Q10 to mean something: nearer, a week more or less makes any. */
const farEnough = 10;

/**
 * Q10 with which the published life through ripening at 20 °C becomes the published storage life [1], by halving; all three figures are the catalogue's. The ripe life is brought
 * to 20 °C by the same Q10.
 */
function impliedQ10({ ripening, storageLifeDays, storageTemperature }: Produce): number {
  const { daysAt20, ripeLifeDays, ripeLifeTemperature } = ripening!;
  const storageLife = (q10: number) =>
    (daysAt20 + ripeLifeDays * q10 ** ((ripeLifeTemperature - 20) / 10)) *
    q10 ** ((20 - storageTemperature) / 10);
  let [least, most] = [0.5, 50];
  for (let halving = 0; halving < 60; halving++) {
    const middle = Math.sqrt(least * most);
    if (storageLife(middle) < storageLifeDays) least = middle;
    else most = middle;
  }
  return least;
}

test("one Q10 holds for storing, ripening and over-ripening: published storage lives and days to ripen imply it, in the middle of the kinds", () => {
  const implied = [...catalogue().commodities.values()]
    .map(produceFromCommodity)
    .filter(({ ripening, storageTemperature }) => ripening && storageTemperature <= 20 - farEnough)
    .map(impliedQ10)
    .sort((one, other) => one - other);
  expect(implied.length).toBeGreaterThanOrEqual(12);
  const middle = implied[Math.floor(implied.length / 2)]!;
  expect(middle / ripeningQ10).toBeGreaterThan(0.8);
  expect(middle / ripeningQ10).toBeLessThan(1.25);
});
