import type { GivenInStay, SimulatedLot } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";
import { simulatedPart } from "../problem/simulationOf.js";
import { litresInStay } from "../rules/capacity.js";
import { programmeEffort } from "../rules/effort.js";
import { everyWay } from "../search/options.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";

/** A way to deal with a lot, none left out, with what it asks and gives whatever the air. */
export interface Way {
  readonly lot: BoundLot;
  readonly programme: Programme;
  readonly whole: SimulatedLot;
  /** By stay: box of air, litres of the whole lot, what the whole lot gives off. */
  readonly boxes: readonly number[];
  readonly litres: readonly number[];
  readonly gives: readonly GivenInStay[];
  /** Effort [g]. */
  readonly effort: number;
}

/**
 * A lot wanted for a day has too many ways (held in any place until any day, in any wrap) to look at them all: it is taken to cost nothing, take no room and harm nobody, which no plan can beat.
 */
export const isFree = ({ wish }: Pick<BoundLot, "wish">): boolean => wish !== undefined;

/** Every way to deal with a lot, by the rules alone, wishes left aside. */
export function everyWayOf(problem: Problem, lot: BoundLot, kitchen: KitchenBoxes): Way[] {
  return everyWay(problem, { ...lot, wish: undefined }).map((programme) => {
    const whole = simulatedPart(problem, lot, lot.portions, programme);
    const part = { lot: lot.index, portions: lot.portions, programme };
    return {
      lot,
      programme,
      whole,
      boxes: programme.stays.map(({ place }) => kitchen.boxOf(place)),
      litres: programme.stays.map((_, stay) => litresInStay(problem, part, stay)),
      gives: kitchen.optimist.gives(whole),
      effort: programmeEffort(programme),
    };
  });
}
