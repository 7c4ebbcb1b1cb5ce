import {
  type HandoutContext,
  improvementsText,
  improvementsView,
  jsonText,
  progressLine,
  writtenImprovements,
} from "@keepwright/handout";
import { type Improvements, improve, type PlanRequest } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { haulHelp } from "../options/haulArgument.js";
import { type HouseholdOptions, planRequest, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import type { CommandOutcome } from "../program.js";
import { readHaulArgument, tellQuestions, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";

const help = `${haulHelp}
Each change is tried by itself, with a plan of its own; that takes a few times as long as a plan.

Examples:
  keepwright improve "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright improve haul.txt --people 4 --from 2026-06-13
  keepwright improve haul.txt --kitchen my-kitchen.json --days 7 --json
`;

/** `keepwright improve`: the one change to kitchen, haul or household that would save most. */
export function improveCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("improve"))
    .summary("say which one change to kitchen, haul or household would save most")
    .description(
      "Says what would help most: one change at a time, each planned anew, ranked by the waste it avoids.",
    )
    .argument("<haul...>", "what came home: a file, - for standard input, or the words themselves")
    .addHelpText("after", help)
    .action((words: string[], options: HouseholdOptions) => {
      outcome.code = runImprove(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

const tryChanges = (door: Door, context: HandoutContext, request: PlanRequest): Improvements =>
  whileTelling(door, progressLine(context, "improve"), () => improve(request));

/** Tries changes and prints what they would save. True when some words were not understood. */
function runImprove(door: Door, words: readonly string[], options: HouseholdOptions): boolean {
  const context = contextFor(options);
  const read = readHaulArgument(door, context, words, options.from);
  const kitchen = kitchenFor(door, options.kitchen);
  const improvements = tryChanges(door, context, planRequest(door, options, read.lots, kitchen));
  if (options.json) {
    door.out(jsonText(writtenImprovements(improvements, read.reading)));
  } else {
    const view = improvementsView(context, improvements, {
      kitchen,
      kitchenAssumed: options.kitchen === undefined,
      lots: read.lots,
      reading: read.reading,
    });
    door.out(improvementsText(context, view));
  }
  tellQuestions(door, context, read, options.json === true);
  return read.partly;
}
