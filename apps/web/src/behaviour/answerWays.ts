import { figureCatalogue } from "@keepwright/catalogue";
import { layTwoWays } from "@keepwright/planner";
import { planSeed } from "./planMessages.js";
import type { WaysAnswer, WaysAsked } from "./waysMessages.js";

/** Draws for the ranges: as for a judgement, enough for ends told to two figures. Declared, no source. */
const drawCount = 60;

/** Lays a haul two ways. What is carried over from an earlier plan cannot be drawn, and then there are no ranges. */
export function answerWays(asked: WaysAsked, answer: (answer: WaysAnswer) => void): void {
  const { lots, kitchen, household, from, plan, unplanned } = asked;
  const request = {
    haul: { lots: [...lots] },
    kitchen,
    household,
    from,
    seed: planSeed,
    catalogue: figureCatalogue(),
    plan,
    ...unplanned,
  };
  try {
    const drawn = !lots.some(({ carried }) => carried);
    answer({ kind: "two ways", made: layTwoWays(request), last: !drawn });
    if (drawn) answer({ kind: "two ways", made: layTwoWays({ ...request, draws: drawCount }), last: true });
  } catch (error) {
    answer({ kind: "problem", message: error instanceof Error ? error.message : String(error) });
  }
}
