import { figureCatalogue } from "@keepwright/catalogue";
import type { PlanRequest } from "@keepwright/planner";
import { type PlanAsked, planSeed } from "./planMessages.js";

/** What a question asks of the planner. */
export const plannerRequest = ({ lots, kitchen, household, from }: PlanAsked): PlanRequest => ({
  haul: { lots: [...lots] },
  kitchen,
  household,
  from,
  seed: planSeed,
  catalogue: figureCatalogue(),
});
