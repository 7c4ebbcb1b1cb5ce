import { layTwoWays } from "@keepwright/planner";
import { plannerRequest, rangeDraws } from "./plannerRequest.js";
import type { WaysAnswer, WaysAsked } from "./waysMessages.js";

/** Lays a haul two ways. What is carried over from an earlier plan cannot be drawn, and then there are no ranges. */
export function answerWays(asked: WaysAsked, answer: (answer: WaysAnswer) => void): void {
  const { plan, unplanned } = asked;
  const request = { ...plannerRequest(asked), plan, ...unplanned };
  try {
    const drawn = !asked.lots.some(({ carried }) => carried);
    answer({ kind: "two ways", made: layTwoWays(request), last: !drawn });
    if (drawn) answer({ kind: "two ways", made: layTwoWays({ ...request, draws: rangeDraws }), last: true });
  } catch (error) {
    answer({ kind: "problem", message: error instanceof Error ? error.message : String(error) });
  }
}
