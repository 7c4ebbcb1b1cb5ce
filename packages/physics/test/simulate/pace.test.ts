import { catalogue } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { type LotPace, produceFromCommodity, type SimulatedLot, simulate } from "../../src/index.js";

const room = { temperature: 20, relativeHumidity: 0.5, ethylene: 0.02 };
const refrigerator = {
  name: "refrigerator",
  volumeLitres: 200,
  temperature: 4,
  exchange: { with: "room", litresPerHour: 80 },
  coil: { temperature: -8, litresPerHour: 400 },
} as const;

const lot = (kind: string, more: Partial<SimulatedLot> = {}): SimulatedLot => ({
  produce: produceFromCommodity(catalogue().commodities.get(kind)!),
  kilograms: 0.5,
  form: { cut: false, tops: false, wet: false },
  ripeness: 1,
  spent: 0,
  stays: [{ box: 0, temperature: 4, wrap: "perforated bag", lit: false, until: "never" }],
  ...more,
});
const run = (one: SimulatedLot) => simulate({ room, boxes: [refrigerator], lots: [one], horizonDays: 5 });
const lifeOf = (one: SimulatedLot): number => run(one).lots[0]!.endDay;
const paced = (factor: number): LotPace => ({ lifeFactor: factor, ripeningFactor: factor });

describe("a lot of another pace", () => {
  test("is the middle one of its kind to the last bit at 1", () => {
    expect(run(lot("tomato", { pace: paced(1), ripeness: 0.4 }))).toEqual(
      run(lot("tomato", { ripeness: 0.4 })),
    );
  });

  // Dried, rotten, chilled, over-ripe, old: whatever ends it.
  test.each([
    "romaine",
    "strawberry",
    "spinach",
    "cucumber",
    "basil",
    "carrot",
    "onion",
    "banana",
    "avocado",
  ])("%s keeps that many times as long in air that does not change", (kind) => {
    const bare = {
      stays: [{ box: "room", temperature: 20, wrap: "none", lit: false, until: "never" }],
    } as const;
    for (const where of [{}, bare]) {
      const middle = lifeOf(lot(kind, where));
      // Its own warmth of ethylene and vapour in a box comes up within a day whatever its pace, hence not to the last digit.
      expect(lifeOf(lot(kind, { ...where, pace: paced(1.5) })) / middle).toBeCloseTo(1.5, 1);
      expect(lifeOf(lot(kind, { ...where, pace: paced(0.6) })) / middle).toBeCloseTo(0.6, 1);
    }
  });

  test("gives off what the middle one does", () => {
    const cut = (pace: LotPace) => run(lot("spinach", { pace })).boxes;
    expect(cut(paced(2))).toEqual(cut(paced(1)));
  });

  test("is safe no longer for it, and by the temperature and age that are believed", () => {
    const melon = (temperature: number, more: Partial<SimulatedLot> = {}, believedTemperature?: number) =>
      run(
        lot("cantaloupe", {
          form: { cut: true, tops: false, wet: false },
          stays: [
            {
              box: 0,
              temperature,
              ...(believedTemperature !== undefined && { believedTemperature }),
              wrap: "lidded box",
              lit: false,
              until: "never",
            },
          ],
          ...more,
        }),
      ).lots[0]!;
    const long = { pace: paced(50) };
    expect(melon(4, long).endedBy).toBe("safety");
    expect(melon(4, long).endDay).toBeCloseTo(6, 6);
    expect(melon(6, long).endDay).toBeCloseTo(4 / 24, 6);
    expect(melon(6, long, 4).endDay).toBeCloseTo(6, 6);
    const older = melon(4, { ...long, spent: 0.5 });
    const believed = melon(4, { ...long, spent: 0.5, believedSpent: 0 });
    expect(older.endDay).toBeLessThan(believed.endDay);
    expect(believed.endDay).toBeCloseTo(6, 6);
  });

  test("fresher than usual keeps longer by that share", () => {
    const bare = {
      stays: [{ box: "room", temperature: 20, wrap: "perforated bag", lit: false, until: "never" }],
    } as const;
    const usual = run(lot("beet", bare)).lots[0]!;
    const fresh = run(lot("beet", { ...bare, spent: -0.2 })).lots[0]!;
    expect(usual.endedBy).toBe("senescence");
    expect(fresh.endDay / usual.endDay).toBeCloseTo(1.2, 6);
  });
});
