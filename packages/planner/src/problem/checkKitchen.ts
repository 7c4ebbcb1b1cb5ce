import { contradictions } from "./contradictions.js";
import { type Finding, KitchenError } from "./inputError.js";
import { type Kitchen, kitchenSchema } from "./kitchen.js";
import { kitchenWarnings } from "./kitchenWarnings.js";
import { schemaFindings } from "./schemaFindings.js";

/** A kitchen that can be planned for, with warnings; or everything that is wrong with it. */
export type KitchenCheck =
  | { readonly ok: true; readonly kitchen: Kitchen; readonly warnings: readonly Finding[] }
  | { readonly ok: false; readonly problems: readonly Finding[] };

/** Checks what may be a kitchen: its shape first, then whether its parts agree with one another. Never throws. */
export function checkKitchen(given: unknown): KitchenCheck {
  const parsed = kitchenSchema.safeParse(given);
  if (!parsed.success) return { ok: false, problems: schemaFindings(given, "kitchen", parsed.error) };
  const problems = contradictions(parsed.data);
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, kitchen: parsed.data, warnings: kitchenWarnings(parsed.data) };
}

/** The kitchen, or a KitchenError with all findings. */
export function kitchenFrom(given: unknown): Kitchen {
  const check = checkKitchen(given);
  if (!check.ok) throw new KitchenError(check.problems);
  return check.kitchen;
}
