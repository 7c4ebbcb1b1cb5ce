import { csvText, jsonText, planRows, type RowTable, rowTables } from "@keepwright/handout";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { type HouseholdOptions, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import type { CommandOutcome } from "../program.js";
import { quoted, userError } from "../userError.js";
import { planToTake, planToTakeHelp } from "./planToTake.js";

interface RowsOptions extends HouseholdOptions {
  readonly csv?: true;
  readonly table?: RowTable;
}

const help = `${planToTakeHelp}
What each column is: docs/guide/rows.md. Text that a spreadsheet would take for a formula has an apostrophe before it.

Examples:
  keepwright rows haul.txt --csv > stays.csv
  keepwright rows plan.json --csv --table meals > meals.csv
  keepwright rows plan.json --json
`;

function tableOption(text: string): RowTable {
  const name = (Object.keys(rowTables) as RowTable[]).find((table) => table === text.trim().toLowerCase());
  if (!name) throw userError("--table", quoted(text), `Give one of: ${Object.keys(rowTables).join(", ")}.`);
  return name;
}

/** `keepwright rows`: a plan as a table, for spreadsheets and other programs. */
export function rowsCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("rows"))
    .summary("print a plan as rows, for a spreadsheet or another program")
    .description(
      "Prints a plan as rows: each part and stay, or each meal. CSV (RFC 4180), or JSON with both.",
    )
    .argument("<haul...>", "what came home, or a plan: a file, - for standard input, or the words themselves")
    .option("--csv", "print CSV; this is so where --json is not given")
    .option("--table <name>", "rows to print as CSV: stays or meals (default: stays)", tableOption)
    .addHelpText("after", help)
    .action((words: string[], options: RowsOptions, command: Command) => {
      outcome.code = runRows(door, words, options, command) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

/** Prints the rows of a plan. True when some words of the haul were not understood. */
function runRows(door: Door, words: readonly string[], options: RowsOptions, command: Command): boolean {
  if (options.json && options.csv) throw userError("--csv", "--json is given too", "Give one of them.");
  if (options.json && options.table)
    throw userError("--table", quoted(options.table), "Leave it out: JSON has both tables.");
  const context = contextFor(options);
  const { plan, partly } = planToTake(door, context, words, options, command);
  const rows = planRows(context, plan);
  const table = options.table ?? "stays";
  door.out(
    options.json
      ? jsonText(rows)
      : table === "stays"
        ? csvText(rowTables.stays, rows.stays)
        : csvText(rowTables.meals, rows.meals),
  );
  return partly;
}
