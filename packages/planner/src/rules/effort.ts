import type { BoundLot } from "../problem/bindHaul.js";
import type { VentSetting } from "../problem/kitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Part, Programme, ProgrammeStay } from "../problem/programme.js";
import { weights } from "./weights.js";

/** What is known of how a lot lies already. */
type Lies = Pick<BoundLot, "carried">;

/** Nobody has put it away yet. */
const justHome: Lies = {};

const alike = (one: Pick<ProgrammeStay, "place" | "wrap">, other: Pick<ProgrammeStay, "place" | "wrap">) =>
  one.place === other.place && one.wrap === other.wrap;

/**
 * Soft rule: effort of moving or wrapping anew, at once, what lies somewhere already [g]. What the earlier plan had foreseen costs what a later move costs; what it had
 * not costs more, so that nothing is moved without gain. Nothing for what stays as it lies.
 */
export function disturbance({ carried }: Lies, first: ProgrammeStay): number {
  if (!carried || alike(carried.lies, first)) return 0;
  if (carried.remainder.some((stay) => alike(stay, first))) return weights.move;
  return (
    (carried.lies.place === first.place ? 0 : weights.needlessMove) +
    (carried.lies.wrap === first.wrap ? 0 : weights.needlessRewrap)
  );
}

/** Soft rule: effort of one programme [g]: wrapping, moving, preparing, and disturbing what lies somewhere already. */
export function programmeEffort(programme: Programme, lot: Lies = justHome): number {
  const wrapping = programme.stays.reduce((sum, stay, index) => {
    const before = programme.stays[index - 1] ?? lot.carried?.lies;
    return before?.wrap === stay.wrap ? sum : sum + weights.wrap[stay.wrap];
  }, 0);
  const moving = (programme.stays.length - 1) * weights.move;
  return (
    wrapping +
    moving +
    disturbance(lot, programme.stays[0]!) +
    (programme.leavesOff ? weights.leavesOff : 0) +
    (programme.dried ? weights.drying : 0)
  );
}

/** Soft rule: effort of a whole choice [g], each further part of a lot included. */
export function choiceEffort(parts: readonly Part[], lots: readonly Lies[] = []): number {
  const apart = new Set(parts.map((part) => part.lot)).size;
  const programmes = parts.reduce((sum, part) => sum + programmeEffort(part.programme, lots[part.lot]), 0);
  return programmes + (parts.length - apart) * weights.split;
}

/** Soft rule: effort of turning vents that stand as an earlier plan had them [g]. */
export const ventEffort = ({ standing }: Pick<Problem, "standing">, vents: readonly VentSetting[]): number =>
  vents.filter((setting, vent) => (standing?.vents[vent] ?? setting) !== setting).length * weights.ventTurned;
