import { placeKinds, ventSettings } from "@keepwright/planner";
import { z } from "zod";

const lines = z.array(z.string());

const placeSchema = z.strictObject({
  place: z.string(),
  kind: z.enum(placeKinds),
  number: z.int().min(1).describe("Which of its sort it is in the kitchen, from 1"),
  of: z.int().min(1).describe("How many of its sort the kitchen has"),
  name: z.string(),
  temperature: z.string().describe("In words, with its unit"),
  vent: z.strictObject({ setting: z.enum(ventSettings), words: z.string() }).optional(),
  rows: z.array(
    z.strictObject({
      lot: z.string(),
      name: z.string(),
      amount: z.string(),
      wrap: z.string(),
      ready: z.string().optional(),
      until: z.string(),
    }),
  ),
  later: lines,
});

/** What `keepwright sheet --json` prints: the file that was written, and all that stands on the page. */
export const writtenSheetSchema = z.strictObject({
  file: z.string(),
  pages: z.int().min(1),
  textSize: z.number().describe("pt: size of ordinary text"),
  sheet: z.strictObject({
    language: z.string().describe("BCP 47 tag"),
    title: z.string(),
    dates: z.string(),
    headings: z.strictObject({
      throwAway: z.string(),
      eat: z.string(),
      moves: z.string(),
      prepare: z.string(),
      places: z.string(),
      cautions: z.string(),
    }),
    pressing: lines.describe("What must be read before anything is put away"),
    eating: z.strictObject({
      days: z.array(
        z.strictObject({ date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/), words: z.string(), lines }),
      ),
      cutOpen: lines.describe("What is eaten over several days once it is cut, and until when at most"),
      left: lines,
    }),
    moves: z.array(z.strictObject({ when: z.string(), name: z.string(), what: z.string() })),
    tasks: z.array(z.strictObject({ task: z.string(), names: z.string() })),
    places: z.array(placeSchema),
    cautions: lines,
    note: z.string(),
  }),
});
