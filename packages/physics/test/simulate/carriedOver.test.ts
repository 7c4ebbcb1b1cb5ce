import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { initialState } from "../../src/produce/initialState.js";
import { stateNames } from "../../src/produce/lotState.js";
import { simulate } from "../../src/simulate/simulate.js";
import type { LotOutcome, SimulatedLot } from "../../src/simulate/simulation.js";
import { aHaul } from "./hauls.js";
import { lot, simulation, stay } from "./kitchen.js";

const now = 3;
const horizonDays = 7;

/**
 * How closely seven days must agree with three, a carrying over and four more. The stepper's own: the air of the first step after carrying over is settled from
 * the states themselves, not from those foreseen a step before (second order in the step of a quarter day). Worst of 400 hauls: 0.00005 of a state, 0.0001 d of
 * an end or a ripe day. Held to ten times that.
 */
const agreed = { state: 0.0005, share: 0.0005, days: 0.001 };

/** A lot as it is on a day of a simulation, with the stays it still has before it. */
function carriedOver(one: SimulatedLot, { daily, stayStarts }: LotOutcome): SimulatedLot {
  const at = stayStarts.findLastIndex((start) => start <= now);
  const stays = one.stays
    .slice(at)
    .map((rest) =>
      typeof rest.until === "object" ? { ...rest, until: { day: rest.until.day - now } } : rest,
    );
  return { ...one, state: daily[now]!, stays };
}

const near = (one: number, other: number, days: number, share: number): boolean =>
  one === other || Math.abs(one - other) <= Math.max(days, share * Math.abs(one));

describe("lots carried over from one simulation to another", () => {
  it("come to the same in seven days as in three and four more, every state and every day", () => {
    fc.assert(
      fc.property(aHaul(undefined, 8), (lots) => {
        const whole = simulate(simulation(lots, { horizonDays }));
        const first = simulate(simulation(lots, { horizonDays: now }));
        const rest = lots.map((one, index) => carriedOver(one, first.lots[index]!));
        const second = simulate(simulation(rest, { horizonDays: horizonDays - now }));
        for (const [index, seven] of whole.lots.entries()) {
          const four = second.lots[index]!;
          expect(four.daily[0]).toEqual(first.lots[index]!.daily[now]);
          for (let day = now; day <= horizonDays; day++) {
            for (const [entry, name] of stateNames.entries()) {
              const [one, other] = [seven.daily[day]![entry]!, four.daily[day - now]![entry]!];
              expect(near(one, other, agreed.state, agreed.share), `${name} ${one} ${other}`).toBe(true);
            }
          }
          if (seven.endDay > now) {
            expect(
              near(seven.endDay, four.endDay + now, agreed.days, agreed.share),
              `${seven.endDay} ${four.endDay + now}`,
            ).toBe(true);
          }
          if (seven.ripeDay > now) {
            expect(near(seven.ripeDay, four.ripeDay + now, agreed.days, agreed.share)).toBe(true);
          }
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });
  it("keep the very state they are given, whatever ripeness and share spent are said beside it", () => {
    const fruit = lot("fruit", 1, [stay(0)], { ripeness: 0.1, spent: 0 });
    const state = initialState(fruit.produce, fruit.form, 0.8, 0.3);
    const [outcome] = simulate(simulation([{ ...fruit, state }], { horizonDays: 1 })).lots;
    expect(outcome!.daily[0]).toEqual(state);
  });
  it("are refused with a state that is none", () => {
    const fruit = lot("fruit", 1, [stay(0)]);
    const state = initialState(fruit.produce, fruit.form, 0.8, 0.3);
    state[4] = Number.NaN;
    expect(() => simulate(simulation([{ ...fruit, state }]))).toThrow(/ripeness NaN.*at least -1/);
    expect(() => simulate(simulation([{ ...fruit, state: new Float64Array(3) }]))).toThrow(/10 states/);
  });
});
