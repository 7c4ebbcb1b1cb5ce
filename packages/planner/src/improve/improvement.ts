import { z } from "zod";
import { ventSettings } from "../problem/kitchen.js";
import { lotSchema } from "../problem/lot.js";
import { objectiveSchema } from "../problem/plan.js";

const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const setting = z.enum(ventSettings);
/** A lot, or what is bought of it, as it is spoken of. */
const namedLot = lotSchema
  .pick({ id: true, commodity: true, grams: true, pieces: true, form: true, tops: true })
  .extend({ form: z.enum(["whole", "cut"]), tops: z.boolean() })
  .describe("grams in g");
const celsius = { from: z.number().describe("°C"), to: z.number().describe("°C"), refrigerator: z.string() };

/** One change to a kitchen, a haul or a household, and what it is made to. */
export const changeSchema = z.discriminatedUnion("name", [
  z.strictObject({ name: z.literal("refrigerator colder"), ...celsius }),
  z.strictObject({ name: z.literal("refrigerator warmer"), ...celsius }),
  z.strictObject({ name: z.literal("vent turned"), place: z.string(), from: setting, to: setting }),
  z.strictObject({ name: z.literal("lidded boxes at hand") }),
  z.strictObject({ name: z.literal("paper bags at hand") }),
  z.strictObject({
    name: z.literal("vented drawer more"),
    refrigerator: z.string(),
    litres: z.number().describe("L, taken from the shelves"),
  }),
  z.strictObject({ name: z.literal("bunches topped"), lots: z.array(z.string()) }),
  z.strictObject({
    name: z.literal("portion more a day"),
    from: z.number().describe("portions each person eats a day"),
    to: z.number().describe("portions each person eats a day"),
  }),
  z.strictObject({
    name: z.literal("lot fewer"),
    lot: namedLot,
  }),
  z.strictObject({
    name: z.literal("shopping twice"),
    day: z.number().int().describe("d from the first day: when the rest comes home"),
    lots: z
      .array(namedLot)
      .describe("What comes home on that day, by the id of its lot; all else on the first"),
  }),
]);
export type Change = z.infer<typeof changeSchema>;

export const gainSchema = z.strictObject({
  value: z.number(),
  low: z.number().describe("80 % range: from the planner's own noise and what is not known of the lives"),
  high: z.number(),
  unit: z.literal("g"),
});

export const reachSchema = z.strictObject({
  below: z.number().describe("g below the gain"),
  above: z.number().describe("g above the gain"),
});

export const improvementSchema = z.strictObject({
  change: changeSchema,
  /** Expected waste avoided. */
  gain: gainSchema,
  /** Part of the range that is the planner's own: how far apart its seeds lie. */
  plannerNoise: z.number().describe("g"),
  /** Part of the range that is the model's: for what is not known of the lives of the kinds. */
  modelReach: reachSchema,
  /** What each term of the objective falls by: less than nothing where it grows. */
  saved: objectiveSchema,
  /** Of a lot left unbought: what else is not eaten at its best then. */
  eatenLess: z
    .strictObject({ value: z.number(), unit: z.literal("g") })
    .optional()
    .describe(
      "g eaten before it is past its best that would no longer be; only where a lot is left unbought",
    ),
  /**
   * The gain is at least `rule.leastGain`, and all of its range is above nothing. A lot left unbought has to avoid more waste than it takes off the table too: else it
   * is worth buying, by the same rule as in `worthBuyingSchema`.
   */
  matters: z.boolean(),
  /** Seeds it was planned with; its figures are means over them. */
  seeds: z.array(z.number()),
});
export type Improvement = z.infer<typeof improvementSchema>;

/** What one change at a time would save, each with a plan of its own, the largest gain first. */
export const improvementsSchema = z.strictObject({
  version: z.literal(1),
  from: date,
  days: z.number().int().describe("d planned"),
  kitchen: z.string(),
  household: z.strictObject({
    people: z.number(),
    portionsPerPersonPerDay: z.number(),
    daysAway: z.array(z.number()).describe("d from the first day"),
  }),
  /** Mean over the seeds of the plans with nothing changed, and those plans' terms. */
  expectedWaste: z.strictObject({ value: z.number(), unit: z.literal("g") }),
  objective: objectiveSchema,
  rule: z.strictObject({
    leastGain: z.number().describe("g: less is next to nothing, whatever its range"),
    seeds: z.array(z.number()).describe("Seeds the unchanged plan was made with"),
    plannerNoise: z.number().describe("g: how far apart the waste of those plans lies"),
  }),
  /** Empty where no more than `rule.leastGain` is wasted as it is: no change can save more. */
  changes: z.array(improvementSchema),
  /** Safety cautions that hold for the haul in the kitchen as it is, by name, as in a plan. */
  cautions: z.array(z.string()),
});
export type Improvements = z.infer<typeof improvementsSchema>;
