import { z } from "zod";

/** A lower bound on the objective of every plan there is for a haul in a kitchen, beside the objective of one plan. */
export const proofSchema = z.strictObject({
  /** Objective of the plan. */
  value: z.number().describe("g"),
  bound: z.number().describe("g: no plan can have a lower objective"),
  gap: z.number().min(0).max(1).describe("Share of the value by which a better plan could at most be better"),
  /** Relaxations solved for it. */
  relaxations: z.number().int(),
});
export type Proof = z.infer<typeof proofSchema>;
