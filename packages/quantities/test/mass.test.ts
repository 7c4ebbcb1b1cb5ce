import {
  gramsFromKilograms,
  gramsFromOunces,
  gramsFromPounds,
  kilogramsFromGrams,
  poundsFromGrams,
} from "@keepwright/quantities";
import { describe, expect, it } from "vitest";

describe("mass", () => {
  it("knows the pound and the ounce exactly", () => {
    expect(gramsFromPounds(1)).toBe(453.59237);
    expect(gramsFromOunces(16)).toBe(gramsFromPounds(1));
  });
  it("closes its round trips", () => {
    expect(poundsFromGrams(gramsFromPounds(2.5))).toBeCloseTo(2.5, 12);
    expect(kilogramsFromGrams(gramsFromKilograms(1.2))).toBeCloseTo(1.2, 12);
  });
});
