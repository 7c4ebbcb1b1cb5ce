import { layTwoWays, type Plan, type PlanRequest, type TwoWays } from "@keepwright/planner";
import type { HandoutContext } from "../../view/context.js";
import { type TwoWaysView, twoWaysView } from "../../view/twoWaysView.js";
import type { ClassContext } from "../classContext.js";

/** Draws for the ranges: they are printed once and for all, so more than the page takes. Declared, no source. */
const drawCount = 200;

/** The worked household's haul, unsorted and as planned. Without a refrigerator nobody puts everything into it: then on the counter. */
export function layKit(
  { kitchen }: Pick<ClassContext, "kitchen">,
  request: PlanRequest,
  plan: Plan,
): TwoWays {
  const cold = kitchen.places.some(({ refrigerator }) => refrigerator !== undefined);
  return layTwoWays({ ...request, plan, habit: cold ? "refrigerator" : "counter", draws: drawCount });
}

/** The same in words. The worked household's days are nobody's dates. */
export const kitTwoWaysView = (handout: HandoutContext, made: TwoWays): TwoWaysView =>
  twoWaysView(handout, made, false);
