import { describe, expect, it } from "vitest";
import { mayFetchUnasked } from "../../src/offline/paperInTime.js";

describe("whether what pages are printed with may come unasked", () => {
  it.each([
    ["a computer whose browser tells nothing", undefined, true, true],
    ["a telephone whose browser tells nothing", undefined, false, false],
    ["a computer that saves data", { saveData: true }, true, false],
    ["a telephone on a line of its own", { saveData: false, type: "wifi" }, false, true],
    ["a telephone on the mobile network", { saveData: false, type: "cellular" }, false, false],
    ["a computer on the mobile network", { type: "cellular" }, true, false],
    ["a computer whose browser tells only whether data is to be saved", { saveData: false }, true, true],
    ["no network", { type: "none" }, true, false],
  ] as const)("%s", (_, connection, mouse, may) => {
    expect(mayFetchUnasked(connection, mouse)).toBe(may);
  });
});
