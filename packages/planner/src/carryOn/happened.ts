import { z } from "zod";
import { doneFirst } from "../arrangement/arrangement.js";
import { ventSettings } from "../problem/kitchen.js";
import { lotSchema, ripenessWords } from "../problem/lot.js";
import { wrapIds } from "../problem/wraps.js";

const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const place = z.string().min(1).max(80).describe("A place of the kitchen, by its id or its name");

const amountSchema = z.union([
  z.enum(["all", "none"]),
  z.strictObject({
    pieces: z.number().positive().max(10_000),
    grams: z.number().positive().optional().describe("What they weigh, where they were not counted at first"),
  }),
  z.strictObject({ portions: z.number().positive().max(10_000) }),
  z.strictObject({ grams: z.number().positive().max(200_000) }),
  z.strictObject({ share: z.number().min(0).max(1).describe("Of the lot as the plan had it") }),
]);
export type HappenedAmount = z.infer<typeof amountSchema>;

/** It was cut, and nobody says on which day. */
export const cutUndated = "day not told";

const happenedLotSchema = z.strictObject({
  lot: z.string().min(1).max(2000).describe("A lot by its id, by what was typed for it, or by its kind"),
  eaten: amountSchema
    .optional()
    .describe("All of it that was eaten since the plan began; left out: what the plan said"),
  thrownOut: amountSchema.optional(),
  givenAway: amountSchema.optional(),
  frozen: amountSchema
    .optional()
    .describe("Put into the freezer: it is neither eaten nor wasted, and no longer planned"),
  left: amountSchema.optional().describe("What is left, where that is known better; the rest was eaten"),
  ripeness: z
    .union([z.enum(ripenessWords), z.number().min(0).max(2)])
    .optional()
    .describe("As it is seen to be"),
  seenGood: z.boolean().optional().describe("Looked at, and still good"),
  cut: z
    .union([date, z.literal(cutUndated)])
    .optional()
    .describe("The day it was cut; where it is not told, it is taken as cut on the plan's first day"),
  place: place.optional().describe("Where it lies now, where that is not where the plan had it"),
  wrap: z.enum(wrapIds).optional().describe("What is around it now; as it was when left out"),
  since: date.optional().describe("Since when it lies so; when left out: never moved, or today"),
  done: z.array(z.enum(doneFirst)).max(doneFirst.length).default([]).describe("What was done to it since"),
  hoursOut: z.number().min(0).max(240).optional().describe("h out of the refrigerator, besides"),
});
export type HappenedLot = z.infer<typeof happenedLotSchema>;

/**
 * What happened since a plan was made, as a person writes it. What is not mentioned went as the plan said: its meals were eaten, its moves were made.
 */
export const happenedSchema = z.strictObject({
  version: z.literal(1),
  followed: z
    .boolean()
    .default(true)
    .describe("Meals the plan had before today were eaten where nothing is said; false: none was"),
  lots: z.array(happenedLotSchema).max(180).default([]),
  cameHome: z
    .array(
      lotSchema.omit({ id: true, carried: true }).extend({
        extraDays: lotSchema.shape.extraDays
          .unwrap()
          .optional()
          .describe("d since it was picked or bought, or cut; of what is cut it has to be told, 0 for today"),
        meant: z
          .strictObject({ word: z.string().min(1).max(2000), kinds: z.array(z.string()).max(60) })
          .optional()
          .describe("A word for several kinds that was taken for this one, and which kinds it may mean"),
      }),
    )
    .max(60)
    .default([]),
  vents: z
    .array(z.strictObject({ place, setting: z.enum(ventSettings) }))
    .max(15)
    .default([]),
});
export type Happened = z.infer<typeof happenedSchema>;
