import { HouseholdError } from "./inputError.js";
import { type Household, householdSchema } from "./kitchen.js";
import { schemaFindings } from "./schemaFindings.js";

/** The household with what was left out filled in, or a HouseholdError with all findings. */
export function householdFrom(given: unknown): Household {
  const parsed = householdSchema.safeParse(given ?? {});
  if (!parsed.success) throw new HouseholdError(schemaFindings(given, "household", parsed.error));
  return parsed.data;
}
