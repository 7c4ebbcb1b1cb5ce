import {
  carriedFrom,
  endingProgress,
  endings,
  lifeRange,
  lifeSpread,
  lifeWithin,
  type Produce,
  produceAtTemperature,
  publishedTime,
  simulate,
  usualSpentSpread,
} from "@keepwright/physics";
import type { AnsweredLife, EndingShare } from "./itemAnswer.js";

/** Steady air around a lot: °C, % and µL/L; and how ripe it is at the start. */
export interface SteadyConditions {
  readonly temperature: number;
  readonly relativeHumidity: number;
  readonly ethylene: number;
  readonly ripeness: number;
}

/** Days simulated: the longest storage life the catalogue accepts. */
const longestLife = 400;

/** Whole, dry and just arrived, as most things come home. */
const whole = { cut: false, tops: false, wet: false };

/**
 * Life of a whole lot in steady air, bare and in the dark, and how far every process had come. The spread is the biology's,
 * the publications', the model's own and the unknown age on arrival's; the temperature is taken as exactly the one asked about.
 */
export function lifeAt(
  produce: Produce,
  conditions: SteadyConditions,
): { readonly life: AnsweredLife; readonly shares: EndingShare[] } {
  const { temperature, relativeHumidity, ethylene, ripeness } = conditions;
  const outcome = simulate({
    room: { temperature, relativeHumidity: relativeHumidity / 100, ethylene },
    boxes: [],
    lots: [
      {
        produce,
        kilograms: 1,
        form: whole,
        ripeness,
        spent: 0,
        stays: [{ box: "room", temperature, wrap: "none", lit: false, until: "never" }],
      },
    ],
    horizonDays: longestLife,
  }).lots[0]!;
  const spread = lifeSpread({
    biology: produce.lifeSpread,
    temperatureSpread: 0,
    temperatureSlope: 0,
    spent: 0,
    spentSpread: usualSpentSpread,
    carried: carriedFrom(outcome.endDay, publishedTime(produce, whole, outcome.endedBy, temperature)),
  });
  const { safetyRate } = produceAtTemperature(produce, whole, temperature);
  const safeDays = safetyRate > 0 ? 1 / safetyRate : Number.POSITIVE_INFINITY;
  const life = {
    ...lifeWithin(lifeRange({ median: outcome.endDay, spread }), safeDays),
    unit: "d" as const,
    endedBy: outcome.endedBy,
  };
  return { life, shares: sharesAt(produce, outcome.daily, outcome.endDay) };
}

/** Progress of every ending at a time [d] within the days kept, straight between whole days. */
function progressAt(produce: Produce, daily: readonly Float64Array[], time: number): Float64Array {
  const day = Math.min(Math.floor(time), daily.length - 2);
  const [before, after] = [daily[day]!, daily[day + 1]!];
  const share = Math.min(1, time - day);
  const progress = new Float64Array(endings.length);
  endingProgress(
    produce,
    before.map((value, state) => value + share * (after[state]! - value)),
    progress,
  );
  return progress;
}

/** How far every process has come at the end, of the way it had to go from arrival. */
function sharesAt(produce: Produce, daily: readonly Float64Array[], endDay: number): EndingShare[] {
  const start = progressAt(produce, daily, 0);
  const end = progressAt(produce, daily, Math.min(endDay, longestLife));
  return endings
    .map((ending, index) => {
      const way = (end[index]! - start[index]!) / (1 - start[index]!);
      return { ending, share: Math.min(1, Math.max(0, way)) };
    })
    .filter(({ share }) => share > 0)
    .sort((one, other) => other.share - one.share);
}
