import { classTopics } from "@keepwright/handout";
import {
  airSigns,
  coldSigns,
  cupboardSorts,
  drawerSorts,
  kitchenSchema,
  mostDrawers,
  refrigeratorSizes,
  roomSigns,
  ventSettings,
  wrapIds,
} from "@keepwright/planner";
import { z } from "zod";

/*
 * The file in which the web page takes everything that was entered along. It is described here with the other files that are read and written;
 * the page itself checks by hand what it opens, and a test holds what it writes against this schema.
 */

const reading = z.strictObject({ typed: z.string(), unit: z.enum(["°C", "°F"]) });

const answersSchema = z
  .strictObject({
    refrigerator: z.enum(refrigeratorSizes),
    litres: z.string(),
    drawers: z.array(z.enum(drawerSorts)).max(mostDrawers),
    door: z.boolean(),
    cold: z.enum(coldSigns),
    coldReading: reading,
    room: z.enum(roomSigns),
    roomReading: reading,
    air: z.enum(airSigns),
    airReading: z.string(),
    cupboard: z.enum(cupboardSorts),
    cellar: z.boolean(),
    cellarReading: reading,
    balcony: z.boolean(),
    balconyReading: reading,
    wraps: kitchenSchema.shape.wraps,
  })
  .partial()
  .describe("What was said of the kitchen when it was described by answering questions");

const correctionSchema = z
  .strictObject({
    commodity: z.string().describe("Key of a kind in the catalogue"),
    amount: z.strictObject({
      value: z.number().positive().max(200_000),
      unit: z.string().min(1).max(40).describe("g, kg, oz, lb, or a household unit of the kind"),
    }),
    ripeness: z.enum(["unripe", "turning", "ripe", "very ripe"]),
    form: z.enum(["whole", "cut"]),
    tops: z.boolean(),
    washed: z.boolean(),
    extraDays: z.number().min(0).max(60).describe("Days since it was bought or picked"),
    leftOut: z.boolean(),
  })
  .partial();

const units = z.enum(["metric", "us"]);
const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const byLine =
  "By the words of a line of the haul in small letters, # and its number among lines of the same words";

const lyingSchema = z.record(
  z.string(),
  z.union([z.literal("as planned"), z.strictObject({ place: z.string().min(1), wrap: z.enum(wrapIds) })]),
);

const enteredSchema = z.strictObject({
  version: z.literal(5),
  text: z.string().describe("The haul as it was typed"),
  corrections: z.record(z.string(), correctionSchema).describe(byLine),
  meant: z
    .record(z.string(), z.string())
    .optional()
    .describe(
      "What words that had to be asked about mean in every list: by the word in small letters and without accents, the key of a kind, or “left out”. Absent in older files",
    ),
  kitchen: z.string().describe("Key of an ordinary kitchen, or of one of kitchens"),
  kitchens: z
    .array(z.strictObject({ key: z.string(), kitchen: kitchenSchema, answers: answersSchema.optional() }))
    .max(100),
  people: z.int().min(1).max(12),
  days: z.int().min(3).max(21).describe("Days to plan for"),
  portions: z.int().min(1).max(10).describe("Portions of fruit and vegetables a person eats a day"),
  away: z.array(date).describe("Days on which nobody eats at home"),
  units: z.strictObject({
    temperature: units.describe("metric: °C; us: °F"),
    mass: units.describe("metric: g, kg, L; us: oz, lb, qt"),
  }),
  language: z.enum(["device", "en", "es"]),
  region: z
    .enum([
      "device",
      "GB",
      "US",
      "CA",
      "AU",
      "IE",
      "NZ",
      "ZA",
      "IN",
      "419",
      "MX",
      "ES",
      "AR",
      "CL",
      "CO",
      "PE",
    ])
    .describe("Whose dates and numbers: ISO 3166, or 419 for Latin America"),
  done: z.array(z.string()).describe("Keys of tasks that are ticked off"),
  lying: lyingSchema.describe(`Where things lie as the person has it. ${byLine}`),
  chosen: lyingSchema
    .optional()
    .describe(`Where the person put things other than the plan would. ${byLine} Absent in older files`),
  from: z
    .union([z.literal("today"), date])
    .optional()
    .describe("The day the list came home; “today” where that is whatever day it is. Absent in older files"),
  before: z
    .array(z.strictObject({ day: date, text: z.string() }))
    .optional()
    .describe("The list as it stood until each later day on which it was changed. Absent in older files"),
  missed: z
    .array(z.string())
    .optional()
    .describe("Keys of meals and moves of passed days that were not done. Absent in older files"),
  classForm: z
    .strictObject({
      about: z.enum(["list", "season"]),
      kinds: z.string().max(10_000).describe("Names of kinds, one a line"),
      month: z.int().min(1).max(12),
      region: z.enum(["northern", "southern"]),
      count: z.int().min(1).max(24).describe("How many kinds of the season"),
      minutes: z.int().min(10).max(240),
      topics: z.array(z.enum(classTopics)),
      large: z.boolean(),
    })
    .partial()
    .optional()
    .describe("What was said of a class beside what is usual. Absent in older files"),
  vents: z
    .record(z.string(), z.enum(ventSettings))
    .describe("How vents stand as the person has it, by place"),
});

/** Everything a person entered in the web page. */
export const keptFileSchema = z.strictObject({
  format: z.literal("keepwright-kept"),
  version: z.literal(1),
  written: z.iso.datetime().describe("When it was written"),
  entered: enteredSchema,
});
