import {
  CalendarError,
  calendarEvents,
  calendarText,
  calendarUid,
  type EarlierCalendar,
  earlierCalendar,
  earlierFromEvents,
  type HandoutContext,
  jsonText,
  madeMoves,
  type Reminder,
  type Succession,
  writtenCalendar,
} from "@keepwright/handout";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { readTextFile } from "../door/readText.js";
import { exitCodes } from "../exitCodes.js";
import { type HouseholdOptions, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import { momentOption, timeOption } from "../options/times.js";
import type { CommandOutcome } from "../program.js";
import { quoted, userError } from "../userError.js";
import { isPlanText, planToTake, planToTakeHelp, savedPlan } from "./planToTake.js";

interface CalendarOptions extends HouseholdOptions {
  readonly remind?: Reminder;
  readonly remindDayBefore?: Reminder;
  readonly earlier?: string;
  readonly name?: string;
  readonly made?: string;
}

const help = `${planToTakeHelp}
Days are whole days without a time zone. A plan carried on, or made again for the same first day and haul, updates the days
of the one before; give that one's calendar or plan with --earlier, and what fell away is cancelled.

Examples:
  keepwright calendar haul.txt --people 4 --from 2026-06-13 > plan.ics
  keepwright calendar plan.json --remind 08:00 > plan.ics
  keepwright calendar next.json --earlier plan.ics --remind-day-before 18:00 > next.ics
  keepwright calendar plan.json --json
`;

/** Longest name of a calendar. */
const longestName = 80;

function nameOption(text: string): string {
  const name = text.trim();
  if (name === "" || name.length > longestName)
    throw userError("--name", quoted(text), `Give a name of 1 to ${longestName} letters.`);
  return name;
}

/** `keepwright calendar`: the days of a plan as an iCalendar file. */
export function calendarCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("calendar"))
    .summary("make a calendar file of what to eat, move and throw away on which day")
    .description("Prints the days of a plan as an iCalendar file (RFC 5545), for any calendar program.")
    .argument("<haul...>", "what came home, or a plan: a file, - for standard input, or the words themselves")
    .option("--remind <time>", "ring on the day, for example 08:00", timeOption("--remind", "same"))
    .option(
      "--remind-day-before <time>",
      "ring on the day before, for example 18:00",
      timeOption("--remind-day-before", "before"),
    )
    .option("--earlier <file>", "the calendar given out before, or its plan: what fell away is cancelled")
    .option("--name <text>", "name of the calendar; keeps the calendars of two households apart", nameOption)
    .option("--made <moment>", "when it is made, UTC (default: now)", momentOption("--made"))
    .addHelpText("after", help)
    .action((words: string[], options: CalendarOptions, command: Command) => {
      outcome.code = runCalendar(door, words, options, command) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

const earlierRemedy = "Give the file that keepwright calendar printed for the plan before, or that plan.";

function readEarlier(
  door: Door,
  context: HandoutContext,
  path: string,
  succession: Succession,
): EarlierCalendar {
  const thing = `earlier calendar ${quoted(path)}`;
  const text = readTextFile(door, path, "earlier calendar");
  const earlier = isPlanText(text) ? ofPlan(context, text, thing, succession) : ofCalendar(text, thing);
  if (earlier.uid === calendarUid(succession)) return earlier;
  throw userError(
    thing,
    `it is of other plans than this one, which began on ${succession.began}`,
    "Give the one this plan follows, with the same --name; or leave --earlier out, and both stand side by side.",
  );
}

function ofPlan(context: HandoutContext, text: string, thing: string, { name }: Succession): EarlierCalendar {
  const { plan, began, lies } = savedPlan(text, thing);
  const succession = { began, name };
  return earlierFromEvents(succession, calendarEvents(context, plan, succession, lies));
}

function ofCalendar(text: string, thing: string): EarlierCalendar {
  try {
    return earlierCalendar(text);
  } catch (error) {
    if (!(error instanceof CalendarError)) throw error;
    throw userError(thing, error.message, earlierRemedy);
  }
}

/** Prints the calendar of a plan. True when some words of the haul were not understood. */
function runCalendar(
  door: Door,
  words: readonly string[],
  options: CalendarOptions,
  command: Command,
): boolean {
  const context = contextFor(options);
  const { plan, began, lies, partly } = planToTake(door, context, words, options, command);
  const succession = { began, name: options.name ?? "" };
  const events = calendarEvents(context, plan, succession, lies);
  const earlier =
    options.earlier === undefined ? undefined : readEarlier(door, context, options.earlier, succession);
  const done = madeMoves(plan, succession, lies);
  if (options.json) {
    door.out(jsonText(writtenCalendar(succession, events, plan.from, earlier, done)));
  } else {
    const reminders = [options.remind, options.remindDayBefore].filter((one) => one !== undefined);
    const making = { made: options.made ?? door.now(), reminders, earlier, madeMoves: done };
    door.out(calendarText(context, succession, events, plan.from, making));
  }
  return partly;
}
