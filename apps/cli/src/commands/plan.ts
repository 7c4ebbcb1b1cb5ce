import { catalogue } from "@keepwright/catalogue";
import { handoutContext, jsonText, planText, planView, writtenPlan } from "@keepwright/handout";
import { type Kitchen, type Plan, planHaul } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { haulHelp } from "../options/haulArgument.js";
import { type HouseholdOptions, planRequest, withHouseholdOptions } from "../options/household.js";
import type { CommandOutcome } from "../program.js";
import { readHaulArgument, surroundings, tellQuestions, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";
import type { ReadLots } from "./readLots.js";

const help = `${haulHelp}
Examples:
  keepwright plan "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright plan haul.txt --people 4 --from 2026-06-13 --away 2026-06-14,2026-06-20/2026-06-21
  keepwright plan - --kitchen my-kitchen.json --json < haul.txt
  keepwright plan haul.txt --kitchen small --units us
`;

/** `keepwright plan`: from a haul to a plan. */
export function planCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("plan"))
    .summary("plan where a haul goes, what to do to it, when it moves and what to eat first")
    .description(
      "Plans a haul: where each thing goes, how it is wrapped, when it moves, what to eat first, and why.",
    )
    .argument("<haul...>", "what came home: a file, - for standard input, or the words themselves")
    .addHelpText("after", help)
    .action((words: string[], options: HouseholdOptions) => {
      outcome.code = runPlan(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

function makePlan(door: Door, options: HouseholdOptions, read: ReadLots, kitchen: Kitchen): Plan {
  const request = planRequest(door, options, read.lots, kitchen);
  return whileTelling(door, "Working out the plan …", () => planHaul(request));
}

/** Plans and prints. True when some words were not understood. */
function runPlan(door: Door, words: readonly string[], options: HouseholdOptions): boolean {
  const context = handoutContext(catalogue(), { units: options.units });
  const read = readHaulArgument(door, context, words);
  const kitchen = kitchenFor(door, options.kitchen);
  const plan = makePlan(door, options, read, kitchen);
  if (options.json) {
    door.out(jsonText(writtenPlan(plan, read.reading)));
  } else {
    const view = planView(context, plan, surroundings(read, kitchen, options.kitchen === undefined));
    door.out(planText(context, view));
  }
  tellQuestions(door, context, read, options.json === true);
  return read.partly;
}
