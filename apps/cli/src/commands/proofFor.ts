import { type HandoutContext, progressLine } from "@keepwright/handout";
import { type Plan, type Problem, type Proof, provePlan } from "@keepwright/planner";
import type { Door } from "../door/door.js";
import { whileTelling } from "./haulCommand.js";

export const proveFlag = "--prove";
export const proveHelp = "also say how much better any other plan could be at most (takes some seconds more)";

/** How much better than a plan any other could be at most. The solver is loaded before any command runs, only where it was asked for. */
export function proofFor(door: Door, context: HandoutContext, problem: Problem, plan: Plan): Proof {
  const { solver } = door;
  if (!solver) throw new Error("The solver of linear programmes has not been loaded.");
  return whileTelling(door, progressLine(context, "proof"), () =>
    provePlan(problem, plan.objective.total, solver),
  );
}
