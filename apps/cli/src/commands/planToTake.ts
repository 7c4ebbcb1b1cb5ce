import { catalogue } from "@keepwright/catalogue";
import {
  type CountedLots,
  type HandoutContext,
  type LyingLots,
  lyingLots,
  progressLine,
  readFromLine,
} from "@keepwright/handout";
import { bindProblem, type Haul, haulSchema, type Plan, planFrom, planProblem } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { haulFromArguments, originWords } from "../options/haulArgument.js";
import { type HouseholdOptions, planRequest } from "../options/household.js";
import { userError } from "../userError.js";
import { tellQuestions, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";
import { isObject, planFileRemedy, previousPlanFrom } from "./previousPlan.js";
import { readLots } from "./readLots.js";

/** How a plan is named, for the help of commands that make something of one. */
export const planToTakeHelp = `
HAUL is as for keepwright plan, or a plan itself: the file that keepwright plan --json or keepwright carry-on --json
printed, or "-" with such a plan on standard input. A plan is taken as it is: options of kitchen and household are for hauls.
`;

/** A plan to make something of, with what is known around it. */
export interface PlanToTake {
  readonly plan: Plan;
  /** First day of the first of the plans it was carried on from; its own where it was not. */
  readonly began: CalendarDate;
  readonly counted: CountedLots;
  /** Where lots lay before, of a plan carried on. */
  readonly lies: LyingLots;
  /** Some words of the haul were not understood. */
  readonly partly: boolean;
}

const ofHaul = ["kitchen", "people", "portions", "days", "away", "from", "seed"] as const;

/** Options that a plan from a file would leave unheard are refused, not passed over. */
function refuseUnheard(command: Command): void {
  const given = ofHaul.find((name) => command.getOptionValueSource(name) === "cli");
  if (given === undefined) return;
  throw userError(
    `--${given}`,
    "it is for a haul, and a plan that is made already was given",
    `Leave --${given} out, or give the haul.`,
  );
}

function haulOf(given: unknown): Haul {
  const { success, data } = haulSchema.safeParse(given);
  if (!success) throw userError("plan file", "the haul in it is spoilt", planFileRemedy);
  return data;
}

/** First day of the first plan; older files of a plan carried on tell only how long ago the one before began. */
function beganOf(given: unknown, plan: Plan, haul: Haul): CalendarDate {
  const { began } = haul.standing ?? {};
  const elapsed = isObject(given) && typeof given.elapsed === "number" ? given.elapsed : 0;
  return began ?? addDays(plan.from, -elapsed);
}

/** The plan in a text in JSON. Throws UserError or PlanError naming what is wrong with it. */
export function savedPlan(text: string, thing: string): PlanToTake {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw userError(thing, `not valid JSON (${why})`, planFileRemedy);
  }
  const previous = previousPlanFrom(given, thing);
  const plan = planFrom(previous.plan);
  const haul = haulOf(previous.haul);
  return {
    plan,
    began: beganOf(given, plan, haul),
    counted: new Map(haul.lots.map((lot) => [lot.id, lot])),
    lies: lyingLots(haul.lots),
    partly: false,
  };
}

export const isPlanText = (text: string): boolean => /^\s*\{/.test(text);

/** The plan a command is to make something of: from a file, or made for a haul. Tells on standard error where it was read from. */
export function planToTake(
  door: Door,
  context: HandoutContext,
  words: readonly string[],
  options: HouseholdOptions,
  command: Command,
): PlanToTake {
  const { text, origin } = haulFromArguments(door, words);
  if (isPlanText(text)) {
    refuseUnheard(command);
    door.err(`${readFromLine(context, "plan", origin)}\n`);
    return savedPlan(text, `plan in ${originWords(origin)}`);
  }
  door.err(`${readFromLine(context, "haul", origin)}\n`);
  const read = readLots(context, catalogue(), text, options.from ?? door.today());
  const request = planRequest(door, options, read.lots, kitchenFor(door, options.kitchen));
  const plan = whileTelling(door, progressLine(context, "plan"), () => planProblem(bindProblem(request)));
  tellQuestions(door, context, read, options.json === true);
  const counted = new Map(read.lots.map((lot) => [lot.id, lot]));
  return { plan, began: plan.from, counted, lies: new Map(), partly: read.partly };
}
