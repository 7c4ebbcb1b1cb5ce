import {
  carriedOnSchema,
  type Kitchen,
  type Lot,
  ordinaryKitchens,
  planSchema,
  type Reading,
} from "@keepwright/planner";
import type { Door } from "../door/door.js";
import { readJsonFile } from "../door/readText.js";
import { readingSchema } from "../output/readingSchema.js";
import { quoted, userError } from "../userError.js";
import { kitchenFor } from "./kitchenFor.js";
import { lotsOf } from "./readLots.js";

/** A plan from a file, with the haul it was made for; neither is checked yet. */
export interface PreviousPlan {
  readonly plan: unknown;
  readonly haul: unknown;
}

export const planFileRemedy =
  "Give the file that keepwright plan --json or keepwright carry-on --json printed.";

export const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The plan in a file that `plan --json` or `carry-on --json` printed. Throws UserError when it is neither. */
export function previousPlan(door: Door, path: string): PreviousPlan {
  return previousPlanFrom(readJsonFile(door, path, "plan file", planFileRemedy), `plan file ${quoted(path)}`);
}

/** The plan in what such a file holds. Throws UserError naming the thing when there is none. */
export function previousPlanFrom(given: unknown, thing: string): PreviousPlan {
  if (!isObject(given)) throw userError(thing, "it holds no plan", planFileRemedy);
  if (isObject(given.plan) && isObject(given.haul) && "changes" in given) {
    const { plan, haul } = carriedOnSchema.pick({ plan: true, haul: true }).safeParse(given).data ?? given;
    return { plan, haul };
  }
  const { reading, why: _, ...plan } = given;
  const read = readingSchema.safeParse(reading);
  if (!read.success) {
    const value = reading === undefined ? "the haul it was made for is not in it" : "its reading is spoilt";
    throw userError(thing, value, planFileRemedy);
  }
  const lots: Lot[] = lotsOf(read.data as Reading);
  return { plan: planSchema.safeParse(plan).data ?? plan, haul: { lots } };
}

/** The kitchen a plan was made for: the one asked for, else the ordinary one of the name in the plan. Throws UserError when there is none. */
export function kitchenOfPlan(door: Door, asked: string | undefined, plan: unknown): Kitchen {
  if (asked !== undefined) return kitchenFor(door, asked);
  const name = isObject(plan) && typeof plan.kitchen === "string" ? plan.kitchen : "";
  const ordinary = Object.values(ordinaryKitchens).find((kitchen) => kitchen.name === name);
  if (ordinary) return ordinary;
  throw userError(
    "kitchen",
    `the plan was made for ${quoted(name)}, which is no ordinary kitchen`,
    "Give its file: --kitchen my-kitchen.json.",
  );
}
