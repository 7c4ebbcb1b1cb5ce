import { classes } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ethyleneActionFactor,
  ethyleneProduction,
  injuryConcentrationFactor,
  injuryOnset,
  injuryRate,
  leastActionFactor,
  leastEthylene,
  mostEthylene,
  productionAtRipeness,
  productionQ10,
  referenceEthylene,
  sensitivitySlopes,
} from "../../src/index.js";

const concentration = () => fc.double({ min: 0, max: 1000, noNaN: true });

describe("ethylene on a life", () => {
  test("is 1 at the reference", () =>
    expect(ethyleneActionFactor(0.4, referenceEthylene)).toBeCloseTo(1, 12));
  test("falls by the slope for each tenfold", () => {
    expect(ethyleneActionFactor(0.3, 10 * referenceEthylene)).toBeCloseTo(0.7, 12);
  });
  test("is held outside the range it is known for", () => {
    expect(ethyleneActionFactor(0.3, 0)).toBe(ethyleneActionFactor(0.3, leastEthylene));
    expect(ethyleneActionFactor(0.3, 100)).toBe(ethyleneActionFactor(0.3, mostEthylene));
  });
  test("more never lengthens it, and it never ends at once", () => {
    fc.assert(
      fc.property(
        concentration(),
        concentration(),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, other, slope) => {
          const [less, more] = one < other ? [one, other] : [other, one];
          const factor = ethyleneActionFactor(slope, more);
          return factor <= ethyleneActionFactor(slope, less) && factor >= leastActionFactor;
        },
      ),
    );
  });
  test("classes of sensitivity go up", () => {
    const slopes = classes.map((name) => sensitivitySlopes[name]);
    expect(slopes).toEqual([...slopes].sort((one, other) => one - other));
  });
});

describe("a named ethylene injury", () => {
  test("is complete after its days in its published concentration and temperature", () => {
    expect(injuryConcentrationFactor(0.5, 0.5) * injuryRate(14, 1, 2, -10)).toBeCloseTo(1 / 14, 12);
  });
  test("does not grow in the air that published lives hold in", () => {
    expect(injuryConcentrationFactor(referenceEthylene, 0.5)).toBe(0);
    expect(injuryConcentrationFactor(0, 0.5)).toBe(0);
  });
  test("starts at half a published concentration that is itself below that air", () => {
    expect(injuryOnset(0.04)).toBeCloseTo(0.02, 12);
    expect(injuryConcentrationFactor(0.04, 0.04)).toBeCloseTo(1, 12);
  });
  test("does not happen at and below its lowest temperature", () => {
    expect(injuryRate(5, 1, 4, 4)).toBe(0);
    expect(injuryRate(5, 1, 4.1, 4)).toBeCloseTo(0.2, 12);
  });
});

describe("ethylene production", () => {
  test("goes by its Q10 where one temperature is given", () => {
    expect(ethyleneProduction({ temperatures: [20], values: [30] }, 10)).toBeCloseTo(30 / productionQ10, 12);
  });
  test("rises from unripe to ripe and stays", () => {
    const at = (ripeness: number) => productionAtRipeness(Math.log(0.1), Math.log(10), ripeness);
    expect([at(0), at(0.5), at(1), at(2)].map((rate) => Number(rate.toFixed(9)))).toEqual([0.1, 1, 10, 10]);
  });
});
