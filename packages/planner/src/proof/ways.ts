import { type GivenInStay, nearlyRipe, type SimulatedLot } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { type Programme, type ProgrammeStay, programmeKey } from "../problem/programme.js";
import { simulatedPart } from "../problem/simulationOf.js";
import { litresInStay } from "../rules/capacity.js";
import { programmeEffort } from "../rules/effort.js";
import { weights } from "../rules/weights.js";
import { presentProgrammes } from "../search/candidates.js";
import { everyWay } from "../search/options.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";

/** A way to deal with a lot, none left out, with what it asks and gives whatever the air. */
export interface Way {
  readonly lot: BoundLot;
  readonly programme: Programme;
  readonly whole: SimulatedLot;
  /**
   * For parts of a lot that is split: what is followed is any part from the smallest up. A small part ripens its neighbours and itself less, and more passes through its wrap for its mass, so
   * that a part may fare better than the whole would. What it asks and gives is told as if all of the lot were in such parts.
   */
  readonly apart: boolean;
  /** The least of the lot that may be dealt with so. */
  readonly leastKilograms: number;
  /** Stays it is ever in: what arrives as good as ripe is moved on at once. */
  readonly stays: readonly ProgrammeStay[];
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

/** By the rules alone, wishes left aside; with what an earlier plan had before it and left as it lies, which may be no way that is thought of anew. */
function programmesOf(problem: Problem, lot: BoundLot): Programme[] {
  const all = [...everyWay(problem, { ...lot, wish: undefined }), ...presentProgrammes(problem, lot)];
  return [...new Map(all.map((one) => [programmeKey(one), one])).values()];
}

/** Every way to deal with a lot, each for the whole of it and, where it may be split, for its parts. */
export function everyWayOf(problem: Problem, lot: BoundLot, kitchen: KitchenBoxes): Way[] {
  const programmes = programmesOf(problem, lot);
  const whole = programmes.map((programme) => wayOf(problem, lot, kitchen, programme, false));
  if (lot.portions < 2 * lot.splitUnit) return whole;
  return [...whole, ...programmes.map((programme) => wayOf(problem, lot, kitchen, programme, true))];
}

function wayOf(
  problem: Problem,
  lot: BoundLot,
  kitchen: KitchenBoxes,
  programme: Programme,
  apart: boolean,
): Way {
  const whole = simulatedPart(problem, lot, lot.portions, programme);
  const part = { lot: lot.index, portions: lot.portions, programme };
  const leastKilograms = apart ? (whole.kilograms * lot.splitUnit) / lot.portions : whole.kilograms;
  const first = lot.ripeness >= nearlyRipe ? programme.stays.length - 1 : 0;
  const stays = programme.stays.slice(first);
  return {
    lot,
    programme,
    whole,
    apart,
    leastKilograms,
    stays,
    boxes: stays.map(({ place }) => kitchen.boxOf(place)),
    litres: stays.map((_, stay) => litresInStay(problem, part, first + stay)),
    gives: kitchen.optimist.gives(whole, leastKilograms).slice(first),
    // Shared out over its portions: of two parts or more each costs its own effort, and all but one that of splitting.
    effort: programmeEffort(programme, lot) + (apart ? weights.split : 0),
  };
}
