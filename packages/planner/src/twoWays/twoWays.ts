import { endings } from "@keepwright/physics";
import { z } from "zod";
import { planSchema } from "../problem/plan.js";
import { unsortedHabits } from "../search/unsorted.js";

const grams = z.number().describe("g");
const range = z
  .strictObject({ low: grams, high: grams })
  .describe("80 % of the draws lie between these two; absent where nothing was drawn")
  .optional();

/** How what is still to be eaten of a lot is, from worst to best; or that nothing is. */
export const lyingStates = ["past its best", "going", "good", "not ripe", "eaten"] as const;
export type LyingState = (typeof lyingStates)[number];

const lotDaySchema = z.strictObject({
  lot: z.string().describe("Id of the lot"),
  state: z
    .enum(lyingStates)
    .describe(
      "Of what is still to be eaten by plan. Past its best: the chance is 50 % or more; going: 10 % or more. Once all of it had its planned day: eaten, or past its best where more was thrown away",
    ),
  endedBy: z.enum(endings).optional().describe("What ends it, where it is going or past its best"),
  places: z.array(z.string()).describe("Where what is still to be eaten by plan lies in the evening"),
  eaten: grams,
  lost: grams.describe(
    "g expected to be past their best, lying or when they were to be eaten, on time or late",
  ),
  left: grams.describe("g that lie there and are expected to be good"),
});
export type LotDay = z.infer<typeof lotDaySchema>;

const sideDaySchema = z.strictObject({
  eaten: grams,
  lost: grams,
  left: grams,
  eatenRange: range,
  lostRange: range,
  leftRange: range,
  lots: z.array(lotDaySchema),
});
export type SideDay = z.infer<typeof sideDaySchema>;

/** What becomes of one haul laid two ways, evening by evening. In each, eaten + lost + left is what came home. */
export const twoWaysSchema = z.strictObject({
  version: z.literal(1),
  /** What nobody sorts by, or that a person said how things lie. */
  rule: z.enum([...unsortedHabits, "as told"]),
  brought: z.strictObject({ value: z.number(), unit: z.literal("g") }).describe("What came home"),
  /** Written out as if it were a plan: the same simulation, and eating days chosen as well as can be. */
  unsorted: planSchema.omit({ draws: true }),
  planned: planSchema.omit({ draws: true }),
  draws: z.strictObject({ count: z.int(), seed: z.number() }).optional(),
  evenings: z.array(
    z.strictObject({
      day: z.int().describe("d from the first day"),
      date: z.string(),
      after: z.boolean().describe("After the planned days: when what is left over is taken to be eaten"),
      unsorted: sideDaySchema,
      planned: sideDaySchema,
    }),
  ),
});
export type TwoWays = z.infer<typeof twoWaysSchema>;
