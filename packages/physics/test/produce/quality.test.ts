import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { at, initialState, quality, stateNames, unripeQuality } from "../../src/index.js";
import { leaf, ripener, whole } from "../fixtures/kinds.js";

const fresh = () => initialState(leaf, whole, 1, 0);

describe("quality", () => {
  test("is 1 on a fresh ripe lot", () => expect(quality(leaf, fresh())).toBe(1));
  test("stays between 0 and 1 and never rises as a harm grows", () => {
    const harms = [
      "waterLost",
      "senescence",
      "chilling",
      "decay",
      "sprouting",
      "ethyleneInjury",
      "eatingHarm",
      "safety",
    ] as const;
    const doses = fc.array(fc.double({ min: 0, max: 2, noNaN: true }), {
      minLength: stateNames.length,
      maxLength: stateNames.length,
    });
    fc.assert(
      fc.property(
        doses,
        fc.constantFrom(...harms),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (state, harm, more) => {
          const before = quality(ripener, Float64Array.from(state));
          const worse = Float64Array.from(state);
          worse[at[harm]]! += more;
          const after = quality(ripener, worse);
          return before >= 0 && before <= 1 && after <= before;
        },
      ),
    );
  });
  test.each([
    ["waterLost", leaf.maximumLoss],
    ["senescence", 1],
    ["decay", 1],
    ["safety", 1],
  ] as const)("is 0 where %s alone ends the lot", (name, value) => {
    const state = fresh();
    state[at[name]] = value;
    expect(quality(leaf, state)).toBeCloseTo(0, 12);
  });
  test("is best ready to eat", () => {
    const at2 = (ripeness: number) => quality(ripener, initialState(ripener, whole, ripeness, 0));
    expect(at2(0)).toBeCloseTo(unripeQuality, 12);
    expect(at2(1)).toBe(1);
    expect(at2(0.9)).toBeLessThan(1);
    expect(at2(1.3)).toBeLessThan(1);
    expect(at2(2)).toBe(0);
  });
  test("half-wilted and half-aged is worse than either", () => {
    const wilted = fresh();
    wilted[at.waterLost] = leaf.maximumLoss / 2;
    const both = Float64Array.from(wilted);
    both[at.senescence] = 0.5;
    expect(quality(leaf, both)).toBeLessThan(quality(leaf, wilted));
  });
});
