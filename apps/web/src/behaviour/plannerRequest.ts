import { figureCatalogue } from "@keepwright/catalogue";
import type { PlanRequest } from "@keepwright/planner";
import { type PlanAsked, planSeed } from "./planMessages.js";

/** Draws for a range of waste: enough for ends told to two figures, few enough not to be waited for. Declared, no source. */
export const rangeDraws = 60;

/** Whether there can be ranges: what is carried over from an earlier plan cannot be drawn. */
export const canBeDrawn = ({ lots }: Pick<PlanAsked, "lots">): boolean =>
  !lots.some(({ carried }) => carried);

/** What a question asks of the planner. */
export const plannerRequest = ({ lots, kitchen, household, from, standing }: PlanAsked): PlanRequest => ({
  haul: { lots: [...lots], ...(standing && { standing }) },
  kitchen,
  household,
  from,
  seed: planSeed,
  catalogue: figureCatalogue(),
});
