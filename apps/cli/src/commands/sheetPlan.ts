import type { CountedLots, HandoutContext } from "@keepwright/handout";
import { type Lot, type Plan, planHaul, planSchema } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { type HouseholdOptions, planRequest } from "../options/household.js";
import { quoted, userError } from "../userError.js";
import { readHaulArgument, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";
import { previousPlan } from "./previousPlan.js";
import type { ReadLots } from "./readLots.js";

/** The plan a sheet is made of. */
export interface SheetPlan {
  readonly plan: Plan;
  readonly counted: CountedLots;
  /** What was understood of the haul; undefined where the plan was made before. */
  readonly read: ReadLots | undefined;
}

const countedBy = (lots: readonly Lot[]): CountedLots => new Map(lots.map((lot) => [lot.id, lot]));

/** Options that a saved plan has answered already. */
const answered = ["kitchen", "people", "portions", "days", "away", "from", "seed"];

function savedPlan(door: Door, path: string, command: Command): SheetPlan {
  const given = answered.find((name) => command.getOptionValueSource(name) === "cli");
  if (given !== undefined) {
    const remedy = "Leave it out, or give the haul instead of the plan.";
    throw userError(`--${given}`, `the plan ${quoted(path)} has settled that already`, remedy);
  }
  const saved = previousPlan(door, path);
  const parsed = planSchema.safeParse(saved.plan);
  if (!parsed.success) {
    const [first] = parsed.error.issues;
    const where = first ? `${first.path.join(".") || "the plan"}: ${first.message}` : "it is no plan";
    const remedy = "Give the file that keepwright plan --json or keepwright carry-on --json printed.";
    throw userError(`plan file ${quoted(path)}`, where, remedy);
  }
  const { lots = [] } = saved.haul as { lots?: readonly Lot[] };
  return { plan: parsed.data, counted: countedBy(lots), read: undefined };
}

/** The plan of a file whose name ends in .json; else a plan made for the haul. Throws UserError. */
export function sheetPlan(
  door: Door,
  context: HandoutContext,
  words: readonly string[],
  options: HouseholdOptions,
  command: Command,
): SheetPlan {
  const [first = ""] = words;
  if (words.length === 1 && /^\S+\.json$/i.test(first)) return savedPlan(door, first, command);
  const read = readHaulArgument(door, context, words);
  const request = planRequest(door, options, read.lots, kitchenFor(door, options.kitchen));
  const plan = whileTelling(door, "Working out the plan …", () => planHaul(request));
  return { plan, counted: countedBy(read.lots), read };
}
