import { celsiusFromFahrenheit, fahrenheitFromCelsius, kelvinFromCelsius } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("temperature", () => {
  it("agrees with the fixed points of the scales", () => {
    expect(celsiusFromFahrenheit(32)).toBe(0);
    expect(celsiusFromFahrenheit(212)).toBe(100);
    expect(fahrenheitFromCelsius(-40)).toBe(-40);
    expect(kelvinFromCelsius(0.01)).toBeCloseTo(273.16, 10);
  });
  it("comes back from Fahrenheit unchanged", () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (celsius) => {
        expect(celsiusFromFahrenheit(fahrenheitFromCelsius(celsius))).toBeCloseTo(celsius, 10);
      }),
    );
  });
});
