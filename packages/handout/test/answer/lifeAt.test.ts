import { catalogue } from "@keepwright/catalogue";
import { lifeAt } from "@keepwright/handout";
import { produceFromCommodity } from "@keepwright/physics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const kinds = [...catalogue().commodities.values()];
const air = { temperature: 5, relativeHumidity: 95, ethylene: 0.06, ripeness: 1 };

describe("life in steady air", () => {
  it("is a range in order, with the process that ended it all the way there, for every kind", () => {
    for (const commodity of kinds) {
      const { life, shares } = lifeAt(produceFromCommodity(commodity), air);
      // What is sold under time and temperature control keeps no longer than is safe, whatever its quality.
      const limited = commodity.controlledAsSold !== undefined;
      expect(life.early, commodity.id).toBeLessThan(life.middle);
      if (limited) expect(life.late, commodity.id).toBeLessThanOrEqual(6);
      else expect(life.middle, commodity.id).toBeLessThan(life.late);
      if (life.middle >= 400) continue;
      const share = shares.find(({ ending }) => ending === life.endedBy)?.share;
      // Straight lines between whole days stand for the curve within the last one.
      expect(share, commodity.id).toBeGreaterThan(0.97);
    }
  });

  it("is never lengthened by more ethylene", () => {
    const level = fc.double({ min: 0.001, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...kinds), level, level, (commodity, one, other) => {
        const produce = produceFromCommodity(commodity);
        const lifeIn = (ethylene: number) => lifeAt(produce, { ...air, ethylene }).life.middle;
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        expect(lifeIn(more)).toBeLessThanOrEqual(lifeIn(less) * 1.001);
      }),
      { numRuns: 30 },
    );
  });
});
