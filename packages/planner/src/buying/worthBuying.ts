import { z } from "zod";
import { gainSchema, reachSchema } from "../improve/improvement.js";
import { planSchema } from "../problem/plan.js";

const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const grams = z.strictObject({ value: z.number(), unit: z.literal("g") });
const amount = z.strictObject({
  grams: z.number().describe("g"),
  pieces: z.number().int().optional().describe("Where they were counted"),
});

/**
 * Why no more of a thing is worth buying. "no room": with room enough, one unit more would be. "too much for the table": it would keep, but is not eaten in these
 * days, or would be if more were eaten a day. "goes first": it is past its best before it is eaten, whatever the room and the table.
 */
export const cutReasons = ["no room", "too much for the table", "goes first"] as const;
export type CutReason = (typeof cutReasons)[number];

export const thingSchema = z.strictObject({
  id: z.string(),
  commodity: z.string(),
  form: z.enum(["whole", "cut"]),
  tops: z.boolean(),
  wished: amount,
  /** What is worth buying of it: 0 g where nothing is. */
  buy: amount,
  /** The unit it is bought in: whole pieces, a bunch or the like, or a step of weight. */
  unit: amount,
  /** Why no more; absent where all of it is worth buying. */
  cutBecause: z.enum(cutReasons).optional(),
  /** What is expected to become of it, if everything wished is bought and if only what is worth buying is. */
  ifAll: z.strictObject({ eaten: z.number().describe("g"), wasted: z.number().describe("g") }),
  ifBought: z.strictObject({ eaten: z.number().describe("g"), wasted: z.number().describe("g") }),
});
export type Thing = z.infer<typeof thingSchema>;

const fates = z.strictObject({
  eaten: grams.describe("g eaten in these days before it is past its best"),
  wasted: grams.describe("g past its best before it is eaten"),
  left: grams.describe("g left over at the end, still good"),
});

/** How much of a wished list is worth buying, and the plan for that. */
export const worthBuyingSchema = z.strictObject({
  version: z.literal(1),
  from: date,
  days: z.number().int().describe("d until the next shop"),
  kitchen: z.string(),
  household: planSchema.shape.household,
  things: z.array(thingSchema),
  /** Means over the seeds. */
  ifAll: fates,
  ifBought: fates,
  /** Waste avoided by buying less, and what its range is made of. */
  wasteAvoided: gainSchema,
  plannerNoise: z.number().describe("g: how far apart the seeds lie"),
  modelReach: reachSchema,
  rule: z.strictObject({
    wastedAgainstEaten: z.number().describe("1: a gram wasted weighs so many grams eaten"),
    leastShareAdded: z.number().describe("1: a unit has to add this share of its mass"),
    stepGrams: z.number().describe("g"),
    seeds: z.array(z.number()),
  }),
  /** The plan for what is worth buying; null where nothing is. */
  plan: planSchema.nullable(),
  /** Safety cautions that hold for the list in this kitchen, by name, as in a plan. */
  cautions: z.array(z.string()),
});
export type WorthBuying = z.infer<typeof worthBuyingSchema>;
