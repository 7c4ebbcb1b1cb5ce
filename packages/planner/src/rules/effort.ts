import type { Part, Programme } from "../problem/programme.js";
import { weights } from "./weights.js";

/** Soft rule: effort of one programme [g]: wrapping, moving, preparing. */
export function programmeEffort(programme: Programme): number {
  const wrapping = programme.stays.reduce((sum, stay, index) => {
    const before = programme.stays[index - 1];
    return before?.wrap === stay.wrap ? sum : sum + weights.wrap[stay.wrap];
  }, 0);
  const moving = (programme.stays.length - 1) * weights.move;
  return (
    wrapping + moving + (programme.leavesOff ? weights.leavesOff : 0) + (programme.dried ? weights.drying : 0)
  );
}

/** Soft rule: effort of a whole choice [g], each further part of a lot included. */
export function choiceEffort(parts: readonly Part[]): number {
  const lots = new Set(parts.map((part) => part.lot)).size;
  const programmes = parts.reduce((sum, part) => sum + programmeEffort(part.programme), 0);
  return programmes + (parts.length - lots) * weights.split;
}
