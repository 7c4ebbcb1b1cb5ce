import { endings, type StateName, stateNames } from "@keepwright/physics";
import { z } from "zod";
import { ventSettings } from "./kitchen.js";
import { wrapIds } from "./wraps.js";

const place = z.string().min(1).max(80).describe("A place of the kitchen, by its id");

const stateSchema = z.strictObject(
  Object.fromEntries(stateNames.map((name) => [name, z.number().min(0)])) as Record<StateName, z.ZodNumber>,
);

const foreseenStaySchema = z.strictObject({
  moveWhen: z.enum(["ripe", "day"]),
  day: z.number().min(0).optional().describe("d from the first day; with “day” only"),
  place,
  wrap: z.enum(wrapIds),
});

/**
 * What a lot brings from an earlier plan: where it lies, its whole state, and the clocks that run on. Written by carrying a plan on, not by people. Every figure is that of
 * the earlier plan's simulation on the first day of the new one, unless the person said otherwise.
 */
export const carriedSchema = z.strictObject({
  part: z.string().min(1).max(120).describe("The part of the earlier plan that it is, by its id"),
  origin: z.string().min(1).max(120).describe("The lot as it came home: parts of one share its daily limit"),
  portions: z.number().int().min(1).describe("Portions left"),
  splitUnit: z.number().int().min(1).describe("Fewest portions that may lie apart: a piece is not cut"),
  mostADay: z.number().int().min(1).describe("Portions of the whole lot that may be eaten on one day"),
  state: stateSchema.describe("Everything the simulation knows of it, as docs/nomenclature.md names it"),
  daysBefore: z.number().min(0).describe("d from the day its life is counted from to the first day"),
  seenGoodOn: z
    .number()
    .min(0)
    .default(0)
    .describe("d from the day its life is counted from, to when it was last seen to be good; 0: never"),
  ended: z
    .strictObject({ daysBefore: z.number().min(0).describe("d before the first day"), by: z.enum(endings) })
    .optional()
    .describe("The middle of its life is over already"),
  safeTimeUsed: z.number().min(0).describe("Share of the safe time of cut produce that is used up"),
  dry: z.boolean().default(false).describe("It came washed, and has been dried since"),
  place: place.describe("Where it lies"),
  wrap: z.enum(wrapIds),
  foreseen: z.array(foreseenStaySchema).max(8).default([]).describe("Moves the earlier plan had before it"),
});
export type Carried = z.infer<typeof carriedSchema>;

/** What else stands from the earlier plan: its vents, the pace it kept to, and when the first of the plans began. */
export const standingSchema = z.strictObject({
  vents: z.array(z.strictObject({ place, setting: z.enum(ventSettings) })).max(15),
  pace: z.number().int().min(1).describe("Portions a day at the table that it kept to"),
  began: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}$/)
    .optional()
    .describe("First day of the first plan, from which this one was carried on; absent in older files"),
});
export type Standing = z.infer<typeof standingSchema>;
