import type { PlannerState } from "../state/plannerState.js";

/** Fields of what is kept, besides its version, in the order in which they are told. */
export const keptFields = [
  "text",
  "people",
  "days",
  "portions",
  "kitchen",
  "kitchens",
  "corrections",
  "meant",
  "away",
  "units",
  "language",
  "region",
  "done",
  "lying",
  "vents",
  "chosen",
  "from",
  "before",
  "missed",
  "classForm",
] as const satisfies readonly (keyof PlannerState)[];
