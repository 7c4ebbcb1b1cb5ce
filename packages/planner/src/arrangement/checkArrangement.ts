import { told } from "../problem/findingCode.js";
import { ArrangementError } from "../problem/inputError.js";
import { schemaFindings } from "../problem/schemaFindings.js";
import { type Arrangement, arrangementSchema } from "./arrangement.js";

/** The arrangement with what was left out filled in. Throws ArrangementError with all findings: its shape, or that it says nothing. */
export function arrangementFrom(given: unknown): Arrangement {
  const parsed = arrangementSchema.safeParse(given);
  if (!parsed.success) throw new ArrangementError(schemaFindings(given, "arrangement", parsed.error));
  const { lots, vents } = parsed.data;
  if (lots.length + vents.length === 0) {
    throw new ArrangementError([
      {
        thing: "arrangement",
        value: "it is empty",
        remedy: "Say where at least one lot lies, or how one vent is set.",
        ...told("arrangement empty"),
      },
    ]);
  }
  return parsed.data;
}
