import { expect, test } from "vitest";
import { at, initialState } from "../../src/index.js";
import { cut, leaf, ripener, whole } from "../fixtures/kinds.js";

test("brings the share of life spent as senescence, and the decay that came with it", () => {
  const state = initialState(leaf, whole, 1, 0.25);
  expect(state[at.senescence]).toBe(0.25);
  expect(state[at.decay]).toBeCloseTo(0.25 * leaf.decayFactor * 2, 12);
});
test("cut before, it brings the safe time used up at 5 °C: half of four days is two of six", () => {
  expect(initialState(leaf, cut, 1, 0.5)[at.safety]).toBeCloseTo(2 / 6, 12);
  expect(initialState(leaf, whole, 1, 0.5)[at.safety]).toBe(0);
  expect(initialState({ ...leaf, timeTemperatureControl: false }, cut, 1, 0.5)[at.safety]).toBe(0);
});
test("holds ripeness and share to their ranges", () => {
  const state = initialState(ripener, whole, 7, -3);
  expect([state[at.ripeness], state[at.senescence]]).toEqual([2, -1]);
});
