import { z } from "zod";
import { carriedSchema, standingSchema } from "./carried.js";
import { wantedSchema } from "./wanted.js";

/** How ripe a lot arrives, in the words people use; a number 0…2 where it is known more finely. */
export const ripenessWords = ["unripe", "turning", "ripe", "very ripe"] as const;
export type RipenessWord = (typeof ripenessWords)[number];

/** Ripeness 0…2 for each word. Inferred: the middle of the stage each word names on the model's scale. */
export const ripenessOfWord: Record<RipenessWord, number> = {
  unripe: 0,
  turning: 0.5,
  ripe: 1,
  "very ripe": 1.5,
};

/** An amount of one commodity in one state, as it came home. */
export const lotSchema = z.strictObject({
  id: z.string().min(1).max(80),
  commodity: z.string().min(1),
  grams: z.number().positive().max(200_000),
  /** Pieces, when they were counted. */
  pieces: z.number().int().positive().max(10_000).optional(),
  /** Absent: as the kind usually arrives. */
  ripeness: z.union([z.enum(ripenessWords), z.number().min(0).max(2)]).optional(),
  form: z.enum(["whole", "cut"]).default("whole"),
  /** Leaves left on a root (carrots with tops). */
  tops: z.boolean().default(false),
  /** Bought ready-washed, or washed already. */
  washed: z.boolean().default(false),
  /** Days since it was picked or bought, beyond what is usual on arrival. */
  extraDays: z.number().min(0).max(60).default(0),
  /** The day somebody wants it ready for, if any. */
  wanted: wantedSchema.optional(),
  /** What the person typed for this lot. */
  typed: z.string().max(2000).optional(),
  /** What it brings from an earlier plan that is carried on. */
  carried: carriedSchema.optional(),
});
export type Lot = z.infer<typeof lotSchema>;

export const haulSchema = z.strictObject({
  lots: z.array(lotSchema).min(1).max(60),
  /** How the kitchen stands, where an earlier plan is carried on. */
  standing: standingSchema.optional(),
});
export type Haul = z.infer<typeof haulSchema>;
