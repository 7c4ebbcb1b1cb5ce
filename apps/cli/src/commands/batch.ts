import { availableParallelism } from "node:os";
import type { PaperSize } from "@keepwright/paper";
import type { Command } from "commander";
import { runBatch } from "../batch/runBatch.js";
import type { BatchSettings } from "../batch/settings.js";
import type { Door } from "../door/door.js";
import { type HouseholdOptions, withPlanningOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import { wholeOption } from "../options/numbers.js";
import { paperOption } from "../options/paper.js";
import type { CommandOutcome } from "../program.js";
import { quoted, userError } from "../userError.js";
import { kitchenFor } from "./kitchenFor.js";

const help = `
ROWS is a file with one JSON object a line, or "-" for standard input. Only the haul is needed:

  {"id": "box-1", "haul": "2 lb apples, a bunch of kale, 6 carrots"}
  {"id": "box-2", "haul": "1 kg potatoes, 500 g spinach", "people": 4, "language": "es", "large": true}

A row may also hold kitchen, portions, days, away, from, seed, units and paper; what it leaves out is as the options
say. For each row the folder gets ID.pdf, the page for the refrigerator door, and ID.plan.json, the plan. A run that was
stopped goes on where it was when the same command is given again; a row whose words changed is made anew. Rows that
cannot be made are named with their line, and the others are made all the same.

Examples:
  keepwright batch boxes.ndjson --sheets sheets
  keepwright batch boxes.ndjson --sheets sheets --language es --units us --people 4
`;

interface BatchOptions extends Omit<HouseholdOptions, "away"> {
  readonly sheets: string;
  readonly paper?: PaperSize;
  readonly large?: true;
  readonly workers?: number;
}

/** `keepwright batch`: a plan and a page for each of many boxes or households, from one file. */
export function batchCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withPlanningOptions(program.command("batch"))
    .summary("make a plan and a page for each of many boxes, from one file")
    .description(
      "Makes a plan and a page for the refrigerator door for each row of a file, on all processors.",
    )
    .argument("<rows>", "a file with one JSON object a line, or - for standard input")
    .requiredOption("-s, --sheets <folder>", "the folder to write to; made if it is not there")
    .option("--paper <size>", "a4 or letter (default: letter with --units us, else a4)", paperOption)
    .option("--large", "large print: 18 pt, on as many pages as it takes")
    .option(
      "--workers <number>",
      "how many rows are worked out side by side (default: one a processor)",
      wholeOption("--workers", { least: 1, most: 64 }),
    )
    .option("--json", "print one JSON object a row instead of text, errors too")
    .addHelpText("after", help)
    .action((path: string, options: BatchOptions) => {
      outcome.later = batchFor(door, path, options);
    });
}

function settingsFor(door: Door, options: BatchOptions): BatchSettings {
  const { kitchen, people, portions, days, from, seed, units, language, paper, large } = options;
  return {
    kitchen: kitchenFor(door, kitchen),
    ...(people !== undefined && { people }),
    ...(portions !== undefined && { portions }),
    days,
    from: from ?? door.today(),
    seed,
    units,
    language,
    ...(paper !== undefined && { paper }),
    large: large === true,
  };
}

/** Looks at what can be wrong with the command before anything is begun. */
function batchFor(door: Door, path: string, options: BatchOptions): NonNullable<CommandOutcome["later"]> {
  const found = path === "-" ? "file" : door.look(path);
  if (found === "nothing")
    throw userError(
      `rows ${quoted(path)}`,
      "there is no such file",
      "Check the name and the folder you are in.",
    );
  if (found === "folder")
    throw userError(`rows ${quoted(path)}`, "this is a folder", "Name a file inside it.");
  if (door.look(options.sheets) === "file")
    throw userError(`--sheets ${quoted(options.sheets)}`, "this is a file", "Name a folder to write to.");
  const settings = settingsFor(door, options);
  const context = contextFor(options);
  const workers = options.workers ?? availableParallelism();
  return () =>
    runBatch(door, { path, folder: options.sheets, workers, settings, json: options.json === true, context });
}
