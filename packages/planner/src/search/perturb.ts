import { ventSettings } from "../problem/kitchen.js";
import type { Choice } from "../problem/programme.js";
import { withProgramme } from "./moves.js";
import type { Prepared } from "./prepare.js";

/** Parts thrown elsewhere in one perturbation, at most. */
const mostThrown = 4;

/** A choice not far from this one: a few parts take another of their options, better ones likelier, and perhaps a vent is set anew. */
export function perturbed(prepared: Prepared, choice: Choice, random: () => number): Choice {
  const pick = (count: number): number => Math.min(count - 1, Math.floor(random() * count));
  const thrown = Math.min(choice.parts.length, 1 + pick(mostThrown));
  let changed = choice;
  for (let time = 0; time < thrown; time++) {
    const part = pick(choice.parts.length);
    const options = prepared.options(choice.parts[part]!.lot);
    // Squaring draws towards the front of the list, where the options best alone stand.
    const option = options[Math.min(options.length - 1, Math.floor(random() ** 2 * options.length))]!;
    changed = withProgramme(changed, part, option.programme);
  }
  if (choice.vents.length > 0 && random() < 0.5) {
    const vent = pick(choice.vents.length);
    changed = {
      parts: changed.parts,
      vents: changed.vents.with(vent, ventSettings[pick(ventSettings.length)]!),
    };
  }
  return changed;
}
