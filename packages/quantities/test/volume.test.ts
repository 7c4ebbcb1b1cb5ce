import {
  litresFromMillilitres,
  litresPerCup,
  litresPerDryPint,
  litresPerLiquidPint,
} from "@keepwright/quantities";
import { describe, expect, it } from "vitest";

describe("volume", () => {
  it("keeps the two US pints apart, by their cubic inches (an inch is 2.54 cm)", () => {
    expect(litresPerLiquidPint).toBeCloseTo((28.875 * 2.54 ** 3) / 1000, 9);
    expect(litresPerDryPint).toBeCloseTo((33.6003125 * 2.54 ** 3) / 1000, 9);
    expect(litresPerCup * 2).toBe(litresPerLiquidPint);
  });
  it("counts a thousand millilitres in a litre", () => expect(litresFromMillilitres(1000)).toBe(1));
});
