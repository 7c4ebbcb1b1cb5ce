import { describe, expect, it } from "vitest";
import { airTree } from "../../src/climate/airTree.js";
import { settleEthylene } from "../../src/climate/ethyleneField.js";
import type { AirBox, Neighbour } from "../../src/simulate/simulation.js";

const room = { temperature: 20, relativeHumidity: 0.5, ethylene: 0.02 };
const box = (neighbour: Neighbour, litresPerHour: number): AirBox => ({
  name: "box",
  volumeLitres: 20,
  temperature: 4,
  exchange: { with: neighbour, litresPerHour },
});

describe("settled ethylene", () => {
  it("is the neighbour's plus all that passes through over the exchange", () => {
    const tree = airTree([box("room", 100), box(0, 10), box(0, 50)], room);
    const out = new Float64Array(4);
    settleEthylene(tree, Float64Array.of(1, 2, 3), new Float64Array(3), out);
    expect(out[0]).toBeCloseTo(0.02 + 6 / 100, 12);
    expect(out[1]).toBeCloseTo(0.08 + 2 / 10, 12);
    expect(out[2]).toBeCloseTo(0.08 + 3 / 50, 12);
    expect(out[3]).toBe(0.02);
  });

  it("is that of the room in an empty kitchen", () => {
    const tree = airTree([box("room", 100), box(0, 10)], room);
    const out = new Float64Array(3);
    settleEthylene(tree, new Float64Array(2), new Float64Array(2), out);
    expect([...out]).toEqual([0.02, 0.02, 0.02]);
  });
});

describe("boxes that cannot be solved", () => {
  it("are refused by name: a box before its neighbour", () => {
    expect(() => airTree([box(1, 10), box("room", 10)], room)).toThrow(/does not come before it/);
  });
  it("are refused by name: no exchange", () => {
    expect(() => airTree([box("room", 0)], room)).toThrow(/“box” is 0/);
    expect(() => airTree([box("room", Number.NaN)], room)).toThrow(/“box”/);
  });
});
