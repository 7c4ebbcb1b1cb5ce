import { z } from "zod";

const share = z.number().min(0).max(1);

/** A figure over the draws. */
export const drawnFigureSchema = z.strictObject({
  mean: z.number(),
  standardError: z.number().describe("Of the mean, for so many draws"),
  median: z.number(),
  low: z.number().describe("80 % of the draws lie between low and high"),
  high: z.number(),
  unit: z.literal("g"),
});

const drawnLotSchema = z.strictObject({
  /** Id of the part, as in the plan's lots. */
  id: z.string(),
  inTime: share.describe("Share of portions, over all draws, that were good and safe when eaten"),
  claimed: share.describe("The same as the plan's own chances have it"),
  unripe: share.describe("Share of portions, over all draws, that were not yet ripe on their day"),
  waste: drawnFigureSchema,
  occasions: z.array(
    z.strictObject({
      day: z
        .number()
        .int()
        .describe("d from the first day; of what is left over, the day it is taken to be eaten"),
      left: z.boolean().describe("Left over after the planned days"),
      portions: z.number().int(),
      inTime: share,
      claimed: share,
    }),
  ),
});

/** A plan carried out many times over, with temperatures, ages on arrival, biology and late meals drawn. */
export const planDrawsSchema = z.strictObject({
  count: z.number().int().min(1),
  seed: z.number(),
  /** Grams thrown away. */
  waste: drawnFigureSchema,
  /** The same draws with everything unsorted in the refrigerator. */
  unsorted: z.strictObject({
    waste: drawnFigureSchema,
    saved: drawnFigureSchema.describe("Waste unsorted less waste with the plan, draw by draw"),
    planBetter: share.describe("Share of draws in which the plan wastes less"),
    planWorse: share.describe("Share of draws in which the plan wastes more"),
  }),
  lots: z.array(drawnLotSchema),
});
export type PlanDraws = z.infer<typeof planDrawsSchema>;
