import {
  type Assumption,
  lotSchema,
  type NotKept,
  notKept,
  type Question,
  type Reading,
} from "@keepwright/planner";
import { z } from "zod";

const assumptions = [
  "usual amount",
  "usual size",
  "usual ripeness",
  "whole",
  "spelling",
  "cut, because half of one",
  "cut today",
  "rounded amount",
  "weight from volume",
] as const satisfies readonly Assumption[];

const amountReasons = [
  "no amount",
  "zero",
  "negative",
  "too large",
  "unknown unit",
  "contradictory",
] as const;

const questionSchema = z.discriminatedUnion("ask", [
  z.strictObject({ ask: z.literal("which commodity"), word: z.string(), candidates: z.array(z.string()) }),
  z.strictObject({
    ask: z.literal("how much"),
    reason: z.enum(amountReasons),
    word: z.string(),
    units: z.array(z.string()).optional(),
  }),
  z.strictObject({
    ask: z.literal("unsafe or other"),
    reason: z.enum(Object.keys(notKept) as [NotKept, ...NotKept[]]),
    word: z.string(),
    candidates: z.array(z.string()),
  }),
  z.strictObject({ ask: z.literal("when wanted"), word: z.string() }),
  z.strictObject({ ask: z.literal("how old"), word: z.string(), since: z.string().optional() }),
  z.strictObject({ ask: z.literal("what is this"), word: z.string() }),
  z.strictObject({ ask: z.literal("too many lots"), word: z.string() }),
]);

const passage = {
  typed: z.string().describe("The words it came from"),
  from: z.int().min(0).describe("Where they begin in the text, in UTF-16 units"),
  to: z.int().min(0),
  questions: z.array(questionSchema),
};
const share = z.number().min(0).max(1);

const understoodSchema = z.strictObject({
  kind: z.literal("lot"),
  ...passage,
  lot: lotSchema.omit({ id: true, carried: true }),
  sure: z.strictObject({ commodity: share, amount: share }),
  assumed: z.array(z.enum(assumptions)),
});

const notUnderstoodSchema = z.strictObject({ kind: z.literal("question"), ...passage });

/** What was understood of a haul as text, and what has to be asked. */
export const readingSchema = z.strictObject({
  items: z.array(z.discriminatedUnion("kind", [understoodSchema, notUnderstoodSchema])),
});

/** Fails to compile when the reader's own types and this schema part ways. */
type Same<One, Other> = [One] extends [Other] ? true : never;
export const questionsAgree: Same<Question["ask"], z.infer<typeof questionSchema>["ask"]> = true;
export const assumptionsAgree: Same<Assumption, (typeof assumptions)[number]> = true;
export const kindsAgree: Same<Reading["items"][number]["kind"], "lot" | "question"> = true;
