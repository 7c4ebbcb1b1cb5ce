import {
  type HandoutContext,
  jsonText,
  type LabelRow,
  type LabelSheet,
  labelLayout,
  labelPage,
  labelRows,
  type PlacedLabel,
  usualSheets,
  writtenLabels,
  writtenPagesLine,
} from "@keepwright/handout";
import { labelsPdf } from "@keepwright/paper";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { mayWritePdf, writePdf } from "../door/writePdf.js";
import { exitCodes } from "../exitCodes.js";
import { type HouseholdOptions, withHouseholdOptions } from "../options/household.js";
import { gridOption } from "../options/labelGrid.js";
import { contextFor } from "../options/language.js";
import { wholeOption } from "../options/numbers.js";
import { unprintable } from "../output/unprintable.js";
import type { CommandOutcome } from "../program.js";
import { UserError, userError } from "../userError.js";
import { planToTake, planToTakeHelp } from "./planToTake.js";

interface LabelsOptions extends HouseholdOptions {
  readonly grid: LabelSheet;
  readonly start: number;
  readonly outlines?: true;
  readonly out?: string;
}

const help = `${planToTakeHelp}
GRID is one of these, named by page, columns by rows, and label size in mm (from memory: measure your sheet first):
  ${Object.keys(usualSheets).join("\n  ")}
or your own in mm, five pairs: page, columns and rows, label, left and top margin, gaps across and down:
  "210x297 3x7 63.5x38.1 7.25x15.15 2.5x0"

Print at true size (100 %), with no margins added. Examples:
  keepwright labels haul.txt --people 4 > labels.html
  keepwright labels plan.json --out labels.pdf
  keepwright labels plan.json --grid letter-3x10-66.7x25.4 --start 8 > labels.html
  keepwright labels plan.json --grid "210x297 2x5 90x50 15x20 0x2" --outlines > labels.html
`;

/** `keepwright labels`: a label for each bag and box of a plan. */
export function labelsCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("labels"))
    .summary("make a sheet of labels for bags and boxes")
    .description(
      "Prints a page (HTML) of labels, or writes them as a tagged PDF (PDF/UA-1): what it is, until when it is good, where it goes and how.",
    )
    .argument("<haul...>", "what came home, or a plan: a file, - for standard input, or the words themselves")
    .option("--grid <grid>", "the label sheet", gridOption, usualSheets["a4-3x7-63.5x38.1"])
    .option(
      "--start <number>",
      "first free label of the sheet, counted along the rows",
      wholeOption("--start", { least: 1, most: 2500 }),
      1,
    )
    .option("-o, --out <file>", "write a PDF instead, in the letters of the other pages")
    .option("--outlines", "draw the edges of the labels, to try on plain paper or to cut out")
    .addHelpText("after", help)
    .action((words: string[], options: LabelsOptions, command: Command) => {
      outcome.code = runLabels(door, words, options, command) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

/** Prints the labels of a plan. True when some words of the haul were not understood. */
function runLabels(door: Door, words: readonly string[], options: LabelsOptions, command: Command): boolean {
  const { grid, start } = options;
  if (options.out !== undefined) mayWritePdf(door, options.out);
  const onSheet = grid.columns * grid.rows;
  if (start > onSheet)
    throw userError(
      "--start",
      String(start),
      `The sheet has ${onSheet} labels. Give a number from 1 to ${onSheet}.`,
    );
  const context = contextFor(options);
  const { plan, counted, lies, partly } = planToTake(door, context, words, options, command);
  const rows = labelRows(context, plan, counted, lies);
  const labels =
    options.out === undefined
      ? labelLayout(rows, grid, start)
      : writtenAsPdf(door, context, rows, options, options.out);
  if (options.json) door.out(jsonText(writtenLabels(rows, labels, grid)));
  else if (options.out === undefined) door.out(labelPage(context, labels, grid, options.outlines === true));
  return partly;
}

/** Writes the labels as PDF and tells so. Throws UserError where a name has a character that cannot be printed. */
function writtenAsPdf(
  door: Door,
  context: HandoutContext,
  rows: readonly LabelRow[],
  { grid, start, outlines, json }: LabelsOptions,
  file: string,
): readonly PlacedLabel[] {
  const title = context.speaker.say("label.title");
  const options = { grid, start, outlines: outlines === true, title, language: context.speaker.tag };
  try {
    const { bytes, pages, labels } = labelsPdf(rows, options);
    writePdf(door, file, bytes);
    if (!json) door.out(`${writtenPagesLine(context, file, pages)}\n`);
    return labels;
  } catch (error) {
    const problem = unprintable("labels", error);
    throw problem ? new UserError([problem]) : error;
  }
}
