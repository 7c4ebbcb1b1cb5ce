import {
  type LotOutcome,
  lifeSpread,
  publishedTime,
  type Simulation,
  simulate,
  usualSpentSpread,
} from "@keepwright/physics";
import type { PlannedLot } from "../problem/plan.js";
import { type PlanFault, unless } from "./fault.js";
import { qualityLife, spreadOf } from "./life.js";
import { simulationAgain } from "./replay.js";
import { endAgain } from "./replayed.js";
import { lotOf, placeOf, type Subject } from "./subject.js";

/**
 * How closely a spread must agree with one rebuilt here: a tenth. Both are the same sum of variances; only the time step with
 * which the effect of temperature is found may differ.
 */
const share = 0.1;

/** A spread is told for the whole lot alone in the kitchen with its vents half open: the kitchen as nobody has touched it. */
export const untouched = (subject: Subject): Subject => {
  const vents = subject.plan.vents.map((vent) =>
    placeOf(subject, vent.place).vent === "choose" ? { ...vent, setting: "half" as const } : vent,
  );
  return { ...subject, plan: { ...subject.plan, vents } };
};

/** What becomes of a part alone in the kitchen when every place is so many spreads warmer, its safe time still counted by the temperature it is given. */
function alone(
  subject: Subject,
  simulation: Simulation,
  part: PlannedLot,
  index: number,
  warmer: number,
): LotOutcome {
  const lot = simulation.lots[index]!;
  const stays = lot.stays.map((stay, number) => {
    const { temperatureSpread } = placeOf(subject, part.stays[number]!.place);
    const { temperature } = stay;
    return {
      ...stay,
      temperature: temperature + warmer * temperatureSpread,
      believedTemperature: temperature,
    };
  });
  return simulate({ ...simulation, lots: [{ ...lot, stays, kilograms: lotOf(subject, part).grams / 1000 }] })
    .lots[0]!;
}

/** The spread of each life is that of its causes: the biology, the temperature of its places, its age on arrival. */
export function spreads(subject: Subject): PlanFault[] {
  const { boxOf: _, ...simulation } = simulationAgain(untouched(subject));
  return subject.plan.lots.flatMap((part, index) => {
    if (qualityLife(part).early <= 0) return [];
    const { produce, spent, form } = simulation.lots[index]!;
    const end = (warmer: number) => alone(subject, simulation, part, index, warmer).endDay;
    const { endDay, endedBy } = alone(subject, simulation, part, index, 0);
    const effect = Math.abs(Math.log(end(1) / end(-1)) / 2);
    const middle = endAgain(subject, part, endDay);
    const { temperature } = placeOf(subject, part.stays.at(-1)!.place);
    const by = lotOf(subject, part).carried?.ended?.by ?? endedBy;
    const far = Math.abs(Math.log(middle / publishedTime(produce, form, by, temperature)));
    const expected = lifeSpread({
      biology: produce.lifeSpread,
      temperatureSpread: 1,
      temperatureSlope: Number.isFinite(effect) ? effect : 0,
      spent,
      spentSpread: usualSpentSpread,
      carried: Number.isFinite(far) ? far : 0,
    });
    const told = spreadOf(part);
    return unless(Math.abs(told / expected - 1) <= share, "replayed spread", part.id, told, expected);
  });
}
