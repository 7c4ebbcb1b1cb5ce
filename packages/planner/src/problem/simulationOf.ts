import type { SimulatedLot, Simulation } from "@keepwright/physics";
import type { Choice, Part } from "./programme.js";
import type { Problem } from "./problem.js";

/** One part as the simulation sees it. */
export function simulatedPart(problem: Problem, part: Part): SimulatedLot {
  const lot = problem.lots[part.lot]!;
  const { programme } = part;
  return {
    produce: lot.produce,
    kilograms: (part.portions * lot.gramsPerPortion) / 1000,
    form: {
      cut: lot.form.cut,
      tops: lot.form.tops && !programme.leavesOff,
      wet: lot.form.wet && !programme.dried,
    },
    ripeness: lot.ripeness,
    spent: lot.spent,
    stays: programme.stays.map((stay) => {
      const { box, place } = problem.places[stay.place]!;
      return { box, temperature: place.temperature, wrap: stay.wrap, lit: place.lit, until: stay.until };
    }),
  };
}

/** The whole kitchen with everything in it, as one simulation over the planned days. */
export const simulationOf = (problem: Problem, choice: Choice): Simulation => ({
  room: {
    temperature: problem.kitchen.room.temperature,
    relativeHumidity: problem.kitchen.room.relativeHumidity / 100,
    ethylene: problem.kitchen.room.ethylene,
  },
  boxes: problem.boxes(choice.vents),
  lots: choice.parts.map((part) => simulatedPart(problem, part)),
  horizonDays: problem.household.days,
});
