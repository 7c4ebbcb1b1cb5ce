import { jsonText, judgementText, judgementView, progressLine, writtenJudgement } from "@keepwright/handout";
import { judgeArrangement } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { readJsonFile } from "../door/readText.js";
import { exitCodes } from "../exitCodes.js";
import { type HouseholdOptions, planRequest, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import type { CommandOutcome } from "../program.js";
import { readHaulArgument, surroundings, tellQuestions, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";

export interface JudgeOptions extends HouseholdOptions {
  readonly arrangement: string;
}

/** The least that works, on one line. */
const smallestArrangement = `{"version": 1, "lots": [{"lot": "apples", "place": "counter"}]}`;

const help = `
The arrangement file says where things lie now, in JSON:

  ${smallestArrangement}

"lot" is what was typed, a kind, or an id such as lot-1; "place" a place of the kitchen by id or name. Optional: "wrap",
"share" (0 to 1, of a lot in several places), "done" (twist off leaves, dry well), "later" (where it goes when ripe or on a
day); and "vents". What is not mentioned is put where a plan would put it. All fields: docs/guide/command-line.md.

Examples:
  keepwright judge haul.txt --arrangement mine.json
  keepwright judge "2 kg apples, 2 broccoli" --arrangement mine.json --people 3 --from 2026-06-13
  keepwright judge haul.txt --arrangement mine.json --kitchen my-kitchen.json --json
`;

/** `keepwright judge`: how things lie now, beside the plan. */
export function judgeCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("judge"))
    .summary("say what it costs to leave things as they lie now, beside the plan")
    .description(
      "Judges how a haul lies now: what goes to waste beside the plan, how long each lot lasts, and what is to blame.",
    )
    .argument("<haul...>", "what came home: a file, - for standard input, or the words themselves")
    .requiredOption("--arrangement <file>", "JSON file that says where things lie")
    .addHelpText("after", help)
    .action((words: string[], options: JudgeOptions) => {
      outcome.code = runJudge(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

/** Judges and prints. True when some words of the haul were not understood. */
function runJudge(door: Door, words: readonly string[], options: JudgeOptions): boolean {
  const context = contextFor(options);
  const remedy = `Correct it; this is one that works: ${smallestArrangement}`;
  const arrangement = readJsonFile(door, options.arrangement, "arrangement file", remedy);
  const read = readHaulArgument(door, context, words, options.from);
  const kitchen = kitchenFor(door, options.kitchen);
  const request = { ...planRequest(door, options, read.lots, kitchen), arrangement };
  const judgement = whileTelling(door, progressLine(context, "judge"), () => judgeArrangement(request));
  if (options.json) {
    door.out(jsonText(writtenJudgement(judgement, read.reading)));
  } else {
    const around = surroundings(read, kitchen, options.kitchen === undefined);
    door.out(judgementText(context, judgementView(context, judgement, around)));
  }
  tellQuestions(door, context, read, options.json === true);
  return read.partly;
}
