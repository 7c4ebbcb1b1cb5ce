import { layTwoWays } from "@keepwright/planner";
import { canBeDrawn, plannerRequest, rangeDraws } from "./plannerRequest.js";
import type { WaysAnswer, WaysAsked } from "./waysMessages.js";
import { whatFailed } from "./whatFailed.js";

/** Lays a haul two ways. Without ranges where it cannot be drawn. */
export function answerWays(asked: WaysAsked, answer: (answer: WaysAnswer) => void): void {
  const { plan, unplanned } = asked;
  const request = { ...plannerRequest(asked), plan, ...unplanned };
  try {
    const drawn = canBeDrawn(asked);
    answer({ kind: "two ways", made: layTwoWays(request), last: !drawn });
    if (drawn) answer({ kind: "two ways", made: layTwoWays({ ...request, draws: rangeDraws }), last: true });
  } catch (error) {
    answer({ kind: "problem", ...whatFailed(error) });
  }
}
