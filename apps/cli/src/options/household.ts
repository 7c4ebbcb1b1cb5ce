import { catalogue } from "@keepwright/catalogue";
import type { Kitchen, Lot, PlanRequest } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { awayDays, dateOption } from "./dates.js";
import { type TellingOptions, withLanguageOption } from "./language.js";
import { decimalOption, wholeOption } from "./numbers.js";
import { jsonHelp, unitsFlag, unitsHelp, unitsOption } from "./shared.js";

/** Options of every command that takes a haul into a kitchen: which kitchen, who eats, when, and how it is told. */
export interface HouseholdOptions extends TellingOptions {
  readonly kitchen?: string;
  readonly people?: number;
  readonly portions?: number;
  readonly days: number;
  readonly away?: string;
  readonly from?: CalendarDate;
  readonly seed: number;
  readonly json?: true;
}

/** Gives a command the options that say which kitchen, who eats, from when and for how long, and how it is told. */
export const withPlanningOptions = (command: Command): Command =>
  withLanguageOption(command)
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
    .option("-f, --from <date>", "first day, year-month-day (default: today)", dateOption("--from"))
    .option(
      "--seed <number>",
      "seed of the search; the same seed gives the same plan",
      wholeOption("--seed", { least: 0, most: 4294967295 }),
      1,
    )
    .option(unitsFlag, unitsHelp, unitsOption, "metric");

/** Gives a command the options of one household: those, and the days away. */
export const withHouseholdOptions = (command: Command): Command =>
  withPlanningOptions(command)
    .option("-a, --away <dates>", "days nobody is at home: dates parted by commas, stretches as first/last")
    .option("--json", jsonHelp);

/** What is asked of the planner. Throws UserError for a day away that is not planned for. */
export function planRequest(
  door: Door,
  options: HouseholdOptions,
  lots: readonly Lot[],
  kitchen: Kitchen,
): PlanRequest {
  const from = options.from ?? door.today();
  const household = {
    ...(options.people !== undefined && { people: options.people }),
    ...(options.portions !== undefined && { portionsPerPersonPerDay: options.portions }),
    days: options.days,
    daysAway: options.away === undefined ? [] : awayDays(options.away, from, options.days),
  };
  return { haul: { lots }, kitchen, household, from, seed: options.seed, catalogue: catalogue() };
}
