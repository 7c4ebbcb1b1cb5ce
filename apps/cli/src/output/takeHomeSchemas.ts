import { type Column, rowTables } from "@keepwright/handout";
import { z } from "zod";

const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const uuid = z.string().regex(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);

/** What `keepwright calendar --json` prints. */
export const calendarSchema = z.strictObject({
  version: z.literal(1),
  uid: uuid.describe("Of the calendar: the same in all plans that follow one another"),
  name: z.string().describe("As given with --name; empty where it was not"),
  began: day.describe("First day of the first of these plans"),
  events: z.array(
    z.strictObject({
      uid: uuid,
      sort: z
        .enum(["eat", "until", "left", "move"])
        .describe("Eating on a day; until when a part keeps; what is left and unsafe; a move"),
      date: day,
      summary: z.string(),
      description: z.string().describe("Lines parted by line breaks"),
    }),
  ),
  cancelled: z.array(uuid).describe("Events of the earlier calendar that fell away; with --earlier only"),
});

const millimetres = z.number().min(0).describe("mm");
const place = {
  page: z.number().int().min(0),
  row: z.number().int().min(0),
  column: z.number().int().min(0),
  x: millimetres,
  y: millimetres,
};

/** What `keepwright labels --json` prints. */
export const labelsSchema = z.strictObject({
  version: z.literal(1),
  units: z.strictObject({ length: z.literal("mm") }),
  sheet: z.strictObject({
    pageWidth: millimetres,
    pageHeight: millimetres,
    columns: z.number().int().min(1),
    rows: z.number().int().min(1),
    labelWidth: millimetres,
    labelHeight: millimetres,
    marginLeft: millimetres,
    marginTop: millimetres,
    gapAcross: millimetres,
    gapDown: millimetres,
  }),
  labels: z.array(
    z.strictObject({
      lot: z.string().describe("Part of the plan, by its id"),
      name: z.string(),
      why: z.enum(["throw away", "at once", "for safety", "quality"]),
      date: day
        .nullable()
        .describe("Day by which it is to be eaten; null: it may not be eaten, throw it away"),
      until: z.string(),
      putAway: z.string(),
      places: z.array(z.string()),
      how: z.string().optional(),
      ...place,
      width: millimetres,
      height: millimetres,
      lines: z.array(
        z.strictObject({
          role: z.enum(["name", "until", "place", "putAway", "how"]),
          text: z.string(),
          x: millimetres,
          y: millimetres.describe("mm, of the baseline"),
          size: millimetres,
          bold: z.boolean(),
          width: millimetres.describe("mm, as measured"),
        }),
      ),
    }),
  ),
});

function cellSchema({ type, unit, words, empty, meaning }: Column): z.ZodType {
  const bare =
    type === "whole number"
      ? z.number().int()
      : type === "number"
        ? z.number()
        : type === "day"
          ? day
          : words
            ? z.enum(words as [string, ...string[]])
            : z.string();
  const described = bare.describe(unit === undefined ? meaning : `${unit}: ${meaning}`);
  return empty === undefined ? described : described.nullable().describe(`${meaning}; null: ${empty}`);
}

const rowSchema = (columns: readonly Column[]) =>
  z.strictObject(Object.fromEntries(columns.map((column) => [column.name, cellSchema(column)])));

/** What `keepwright rows --json` prints; the columns of the CSV are the same. */
export const rowsSchema = z.strictObject({
  version: z.literal(1),
  units: z.record(z.string(), z.string()).describe("Units of the columns that have one"),
  stays: z.array(rowSchema(rowTables.stays)).describe("One row for each part and stay"),
  meals: z.array(rowSchema(rowTables.meals)).describe("One row for each meal of each part"),
});
