import { z } from "zod";
import { ventSettings } from "../problem/kitchen.js";
import { wrapIds } from "../problem/wraps.js";

/** What may have been done to a lot before it was put away, by the catalogue's names. */
export const doneFirst = ["twist off leaves", "dry well"] as const;

const place = z.string().min(1).max(80).describe("A place of the kitchen, by its id or its name");
const wrap = z.enum(wrapIds).default("none");

const laterStaySchema = z.strictObject({
  moveWhen: z.enum(["ripe", "day"]),
  day: z.number().int().min(1).max(27).optional().describe("d from the first day; with “day” only"),
  place,
  wrap,
});

const placedLotSchema = z.strictObject({
  lot: z.string().min(1).max(2000).describe("A lot by its id, by what was typed for it, or by its kind"),
  place,
  wrap,
  share: z
    .number()
    .positive()
    .max(1)
    .optional()
    .describe("Share of the lot that lies so, 0 to 1; all of it when left out"),
  done: z.array(z.enum(doneFirst)).max(doneFirst.length).default([]).describe("What was done to it first"),
  later: laterStaySchema.optional().describe("Where it goes later"),
});
export type PlacedLot = z.infer<typeof placedLotSchema>;

/**
 * How things lie in a kitchen now, as a person writes it. It may be partial: what it does not mention is free. Days, shares and names as
 * described beside each field.
 */
export const arrangementSchema = z.strictObject({
  version: z.literal(1),
  lots: z.array(placedLotSchema).max(180).default([]),
  vents: z
    .array(z.strictObject({ place, setting: z.enum(ventSettings) }))
    .max(15)
    .default([]),
});
export type Arrangement = z.infer<typeof arrangementSchema>;
