import { readFileSync } from "node:fs";
import type { SafetyLimit } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import {
  cutSafetyRate,
  safetyLimitIds,
  safetyLimitsFrom,
  usualSafetyLimits,
  warmestRefrigerator,
} from "../../src/index.js";

const file = new URL("../../../catalogue/data/safety.json", import.meta.url);
const table = new Map(
  (JSON.parse(readFileSync(file, "utf8")) as SafetyLimit[]).map((limit) => [limit.id, limit]),
);

test("the limits taken without a catalogue are the catalogue's own", () => {
  expect(safetyLimitsFrom(table)).toEqual(usualSafetyLimits);
});

test("a missing limit is named, not guessed", () => {
  const without = new Map(table);
  without.delete(safetyLimitIds.readyToEatDays);
  expect(() => safetyLimitsFrom(without)).toThrow(/cut-ready-to-eat-days/);
});

describe("cut produce", () => {
  const hours = (celsius: number, controlled: boolean) => 24 / cutSafetyRate(celsius, controlled);
  test("that needs time and temperature control has six further days at 5 °C", () => {
    expect(1 / cutSafetyRate(5, true)).toBeCloseTo(6, 12);
  });
  test("has four hours in a warm refrigerator, two in a room, one in the heat", () => {
    expect(hours(5.1, true)).toBeCloseTo(4, 12);
    expect(hours(warmestRefrigerator + 0.1, true)).toBeCloseTo(2, 12);
    expect(hours(33, true)).toBeCloseTo(1, 12);
  });
  test("of other kinds has only the hours out of refrigeration", () => {
    expect(cutSafetyRate(8, false)).toBe(0);
    expect(hours(20, false)).toBeCloseTo(2, 12);
    expect(hours(35, false)).toBeCloseTo(1, 12);
  });
  test("is never safe for longer where it is warmer", () => {
    for (let celsius = 0; celsius < 40; celsius += 0.5) {
      for (const controlled of [true, false]) {
        expect(cutSafetyRate(celsius + 0.5, controlled)).toBeGreaterThanOrEqual(
          cutSafetyRate(celsius, controlled),
        );
      }
    }
  });
});
