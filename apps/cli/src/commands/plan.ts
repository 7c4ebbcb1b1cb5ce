import { catalogue } from "@keepwright/catalogue";
import {
  handoutContext,
  jsonText,
  planText,
  planView,
  readingView,
  type UnitSystem,
  writtenPlan,
} from "@keepwright/handout";
import { type Kitchen, type Plan, planHaul } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { awayDays, dateOption } from "../options/dates.js";
import { haulFromArguments } from "../options/haulArgument.js";
import { decimalOption, wholeOption } from "../options/numbers.js";
import { jsonHelp, unitsFlag, unitsHelp, unitsOption } from "../options/shared.js";
import type { CommandOutcome } from "../program.js";
import { kitchenFor } from "./kitchenFor.js";
import { type ReadLots, readLots } from "./readLots.js";

export interface PlanOptions {
  readonly kitchen?: string;
  readonly people?: number;
  readonly portions?: number;
  readonly days: number;
  readonly away?: string;
  readonly from?: CalendarDate;
  readonly seed: number;
  readonly units: UnitSystem;
  readonly json?: true;
}

const help = `
HAUL is the name of a text file, "-" for standard input, or the haul itself in quotes. A name that looks like a file's
(with an ending such as .txt, or beginning with / or ./) is never taken for a haul.

Examples:
  keepwright plan "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright plan haul.txt --people 4 --from 2026-06-13 --away 2026-06-14,2026-06-20/2026-06-21
  keepwright plan - --kitchen my-kitchen.json --json < haul.txt
  keepwright plan haul.txt --kitchen small --units us
`;

/** `keepwright plan`: from a haul to a plan. */
export function planCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  program
    .command("plan")
    .summary("plan where a haul goes, what to do to it, when it moves and what to eat first")
    .description(
      "Plans a haul: where each thing goes, how it is wrapped, when it moves, what to eat first, and why.",
    )
    .argument("<haul...>", "what came home: a file, - for standard input, or the words themselves")
    .option("-k, --kitchen <file>", "kitchen file, or the key of an ordinary one (see keepwright kitchen)")
    .option(
      "-p, --people <number>",
      "how many eat (default: 2)",
      wholeOption("--people", { least: 1, most: 500 }),
    )
    .option(
      "--portions <number>",
      "portions each eats a day (default: 5)",
      decimalOption("--portions", { least: 0.5, most: 20 }),
    )
    .option("-d, --days <number>", "days to plan for", wholeOption("--days", { least: 1, most: 28 }), 10)
    .option("-a, --away <dates>", "days nobody is at home: dates parted by commas, stretches as first/last")
    .option("-f, --from <date>", "first day, year-month-day (default: today)", dateOption("--from"))
    .option(
      "--seed <number>",
      "seed of the search; the same seed gives the same plan",
      wholeOption("--seed", { least: 0, most: 4294967295 }),
      1,
    )
    .option(unitsFlag, unitsHelp, unitsOption, "metric")
    .option("--json", jsonHelp)
    .addHelpText("after", help)
    .action((words: string[], options: PlanOptions) => {
      outcome.code = runPlan(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

function makePlan(door: Door, options: PlanOptions, { lots }: ReadLots, kitchen: Kitchen): Plan {
  const from = options.from ?? door.today();
  const household = {
    ...(options.people !== undefined && { people: options.people }),
    ...(options.portions !== undefined && { portionsPerPersonPerDay: options.portions }),
    days: options.days,
    daysAway: options.away === undefined ? [] : awayDays(options.away, from, options.days),
  };
  const stop = door.errIsTerminal ? door.showProgress("Working out the plan …") : () => undefined;
  try {
    return planHaul({ haul: { lots }, kitchen, household, from, seed: options.seed, catalogue: catalogue() });
  } finally {
    stop();
  }
}

/** Plans and prints. True when some words were not understood. */
function runPlan(door: Door, words: readonly string[], options: PlanOptions): boolean {
  const context = handoutContext(catalogue(), { units: options.units });
  const haul = haulFromArguments(door, words);
  door.err(`Haul read from ${haul.origin}.\n`);
  const read = readLots(context, catalogue(), haul.text);
  const kitchen = kitchenFor(door, options.kitchen);
  const plan = makePlan(door, options, read, kitchen);
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

/** Questions go to standard error too, unless both streams end on the same screen, which has them already. */
function tellQuestions(
  door: Door,
  context: Parameters<typeof readingView>[0],
  read: ReadLots,
  json: boolean,
): void {
  if (!json && door.outIsTerminal && door.errIsTerminal) return;
  for (const question of readingView(context, read.reading).questions) door.err(`${question}\n`);
}
