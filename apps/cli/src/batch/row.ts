import { unitSystems } from "@keepwright/handout";
import { paperSizes } from "@keepwright/paper";
import { type Finding, schemaFindings, told } from "@keepwright/planner";
import { calendarDate } from "@keepwright/quantities";
import { z } from "zod";
import { askedLanguage } from "../options/language.js";
import { quoted } from "../userError.js";

/** Letters and figures of any script, with dots, dashes and lines between: safe as the name of a file everywhere. */
const safeName = /^[\p{L}\p{N}](?:[\p{L}\p{N}._-]{0,78}[\p{L}\p{N}_-])?$/u;

function isDate(text: string): boolean {
  try {
    calendarDate(text);
    return true;
  } catch {
    return false;
  }
}
const date = z.string().refine(isDate, "Write a day as year-month-day, for example 2026-06-13.");

const languageRemedy = "Use en or es, with a region where its words are wanted: es-MX";

/** One box or household of a batch. All but its haul may be left out: then what the command was given holds. */
export const batchRowSchema = z.strictObject({
  id: z
    .string()
    .regex(safeName, "Use 1 to 80 letters, figures, dots, dashes or underscores: it names the files.")
    .optional()
    .describe("Names the files of this box; absent: row-N, by the number of the line"),
  haul: z.string().min(1).max(20_000).describe("What is in it, in words"),
  kitchen: z
    .union([z.string().min(1).max(60), z.looseObject({})])
    .optional()
    .describe("Key of an ordinary kitchen, or a kitchen as in kitchen.schema.json"),
  people: z.int().min(1).max(500).optional(),
  portions: z.number().min(0.5).max(20).optional(),
  days: z.int().min(1).max(28).optional(),
  away: z.array(date).max(28).optional().describe("Days on which nobody is at home"),
  from: date.optional().describe("First day"),
  seed: z.int().min(0).max(4294967295).optional(),
  units: z.enum(unitSystems).optional(),
  language: z
    .string()
    .regex(/^(?:en|es)(?:-(?:[A-Za-z]{2}|419))?$/, languageRemedy)
    .refine((text) => askedLanguage(text) !== undefined, languageRemedy)
    .optional()
    .describe("en or es, with a region where its words are wanted: es-MX"),
  paper: z.enum(paperSizes).optional(),
  large: z.boolean().optional(),
});
export type BatchRow = z.infer<typeof batchRowSchema>;

export type RowCheck =
  | { readonly ok: true; readonly row: BatchRow; readonly id: string }
  | {
      readonly ok: false;
      readonly problems: readonly Finding[];
      /** Its id, where at least that can be read. */
      readonly id?: string;
    };

const notJson = (text: string, why: string): RowCheck => ({
  ok: false,
  problems: [
    {
      thing: "row",
      value: `${quoted(text)} is not valid JSON (${why})`,
      remedy: 'Write one object a line: {"id": "box-1", "haul": "2 lb apples, a bunch of kale"}.',
      ...told("row not data", { text: quoted(text), why }),
    },
  ],
});

/** Checks one line of a batch. Never throws. */
export function checkRow(text: string, line: number): RowCheck {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch (error) {
    return notJson(text, error instanceof Error ? error.message : String(error));
  }
  const parsed = batchRowSchema.safeParse(given);
  if (!parsed.success) {
    const problems = schemaFindings(given, "row", parsed.error);
    const id = z.object({ id: batchRowSchema.shape.id.unwrap() }).safeParse(given);
    return { ok: false, problems, ...(id.success && { id: id.data.id }) };
  }
  return { ok: true, row: parsed.data, id: parsed.data.id ?? `row-${line}` };
}
