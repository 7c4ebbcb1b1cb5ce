import { z } from "zod";

const row = { line: z.int().min(1).describe("Number of the line in the file"), id: z.string() };

/** One object a row, in the order in which rows are done. */
export const batchOutcomeSchema = z.discriminatedUnion("outcome", [
  z.strictObject({
    ...row,
    outcome: z.literal("made"),
    pages: z.int().min(1),
    lots: z.int().min(1).describe("Lots that are planned"),
    questions: z.array(z.string()).describe("What was not understood"),
  }),
  z.strictObject({
    ...row,
    outcome: z
      .literal("kept")
      .describe("Its files were there already, made from the same words and settings"),
    partly: z.boolean().describe("Some of its words had not been understood"),
  }),
  z.strictObject({
    ...row,
    outcome: z.literal("failed"),
    problems: z.array(z.strictObject({ thing: z.string(), value: z.string(), remedy: z.string() })),
  }),
]);
