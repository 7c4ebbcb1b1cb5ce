import { expect, test } from "vitest";
import { ethyleneTable, middle, temperatureTable } from "../../src/index.js";

test("the middle of a range is geometric, and half the upper end where the lower is 0", () => {
  expect(middle({ low: 4, high: 9 })).toBe(6);
  expect(middle({ low: 0, high: 0.1 })).toBe(0.05);
});
test("a table is put in order, and two ranges at one temperature become one", () => {
  const table = temperatureTable([
    { temperature: 20, low: 40, high: 40 },
    { temperature: 0, low: 5, high: 5 },
    { temperature: 20, low: 10, high: 10 },
  ]);
  expect(table.temperatures).toEqual([0, 20]);
  expect(table.values[1]).toBeCloseTo(20, 10);
});
test("ethylene falls back from its own ripeness to any, then to the other", () => {
  const evidence = {
    source: "x",
    place: "y",
    kind: "measured",
    fromMemory: true,
    unit: "µL/(kg h)",
  } as const;
  const any = { ripeness: "any", temperature: 20, low: 1, high: 1, ...evidence } as const;
  const ripe = { ripeness: "ripe", temperature: 20, low: 9, high: 9, ...evidence } as const;
  expect(ethyleneTable([any, ripe], "ripe").values[0]).toBeCloseTo(9, 12);
  expect(ethyleneTable([any, ripe], "unripe").values[0]).toBeCloseTo(1, 12);
  expect(ethyleneTable([ripe], "unripe").values[0]).toBeCloseTo(9, 12);
  expect(() => ethyleneTable([], "ripe")).toThrow(/Add one figure/);
});
test("no published production is taken for none at all, for its logarithm must be finite", () => {
  const evidence = {
    source: "x",
    place: "y",
    kind: "measured",
    fromMemory: true,
    unit: "µL/(kg h)",
  } as const;
  const none = { ripeness: "any", temperature: 20, low: 0, high: 0, ...evidence } as const;
  expect(ethyleneTable([none], "ripe").values[0]).toBeGreaterThan(0);
});
