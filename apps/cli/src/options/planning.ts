import { catalogue } from "@keepwright/catalogue";
import type { UnitSystem } from "@keepwright/handout";
import type { Household, Kitchen, Lot, PlanRequest } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { awayDays, dateOption } from "./dates.js";
import { decimalOption, wholeOption } from "./numbers.js";
import { jsonHelp, unitsFlag, unitsHelp, unitsOption } from "./shared.js";

/** What every command that plans a haul is told. */
export interface PlanningOptions {
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

/** How a haul is named, for the help of every command that takes one. */
export const haulHelp = `
HAUL is the name of a text file, "-" for standard input, or the haul itself in quotes. A name that looks like a file's
(with an ending such as .txt, or beginning with / or ./) is never taken for a haul.
`;

/** Gives a command the haul and the options of planning. */
export const withPlanningOptions = (command: Command): Command =>
  command
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
    .option("--json", jsonHelp);

/** The request that the options stand for. Throws UserError for days away that are not planned for. */
export function planRequest(
  door: Door,
  options: PlanningOptions,
  lots: readonly Lot[],
  kitchen: Kitchen,
): PlanRequest {
  const from = options.from ?? door.today();
  const household: Partial<Household> = {
    ...(options.people !== undefined && { people: options.people }),
    ...(options.portions !== undefined && { portionsPerPersonPerDay: options.portions }),
    days: options.days,
    daysAway: options.away === undefined ? [] : awayDays(options.away, from, options.days),
  };
  return { haul: { lots }, kitchen, household, from, seed: options.seed, catalogue: catalogue() };
}
