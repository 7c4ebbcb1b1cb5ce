import {
  type HandoutContext,
  jsonText,
  pageWords,
  type SheetView,
  sheetView,
  writtenLine,
} from "@keepwright/handout";
import { type PaperSize, type SheetPdf, sheetPdf } from "@keepwright/paper";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { mayWritePdf, writePdf } from "../door/writePdf.js";
import { exitCodes } from "../exitCodes.js";
import { haulHelp } from "../options/haulArgument.js";
import { type HouseholdOptions, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import { paperOption, usualPaper } from "../options/paper.js";
import { unprintable } from "../output/unprintable.js";
import type { CommandOutcome } from "../program.js";
import { UserError } from "../userError.js";
import { planToTake, planToTakeHelp } from "./planToTake.js";

const help = `${haulHelp}${planToTakeHelp}
Examples:
  keepwright sheet haul.txt --people 4
  keepwright sheet "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe" --units us --out door.pdf
  keepwright sheet haul.txt --language es --large
  keepwright plan haul.txt --json > plan.json
  keepwright sheet plan.json --paper letter
`;

interface SheetOptions extends HouseholdOptions {
  readonly out: string;
  readonly paper?: PaperSize;
  readonly large?: true;
}

/** `keepwright sheet`: the page for the refrigerator door, as PDF. */
export function sheetCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("sheet"))
    .summary("print the page for the refrigerator door, as a PDF")
    .description(
      "Makes the page for the refrigerator door: where each thing goes, how, what to move, what to eat first. A tagged PDF (PDF/UA-1).",
    )
    .argument("<haul...>", "what came home: a file, - for standard input, or the words; or a plan")
    .option("-o, --out <file>", "the PDF to write", "sheet.pdf")
    .option("--paper <size>", "a4 or letter (default: letter with --units us, else a4)", paperOption)
    .option("--large", "large print: 18 pt, on as many pages as it takes")
    .addHelpText("after", help)
    .action((words: string[], options: SheetOptions, command: Command) => {
      outcome.code = runSheet(door, words, options, command) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

/** The page as PDF. Throws UserError where a name has a character that cannot be printed. */
function printed(context: HandoutContext, view: SheetView, options: SheetOptions): SheetPdf {
  try {
    return sheetPdf(view, {
      paper: options.paper ?? usualPaper(options.units),
      large: options.large === true,
      pageWords: (page, pages) => pageWords(context, page, pages),
    });
  } catch (error) {
    const problem = unprintable("sheet", error);
    throw problem ? new UserError([problem]) : error;
  }
}

/** Plans where need be, and writes the page. True when some words were not understood. */
function runSheet(door: Door, words: readonly string[], options: SheetOptions, command: Command): boolean {
  const { out } = options;
  mayWritePdf(door, out);
  const context = contextFor(options);
  const { plan, counted, partly } = planToTake(door, context, words, options, command);
  const view = sheetView(context, plan, counted);
  const { bytes, pages, textSize } = printed(context, view, options);
  writePdf(door, out, bytes);
  door.out(
    options.json
      ? jsonText({ file: out, pages, textSize, sheet: view })
      : `${writtenLine(context, { file: out, pages, size: textSize })}\n`,
  );
  return partly;
}
