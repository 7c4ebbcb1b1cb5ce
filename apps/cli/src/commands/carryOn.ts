import { catalogue, catalogueFor } from "@keepwright/catalogue";
import {
  carriedOnText,
  carriedOnView,
  type HandoutContext,
  jsonText,
  kitchenWords,
  progressLine,
} from "@keepwright/handout";
import {
  bindProblem,
  type CarriedOn,
  carryOn,
  haulFrom,
  type Kitchen,
  readHappened,
} from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { readStandardInput, readTextFile } from "../door/readText.js";
import { exitCodes } from "../exitCodes.js";
import { dateOption } from "../options/dates.js";
import { looksLikePath } from "../options/haulArgument.js";
import { contextFor, type TellingOptions, withLanguageOption } from "../options/language.js";
import { wholeOption } from "../options/numbers.js";
import { jsonHelp, unitsFlag, unitsHelp, unitsOption } from "../options/shared.js";
import type { CommandOutcome } from "../program.js";
import { quoted, userError } from "../userError.js";
import { whileTelling } from "./haulCommand.js";
import { kitchenOfPlan, type PreviousPlan, previousPlan } from "./previousPlan.js";
import { proofFor, proveFlag, proveHelp } from "./proofFor.js";

interface CarryOnOptions extends TellingOptions {
  readonly happened?: string;
  readonly on?: CalendarDate;
  readonly kitchen?: string;
  readonly days?: number;
  readonly prove?: true;
  readonly json?: true;
}

const help = `
PLAN is a file that keepwright plan --json or keepwright carry-on --json printed. What happened is the name of a file, "-"
for standard input, or the words themselves; a thing a line, or parted by semicolons:

  ate 2 apples; threw out the spinach; avocados ripe; bought 1 lb peas; moved the kale to the shelf in a paper bag

or JSON: docs/guide/command-line.md. What is not mentioned went as the plan said: meals eaten, moves made.

Examples:
  keepwright plan haul.txt --json > plan.json
  keepwright carry-on plan.json --happened "ate 2 apples; avocados ripe"
  keepwright carry-on plan.json --happened since.txt --on 2026-06-16 --json > next.json
  keepwright carry-on next.json --days 10 --prove
  keepwright carry-on plan.json --happened "comí 2 manzanas" --language es
`;

/** `keepwright carry-on`: a plan carried on from what became of it. */
export function carryOnCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withLanguageOption(program.command("carry-on"))
    .summary("carry a plan on some days later, from what became of it, moving as little as possible")
    .description(
      "Carries a plan on: what was eaten, came home, ripened or was thrown out since; says what changes and why.",
    )
    .argument("<plan>", "JSON file of a plan")
    .option("--happened <account>", "what happened since: a file, - for standard input, or the words")
    .option("--on <date>", "the day it is now, year-month-day (default: today)", dateOption("--on"))
    .option("-k, --kitchen <file>", "the kitchen the plan was made for (default: the ordinary one it names)")
    .option(
      "-d, --days <number>",
      "days to plan for from now on (default: to the plan's last day)",
      wholeOption("--days", { least: 1, most: 28 }),
    )
    .option(proveFlag, proveHelp)
    .option(unitsFlag, unitsHelp, unitsOption, "metric")
    .option("--json", jsonHelp)
    .addHelpText("after", help)
    .action((path: string, options: CarryOnOptions) => {
      runCarryOn(door, path, options);
      outcome.code = exitCodes.done;
    });
}

/** The account as text: of a file, of standard input, or the words themselves. */
function accountText(door: Door, given: string): string {
  if (given === "-") return readStandardInput(door);
  const file = door.look(given) !== "nothing" || (looksLikePath(given) && !given.includes(" "));
  return file ? readTextFile(door, given, "account of what happened") : given;
}

function jsonAccount(text: string, given: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const remedy = `Correct it; this works: {"version": 1, "lots": [{"lot": "apples", "eaten": "all"}]}`;
    throw userError(`account of what happened ${quoted(given)}`, `not valid JSON (${why})`, remedy);
  }
}

/** What happened, as data. Words are read by what there was and where it may lie. */
function account(
  door: Door,
  context: HandoutContext,
  given: string | undefined,
  previous: PreviousPlan,
  kitchen: Kitchen,
  on: CalendarDate,
): unknown {
  if (given === undefined) return undefined;
  const text = accountText(door, given);
  if (/^\s*\{/.test(text)) return jsonAccount(text, given);
  const { lots } = haulFrom(previous.haul, catalogue());
  const places = kitchen.places.map((place) => ({ ...place, also: [kitchenWords(context, place.name)] }));
  const here = catalogueFor(catalogue(), context.speaker.tag);
  return readHappened(text, { catalogue: here, lots, places, on });
}

function carriedOn(door: Door, context: HandoutContext, path: string, options: CarryOnOptions): CarriedOn {
  const previous = previousPlan(door, path);
  const kitchen = kitchenOfPlan(door, options.kitchen, previous.plan);
  const on = options.on ?? door.today();
  const happened = account(door, context, options.happened, previous, kitchen, on);
  const request = { ...previous, kitchen, happened, on, days: options.days, catalogue: catalogue() };
  const told = whileTelling(door, progressLine(context, "carry on"), () => carryOn(request));
  return options.prove ? proved(door, context, kitchen, told) : told;
}

/** The same with how good its plan is proved to be. */
function proved(door: Door, context: HandoutContext, kitchen: Kitchen, told: CarriedOn): CarriedOn {
  const { plan, haul } = told;
  const { from, seed, days } = plan;
  const household = { ...plan.household, days };
  const problem = bindProblem({ haul, kitchen, household, from, seed, catalogue: catalogue() });
  return { ...told, plan: { ...plan, proof: proofFor(door, context, problem, plan) } };
}

function runCarryOn(door: Door, path: string, options: CarryOnOptions): void {
  const context = contextFor(options);
  const told = carriedOn(door, context, path, options);
  if (options.json) {
    door.out(jsonText(told));
    return;
  }
  const counted = new Map(told.haul.lots.map((lot) => [lot.id, lot]));
  door.out(carriedOnText(context, carriedOnView(context, told, { counted })));
}
