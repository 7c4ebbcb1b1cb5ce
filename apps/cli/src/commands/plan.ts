import { catalogue } from "@keepwright/catalogue";
import { handoutContext, jsonText, planText, planView, writtenPlan } from "@keepwright/handout";
import { type Plan, type PlanRequest, planHaul } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { haulFromArguments } from "../options/haulArgument.js";
import { haulHelp, type PlanningOptions, planRequest, withPlanningOptions } from "../options/planning.js";
import type { CommandOutcome } from "../program.js";
import { kitchenFor } from "./kitchenFor.js";
import { readLots, tellQuestions } from "./readLots.js";

const help = `${haulHelp}
Examples:
  keepwright plan "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright plan haul.txt --people 4 --from 2026-06-13 --away 2026-06-14,2026-06-20/2026-06-21
  keepwright plan - --kitchen my-kitchen.json --json < haul.txt
  keepwright plan haul.txt --kitchen small --units us
`;

/** `keepwright plan`: from a haul to a plan. */
export function planCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  const command = program
    .command("plan")
    .summary("plan where a haul goes, what to do to it, when it moves and what to eat first")
    .description(
      "Plans a haul: where each thing goes, how it is wrapped, when it moves, what to eat first, and why.",
    );
  withPlanningOptions(command)
    .addHelpText("after", help)
    .action((words: string[], options: PlanningOptions) => {
      outcome.code = runPlan(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

function makePlan(door: Door, request: PlanRequest): Plan {
  const stop = door.errIsTerminal ? door.showProgress("Working out the plan …") : () => undefined;
  try {
    return planHaul(request);
  } finally {
    stop();
  }
}

/** Plans and prints. True when some words were not understood. */
function runPlan(door: Door, words: readonly string[], options: PlanningOptions): boolean {
  const context = handoutContext(catalogue(), { units: options.units });
  const haul = haulFromArguments(door, words);
  door.err(`Haul read from ${haul.origin}.\n`);
  const read = readLots(context, catalogue(), haul.text);
  const kitchen = kitchenFor(door, options.kitchen);
  const plan = makePlan(door, planRequest(door, options, read.lots, kitchen));
  if (options.json) {
    door.out(jsonText(writtenPlan(plan, read.reading)));
  } else {
    const view = planView(context, plan, {
      reading: read.reading,
      counted: new Map(read.lots.map((lot) => [lot.id, lot])),
      kitchenAssumed: options.kitchen === undefined,
      ...(options.kitchen === undefined && { kitchen }),
    });
    door.out(planText(context, view));
  }
  tellQuestions(door, context, read, options.json === true);
  return read.partly;
}
