import type { RoomAir, SimulatedLot, Simulation } from "@keepwright/physics";
import type { BoundLot } from "./bindHaul.js";
import type { BoundKitchen } from "./bindKitchen.js";
import type { Kitchen } from "./kitchen.js";
import type { Problem } from "./problem.js";
import type { Choice, Programme } from "./programme.js";

/** Some portions of a lot, with a programme, as the simulation sees them. */
export function simulatedPart(
  { places }: Pick<BoundKitchen, "places">,
  lot: BoundLot,
  portions: number,
  programme: Programme,
): SimulatedLot {
  return {
    produce: lot.produce,
    kilograms: (portions * lot.gramsPerPortion) / 1000,
    form: {
      cut: lot.form.cut,
      tops: lot.form.tops && !programme.leavesOff,
      wet: lot.form.wet && !programme.dried,
    },
    ripeness: lot.ripeness,
    spent: lot.spent,
    state: lot.carried?.state,
    stays: programme.stays.map((stay) => {
      const { box, place } = places[stay.place]!;
      return { box, temperature: place.temperature, wrap: stay.wrap, lit: place.lit, until: stay.until };
    }),
  };
}

export const roomAir = ({ room }: Kitchen): RoomAir => ({
  temperature: room.temperature,
  relativeHumidity: room.relativeHumidity / 100,
  ethylene: room.ethylene,
});

/** The whole kitchen with everything in it, as one simulation over the planned days. */
export const simulationOf = (problem: Problem, choice: Choice): Simulation => ({
  room: roomAir(problem.kitchen),
  boxes: problem.boxes(choice.vents),
  lots: choice.parts.map((part) =>
    simulatedPart(problem, problem.lots[part.lot]!, part.portions, part.programme),
  ),
  horizonDays: problem.household.days,
  wraps: problem.catalogue.wraps,
});
