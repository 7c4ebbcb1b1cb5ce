import { expect, test } from "vitest";
import {
  ethyleneEmission,
  initialState,
  produceAtTemperature,
  vapourConductance,
  woundEthyleneFactor,
} from "../../src/index.js";
import { cut, ripener, whole } from "../fixtures/kinds.js";

const emission = (celsius: number, ripeness: number, form = whole) =>
  ethyleneEmission(produceAtTemperature(ripener, form, celsius), initialState(ripener, form, ripeness, 0));

test("goes from the unripe to the ripe rate", () => {
  expect(emission(20, 0)).toBeCloseTo(0.5, 10);
  expect(emission(20, 1)).toBeCloseTo(100, 8);
  expect(emission(20, 1.5)).toBeCloseTo(100, 8);
});
test("is less in the cold", () => expect(emission(5, 1)).toBeLessThan(emission(20, 1) / 4));
test("is more when cut", () =>
  expect(emission(5, 1, cut) / emission(5, 1)).toBeCloseTo(woundEthyleneFactor, 10));
test("vapour leaves by the transpiration coefficient", () => {
  const lot = produceAtTemperature(ripener, whole, 5);
  expect(vapourConductance(lot, initialState(ripener, whole, 1, 0))).toBe(ripener.transpiration);
});
