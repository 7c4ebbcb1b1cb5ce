import { z } from "zod";
import { wantedWords } from "./wanted.js";

/** Why a wish is not met: what the kitchen can do at best, or what weighs more. */
export const reasonsForMissing = [
  /** Nowhere tried would it get ready in time. */
  "ripens too slowly",
  /** It would be ready, but nowhere tried would it still be good. */
  "keeps too short",
  /** It could be, at the cost of room, of other food, or of days somebody is away. */
  "other things weigh more",
] as const;

/** What is wanted of a part of a lot, and what the plan makes of it. */
export const plannedWishSchema = z.strictObject({
  when: z.enum(wantedWords),
  date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
  day: z.number().int().describe("d from the first day"),
  /** Whether its kind ripens further once it has been picked: where it does not, no wish can make it riper. */
  ripens: z.boolean(),
  /** Days until 10 %, 50 % and 90 % of lots like it are ready; 0 where it came so, null where it never is. */
  ready: z
    .strictObject({ early: z.number(), middle: z.number(), late: z.number(), unit: z.literal("d") })
    .nullable(),
  chance: z.number().min(0).max(1).describe("Chance that a portion is as wanted, mean over its portions"),
  met: z
    .boolean()
    .describe(
      "By the middle of when it is ready and of its life, every portion is as wanted when it is eaten",
    ),
  bestReadyOnDay: z
    .number()
    .nullable()
    .describe(
      "d from the first day: earliest day it could be ready, alone in this kitchen or as planned; null: never",
    ),
  why: z.enum(reasonsForMissing).optional().describe("Only where it is not met"),
});
export type PlannedWish = z.infer<typeof plannedWishSchema>;
