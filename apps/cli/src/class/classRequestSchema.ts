import {
  type ClassRequest,
  classRegions,
  classTopics,
  languageNames,
  printSizes,
  unitSystems,
} from "@keepwright/handout";
import { paperSizes } from "@keepwright/paper";
import { z } from "zod";

const audienceSchema = z.strictObject({
  language: z.enum(languageNames).default("en"),
  print: z.enum(printSizes).default("ordinary").describe("Large: 18 pt and more"),
  paper: z.enum(paperSizes).optional().describe("Absent: letter with us units, else a4"),
  units: z.enum(unitSystems).default("metric"),
  region: z
    .string()
    .regex(/^([A-Z]{2}|419)$/, "write an ISO 3166 code such as MX, or 419 for Latin America")
    .optional()
    .describe("Whose names of kinds, dates and numbers; absent: as usual with the units"),
});

const seasonSchema = z.strictObject({
  month: z.int().min(1).max(12),
  region: z.enum(classRegions).default("northern").describe("Half of the earth, for harvest months"),
  kinds: z.int().min(1).max(24).default(8),
});

const householdSchema = z.strictObject({
  haul: z
    .string()
    .min(1)
    .max(20_000)
    .optional()
    .describe("What came home, in words; absent: an invented haul"),
  list: z
    .string()
    .min(1)
    .max(20_000)
    .optional()
    .describe("What they would like to buy, in words, for the exercise; absent: twice the usual amounts"),
  kitchen: z
    .union([z.string().min(1).max(60), z.looseObject({})])
    .default("ordinary")
    .describe("Key of an ordinary kitchen, or a kitchen as in kitchen.schema.json"),
  people: z.int().min(1).max(500).default(4),
  portions: z.number().min(0.5).max(20).default(5).describe("Portions each eats a day"),
  days: z.int().min(1).max(28).default(7),
});

/** What a class kit is asked to be, as a person writes it: most may be left out. */
export const classRequestSchema = z.strictObject({
  version: z.literal(1),
  title: z.string().min(1).max(120).optional(),
  audience: audienceSchema.default({ language: "en", print: "ordinary", units: "metric" }),
  items: z
    .array(z.string().min(1).max(80))
    .min(1)
    .max(24)
    .optional()
    .describe("What the class is about: names of kinds, in English or Spanish"),
  season: seasonSchema
    .optional()
    .describe(
      "In place of items: kinds harvested in a month. Harvest months are common practice, with no source",
    ),
  household: householdSchema.default({ kitchen: "ordinary", people: 4, portions: 5, days: 7 }),
  minutes: z.int().min(10).max(240).default(60),
  topics: z
    .array(z.enum(classTopics))
    .min(1)
    .max(classTopics.length)
    .default([...classTopics]),
  seed: z.int().min(0).max(4294967295).default(1),
});

/** Fails to compile when the schema no longer fits the type it is read into. */
type Read = z.infer<typeof classRequestSchema>;
type Fits = Omit<Read, "audience"> extends Omit<ClassRequest, "audience"> ? true : never;
export const schemaFits: Fits = true;
