import { describe, expect, it } from "vitest";
import { lotOutcome } from "../../src/simulate/outcome.js";
import { simulate } from "../../src/simulate/simulate.js";
import { withEnd } from "../../src/simulate/withEnd.js";
import { lot, simulation, stay } from "./kitchen.js";

describe("an outcome with another end", () => {
  const [outcome] = simulate(simulation([lot("leaf", 0.5, [stay(0)])])).lots;

  it("keeps all else of it, the states of its days too", () => {
    const other = withEnd(outcome!, 3);
    expect(other.endDay).toBe(3);
    expect(other.daily.length).toBeGreaterThan(1);
    expect(other.daily).toEqual(outcome!.daily);
    expect(withEnd(other, outcome!.endDay)).toEqual({ ...outcome, daily: outcome!.daily });
  });

  it("is spread without losing them", () => {
    expect({ ...withEnd(outcome!, 3) }.daily).toEqual(outcome!.daily);
  });

  it("names every field there is", () => {
    const named = Object.keys(withEnd(outcome!, 3)).sort();
    const record = {
      endDay: 1,
      endedBy: "decay",
      beyondHorizon: false,
      ripeDay: 0,
      stayStarts: [],
      quality: [],
    };
    const all = lotOutcome({ record } as unknown as Parameters<typeof lotOutcome>[0]);
    expect(named).toEqual(Object.keys(all).sort());
  });
});
