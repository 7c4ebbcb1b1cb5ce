import {
  arrangementSchema,
  carriedOnSchema,
  happenedSchema,
  haulSchema,
  improvementsSchema,
  judgementSchema,
  kitchenSchema,
  lotReasonSchema,
  planSchema,
  twoWaysSchema,
  worthBuyingSchema,
} from "@keepwright/planner";
import { z } from "zod";
import { batchRowSchema } from "../batch/row.js";
import { classRequestSchema } from "../class/classRequestSchema.js";
import { batchOutcomeSchema } from "./batchSchema.js";
import { kitChangesSchema, kitDocumentsSchema, kitRecordSchema, writtenClassSchema } from "./classSchemas.js";
import { errorSchema } from "./errorSchema.js";
import { itemSchema } from "./itemSchema.js";
import { keptFileSchema } from "./keptFileSchema.js";
import { readingSchema } from "./readingSchema.js";
import { writtenSheetSchema } from "./sheetSchema.js";
import { calendarSchema, labelsSchema, rowsSchema } from "./takeHomeSchemas.js";

/** What `keepwright plan --json` prints: the plan and, beside it, what was understood of the haul and, where asked, why things lie where they do. */
export const writtenPlanSchema = planSchema.extend({
  reading: readingSchema,
  why: z
    .array(lotReasonSchema)
    .optional()
    .describe("With --why of every part beside its nearest rivals; with --why-lot of one lot beside all"),
});

/** What `keepwright judge --json` prints. */
export const writtenJudgementSchema = judgementSchema.extend({ reading: readingSchema });
/** What `keepwright improve --json` prints: what each change would save and, beside it, what was understood of the haul. */
export const writtenImprovementsSchema = improvementsSchema.extend({ reading: readingSchema });
/** What `keepwright buy --json` prints: what is worth buying and, beside it, what was understood of the list. */
export const writtenWorthBuyingSchema = worthBuyingSchema.extend({ reading: readingSchema });

interface Published {
  readonly title: string;
  readonly schema: z.ZodType;
  /** "input": as a person may write it, with what has a usual value left out. "output": as it is printed. */
  readonly io: "input" | "output";
}

/** The published shapes, by the name of their file in schemas/. */
export const published: Readonly<Record<string, Published>> = {
  plan: { title: "A plan, as keepwright plan --json prints it", schema: writtenPlanSchema, io: "output" },
  improve: {
    title: "What changes would save, as keepwright improve --json prints it",
    schema: writtenImprovementsSchema,
    io: "output",
  },
  buy: {
    title: "What is worth buying, as keepwright buy --json prints it",
    schema: writtenWorthBuyingSchema,
    io: "output",
  },
  "two-ways": {
    title: "One haul laid two ways, evening by evening, as keepwright class writes it",
    schema: twoWaysSchema,
    io: "output",
  },
  kitchen: { title: "A kitchen file", schema: kitchenSchema, io: "input" },
  haul: { title: "A haul as data", schema: haulSchema, io: "input" },
  arrangement: { title: "An arrangement file", schema: arrangementSchema, io: "input" },
  judgement: {
    title: "A judgement, as keepwright judge --json prints it",
    schema: writtenJudgementSchema,
    io: "output",
  },
  happened: {
    title: "An account of what happened since a plan was made",
    schema: happenedSchema,
    io: "input",
  },
  "carry-on": {
    title: "A plan carried on, as keepwright carry-on --json prints it",
    schema: carriedOnSchema,
    io: "output",
  },
  calendar: {
    title: "Days of a plan, as keepwright calendar --json prints them",
    schema: calendarSchema,
    io: "output",
  },
  labels: {
    title: "Labels of a plan, as keepwright labels --json prints them",
    schema: labelsSchema,
    io: "output",
  },
  rows: { title: "Rows of a plan, as keepwright rows --json prints them", schema: rowsSchema, io: "output" },
  sheet: {
    title: "The page for the refrigerator door, as keepwright sheet --json prints it",
    schema: writtenSheetSchema,
    io: "output",
  },
  "kept-file": {
    title: "The file in which the web page takes along what was entered",
    schema: keptFileSchema,
    io: "output",
  },
  "batch-row": { title: "One row of a batch", schema: batchRowSchema, io: "input" },
  "batch-outcome": {
    title: "What became of one row, as keepwright batch --json prints it",
    schema: batchOutcomeSchema,
    io: "output",
  },
  "class-request": { title: "What a class kit is asked to be", schema: classRequestSchema, io: "input" },
  "class-kit": { title: "What went into a class kit: kit.json", schema: kitRecordSchema, io: "output" },
  "class-documents": {
    title: "What the documents of a class kit say: documents.json",
    schema: kitDocumentsSchema,
    io: "output",
  },
  "class-changes": {
    title: "What changed since a class kit was made before: what-changed.json",
    schema: kitChangesSchema,
    io: "output",
  },
  class: {
    title: "A class kit, as keepwright class --json prints it",
    schema: writtenClassSchema,
    io: "output",
  },
  item: { title: "One kind, as keepwright item --json prints it", schema: itemSchema, io: "output" },
  error: { title: "A failure, as every command prints it with --json", schema: errorSchema, io: "output" },
};

/** The text of each schema file: JSON Schema, draft 2020-12. */
export function schemaFiles(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(published).map(([name, { title, schema, io }]) => {
      const json = z.toJSONSchema(schema, { io, target: "draft-2020-12", reused: "inline" });
      return [`${name}.schema.json`, `${JSON.stringify({ ...json, title }, null, 2)}\n`];
    }),
  );
}
