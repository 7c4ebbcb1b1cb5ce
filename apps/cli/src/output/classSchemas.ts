import {
  type ClassDocument,
  documentSorts,
  type KitChanges,
  type KitRecord,
  languageNames,
  sourceStandings,
} from "@keepwright/handout";
import { z } from "zod";
import { classRequestSchema } from "../class/classRequestSchema.js";

const digest = z
  .string()
  .regex(/^[0-9a-f]{64}$/)
  .describe("SHA-256");
const lines = z.array(z.string());
const named = z.strictObject({ id: z.string(), title: z.string() });

const ofDocument = {
  id: z.string(),
  sort: z.enum(documentSorts),
  reader: z.enum(["group", "host"]),
  title: z.string(),
};

/** `kit.json`: what went into a kit. */
export const kitRecordSchema = z.strictObject({
  version: z.literal(1),
  program: z.string().describe("Version of the program"),
  title: z.string(),
  language: z.enum(languageNames),
  seed: z.int(),
  request: classRequestSchema.describe("What was asked for, with everything that was left out filled in"),
  catalogue: z.strictObject({
    digest: digest.describe("SHA-256 of the whole catalogue"),
    kinds: z.int().min(1),
  }),
  items: z.array(z.strictObject({ id: z.string(), name: z.string(), digest })),
  documents: z.array(
    z.strictObject({
      ...ofDocument,
      file: z.string().regex(/^[a-z0-9-]+\.[a-z]+$/),
      pages: z.int().min(1),
      items: lines.describe("Ids of the kinds it speaks of"),
      sources: z
        .strictObject(
          Object.fromEntries(sourceStandings.map((name) => [name, z.int().min(0)])) as Record<
            (typeof sourceStandings)[number],
            z.ZodInt
          >,
        )
        .describe("How many of its sources were read, recalled, and so on"),
      content: digest.describe("SHA-256 of what it says, as data"),
      fileDigest: digest.describe("SHA-256 of its file"),
    }),
  ),
  otherFiles: z
    .array(z.strictObject({ file: z.string().regex(/^[a-z0-9-]+\.[a-z]+$/), fileDigest: digest }))
    .describe("Slides, and the comparison as data and as text"),
});

const markedLine = z.strictObject({
  text: z.string(),
  passages: z
    .array(z.strictObject({ text: z.string(), language: z.string().describe("BCP 47 tag") }))
    .optional()
    .describe("Passages of the text that are in another language than the document, in their order"),
});
const source = markedLine.extend({ standing: z.enum(sourceStandings) });
const brief = z
  .array(markedLine)
  .optional()
  .describe("What stands on the page instead, where the host's paper has all sources");
const face = z.strictObject({ title: z.string(), lines });

const blockSchema = z.discriminatedUnion("block", [
  z.strictObject({ block: z.literal("heading"), text: z.string() }),
  z.strictObject({ block: z.literal("text"), text: z.string() }),
  z.strictObject({ block: z.literal("list"), mark: z.enum(["dot", "tick", "number"]), items: lines }),
  z.strictObject({
    block: z.literal("pairs"),
    rows: z.array(z.strictObject({ name: z.string(), text: z.string() })),
  }),
  z.strictObject({ block: z.literal("table"), head: lines, rows: z.array(lines) }),
  z.strictObject({ block: z.literal("caution"), lines }),
  z.strictObject({
    block: z.literal("cards"),
    cards: z.array(z.strictObject({ front: face, back: face })),
  }),
  z.strictObject({
    block: z.literal("choice"),
    number: z.int().min(1),
    question: z.string(),
    choices: lines,
    answer: z.int().min(0).optional().describe("Place of the right choice, counted from 0"),
    right: z.string().optional().describe("The right choice with its letter, told as such"),
    why: z.string().optional(),
  }),
  z.strictObject({ block: z.literal("sources"), sources: z.array(source), brief }),
  z.strictObject({ block: z.literal("writing"), lines: z.int().min(1).describe("Empty lines") }),
  z.strictObject({ block: z.literal("page") }),
]);

/** `documents.json`: what the documents of a kit say. */
export const kitDocumentsSchema = z.strictObject({
  version: z.literal(1),
  documents: z.array(
    z.strictObject({
      ...ofDocument,
      subtitle: z.string().optional(),
      blocks: z.array(blockSchema),
      sources: z.array(source).describe("Where all that it says comes from"),
      brief,
      items: lines,
    }),
  ),
});

/** `what-changed.json`: a kit beside the one made before it. */
export const kitChangesSchema = z.strictObject({
  version: z.literal(1),
  same: z.boolean(),
  program: z.strictObject({ before: z.string(), after: z.string() }).optional(),
  catalogueChanged: z.boolean(),
  request: z.array(
    z.strictObject({
      field: z.string(),
      before: z.string().optional().describe("As JSON; absent: it was not there"),
      after: z.string().optional(),
    }),
  ),
  items: z.strictObject({ added: lines, removed: lines, changed: lines }),
  documents: z.strictObject({
    added: z.array(named),
    removed: z.array(named),
    changed: z.array(named.extend({ items: lines, removed: lines, added: lines })),
  }),
});

/** What `keepwright class --json` prints. */
export const writtenClassSchema = z.strictObject({
  folder: z.string(),
  kit: kitRecordSchema,
  changes: kitChangesSchema.optional().describe("Where a kit lay there before"),
});

/** Fails to compile when a schema no longer fits the type of what is written. */
type Fits<One, Other> = One extends Other ? true : never;
export const schemasFit: [
  Fits<Omit<z.infer<typeof kitRecordSchema>, "request">, Omit<KitRecord, "request">>,
  Fits<z.infer<typeof kitChangesSchema>, KitChanges>,
  Fits<z.infer<typeof kitDocumentsSchema>["documents"][number], ClassDocument>,
] = [true, true, true];
