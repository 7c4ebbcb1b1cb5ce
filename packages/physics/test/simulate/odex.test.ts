import { describe, expect, it } from "vitest";
import { simulate } from "../../src/simulate/simulate.js";
import type { SimulatedLot, Simulation } from "../../src/simulate/simulation.js";
import { FullSystem } from "./fullSystem.js";
import { lot, simulation, stay } from "./kitchen.js";

/** The agreed limit on the error of any end date. */
const onePercent = 0.01;
/** Relative and absolute tolerance of ODEX: tightening it tenfold moves no end by 0.001 %. */
const tight = 1e-6;

interface Compared {
  readonly given: Simulation;
  readonly fast: ReturnType<typeof simulate>["lots"];
  readonly full: ReturnType<FullSystem["solve"]>;
}

function compare(haul: readonly SimulatedLot[]): Compared {
  const given = simulation(haul, { horizonDays: 20 });
  return { given, fast: simulate(given).lots, full: new FullSystem(given).solve(tight) };
}

/** Every end within the horizon agrees; nothing else ends within it, give or take the same limit. */
function expectSameEnds({ given, fast, full }: Compared): void {
  for (const [index, end] of full.entries()) {
    const got = fast[index]!;
    if (end.endDay === Number.POSITIVE_INFINITY) {
      expect(got.endDay).toBeGreaterThan(given.horizonDays * (1 - onePercent));
      continue;
    }
    expect(got.endedBy).toBe(end.endedBy);
    expect(Math.abs(got.endDay / end.endDay - 1), `${end.endedBy} on day ${end.endDay}`).toBeLessThan(
      onePercent,
    );
  }
}

const withinHorizon = ({ given, full }: Compared): number =>
  full.filter(({ endDay }) => endDay < given.horizonDays).length;

describe("the stepper against ODEX on the whole coupled system, no gas taken as settled", () => {
  it("ends every lot of a closed drawer with six kinds within 1 %, over 20 days", {
    timeout: 300_000,
  }, () => {
    const compared = compare([
      lot("leaf", 0.4, [stay(1)]),
      lot("root", 1, [stay(1)]),
      lot("fruit", 1.2, [stay(1)], { ripeness: 0.8 }),
      lot("tender", 0.5, [stay(1)], { ripeness: 0.6 }),
      lot("berry", 0.3, [stay(1)]),
      lot("pod", 0.4, [stay(1)]),
    ]);
    expect(withinHorizon(compared)).toBe(6);
    expectSameEnds(compared);
  });

  it("follows a paper bag, moves when ripe and on a day, and wraps within 1 %", { timeout: 300_000 }, () => {
    const compared = compare([
      lot("fruit", 0.8, [stay("room", { wrap: "paper bag", until: "ripe" }), stay(1)], { ripeness: 0.3 }),
      lot("tender", 0.6, [stay(3, { wrap: "paper bag", until: "ripe" }), stay(2)]),
      lot("leaf", 0.4, [stay(2, { until: { day: 2.1 } }), stay(1, { wrap: "damp towel" })]),
      lot("root", 1, [stay(1, { wrap: "perforated bag" })]),
      lot("pod", 0.4, [stay(0, { until: { day: 3 } }), stay(1)]),
      lot("bulb", 1, [stay(3)]),
    ]);
    expect(withinHorizon(compared)).toBeGreaterThanOrEqual(4);
    expectSameEnds(compared);
    for (const [index, { ripeDay, stayStarts }] of compared.full.slice(0, 2).entries()) {
      const got = compared.fast[index]!;
      expect(Math.abs(got.ripeDay / ripeDay - 1)).toBeLessThan(onePercent);
      expect(Math.abs(got.stayStarts[1]! / stayStarts[1]! - 1)).toBeLessThan(onePercent);
    }
  });
});
