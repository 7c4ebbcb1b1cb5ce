import { figureCatalogue } from "@keepwright/catalogue";
import { explainPlan, planHaul } from "@keepwright/planner";
import type { PlanAnswer, PlanRequest } from "./planMessages.js";

/** Same seed for everybody: the same haul and kitchen give the same plan. */
const seed = 1;

const answer = (message: PlanAnswer): void => postMessage(message);

function plan({ number, lots, kitchen, household, from }: PlanRequest): void {
  try {
    const haul = { lots: [...lots] };
    const made = planHaul({ haul, kitchen, household, from, seed, catalogue: figureCatalogue() });
    answer({ number, kind: "plan", plan: made });
    answer({
      number,
      kind: "reasons",
      reasons: explainPlan({ haul, kitchen, household, plan: made, catalogue: figureCatalogue() }),
    });
  } catch (error) {
    answer({ number, kind: "problem", message: error instanceof Error ? error.message : String(error) });
  }
}

addEventListener("message", (event: MessageEvent<PlanRequest>) => plan(event.data));
