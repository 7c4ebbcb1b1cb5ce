import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimalOption, temperatureOption, wholeOption } from "../../src/options/numbers.js";
import { UserError } from "../../src/userError.js";
import { controlCharacters } from "../support/fakeDoor.js";

const bounds = { least: -5, most: 45 };

describe("numbers on the command line", () => {
  it("reads whole numbers, and decimals with a point or a comma", () => {
    expect(wholeOption("--people", { least: 1, most: 500 })(" 4 ")).toBe(4);
    expect(decimalOption("--rh", { least: 1, most: 100 }, "%")("92,5")).toBe(92.5);
    expect(decimalOption("--rh", { least: 1, most: 100 }, "%")("90 %")).toBe(90);
  });
  it("reads °C, and °F with an F", () => {
    const at = temperatureOption("--at", bounds);
    expect(at("4")).toBe(4);
    expect(at("4C")).toBe(4);
    expect(at("-0.5")).toBe(-0.5);
    expect(at("40F")).toBeCloseTo(4.444, 3);
    expect(at("40 °F")).toBeCloseTo(4.444, 3);
  });
  it.each(["", "four", "1e3", "0x10", "NaN", "Infinity", "--", "4 4", "½", "1e999"])(
    "refuses “%s”",
    (text) => {
      expect(() => wholeOption("--people", { least: 1, most: 500 })(text)).toThrow(UserError);
      expect(() => decimalOption("--rh", bounds)(text)).toThrow(UserError);
      expect(() => temperatureOption("--at", bounds)(text)).toThrow(UserError);
    },
  );
  it("never gives a number outside its bounds, whatever is typed, and never echoes a control character", () => {
    const anything = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.double().map(String),
      fc.bigInt().map(String),
    );
    const options = [
      decimalOption("--x", bounds, "µL/L"),
      wholeOption("--x", bounds),
      temperatureOption("--x", bounds),
    ];
    fc.assert(
      fc.property(anything, fc.constantFrom(...options), (text, option) => {
        try {
          const value = option(text);
          expect(value).toBeGreaterThanOrEqual(-5);
          expect(value).toBeLessThanOrEqual(45);
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
          expect((error as Error).message).not.toMatch(controlCharacters);
        }
      }),
    );
  });
});
