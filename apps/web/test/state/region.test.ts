import { describe, expect, it } from "vitest";
import { isRegion, tagFor, unitsFor } from "../../src/state/region.js";

describe("whose dates and numbers", () => {
  it.each([
    ["en", "device", ["en-US"], "en-US"],
    ["en", "device", ["en-GB", "en-US"], "en-GB"],
    ["es", "device", ["es-MX", "en-US"], "es-MX"],
    ["es", "device", ["en-US", "es-ES"], "es-ES"],
    ["es", "device", ["en-US"], "es-US"],
    ["es", "device", ["es", "en-US"], "es-US"],
    ["en", "device", ["en"], "en-GB"],
    ["es", "device", [], "es-419"],
    ["es", "device", ["not a tag", "es-Latn-PE"], "es-PE"],
    ["en", "US", ["en-GB"], "en-US"],
    ["es", "419", ["en-GB"], "es-419"],
  ] as const)("%s, %s on a device set to %j is %s", (language, choice, preferred, tag) => {
    expect(tagFor(language, choice, preferred)).toBe(tag);
  });

  it("are those of a known region", () => {
    expect(isRegion("MX")).toBe(true);
    for (const other of ["device", "XX", "mx", 419, undefined, "constructor"])
      expect(isRegion(other)).toBe(false);
  });
});

describe("units of a first visit", () => {
  it.each([
    [["en-US"], "us", "us"],
    [["es-US", "en"], "us", "us"],
    [["es-PR"], "us", "us"],
    [["en-BZ"], "us", "metric"],
    [["en-GB", "en-US"], "metric", "metric"],
    [["en"], "metric", "metric"],
    [["es-MX"], "metric", "metric"],
    [[], "metric", "metric"],
  ] as const)(
    "on a device set to %j are %s for degrees and %s for masses",
    (preferred, temperature, mass) => {
      expect(unitsFor(preferred)).toEqual({ temperature, mass });
    },
  );
});
