import { evidenceKinds, guidanceSchema, guidanceWordsSchema } from "@keepwright/catalogue";
import { figureNames, type ItemAnswer } from "@keepwright/handout";
import { endings } from "@keepwright/physics";
import { placeKinds, ventSettings, wrapIds } from "@keepwright/planner";
import { z } from "zod";

const amount = <Unit extends string>(unit: Unit) => ({ value: z.number(), unit: z.literal(unit) });
const range = <Unit extends string>(unit: Unit) =>
  z.strictObject({ low: z.number(), high: z.number(), unit: z.literal(unit) });
const share = z.number().min(0).max(1);

const lifeSchema = z.strictObject({
  early: z.number().min(0).describe("Days by which 10 % of lots like it are past their best"),
  middle: z.number().min(0).describe("The same for 50 %"),
  late: z.number().min(0).describe("The same for 90 %"),
  unit: z.literal("d"),
  endedBy: z.enum(endings),
});

const placeSchema = z.strictObject({
  stays: z
    .array(
      z.strictObject({
        place: z.string(),
        placeKind: z.enum(placeKinds),
        name: z.string(),
        wrap: z.enum(wrapIds).describe("The best wrap there of those at hand; “none” is loose"),
        moveWhen: z.enum(["ripe", "day"]).optional(),
      }),
    )
    .min(1),
  vents: z.array(z.strictObject({ place: z.string(), setting: z.enum(ventSettings) })),
  life: lifeSchema,
  readyOnDay: z
    .number()
    .int()
    .nullable()
    .describe("First day it is ready to eat, 0 the day it comes home; null: it never gets ripe there"),
  effects: z.array(z.string()).describe("Effects that spoil eating there, such as “flavour loss”"),
});

const sourceSchema = z.strictObject({
  figure: z.enum(figureNames),
  source: z.string(),
  citation: z.string(),
  place: z.string(),
  kind: z.enum(evidenceKinds),
  fromMemory: z.boolean().describe("True when recalled from the publication and not checked in it"),
});

/** What `keepwright item --json` prints. */
export const itemSchema = z.strictObject({
  version: z.literal(1),
  commodity: z.string(),
  names: z.strictObject({ one: z.string(), many: z.string(), also: z.array(z.string()) }),
  climacteric: z.boolean(),
  conditions: z.strictObject({
    temperature: z.strictObject(amount("°C")),
    relativeHumidity: z.strictObject(amount("%")),
    ethylene: z.strictObject(amount("µL/L")),
    ripeness: z.strictObject(amount("0 unripe, 1 ripe, 2 over-ripe")),
  }),
  recommended: z.strictObject({ temperature: range("°C"), relativeHumidity: range("%"), life: range("d") }),
  respiration: z.strictObject({ ...amount("mg CO2/(kg h)"), fromMemory: z.boolean() }),
  ethyleneProduction: z.strictObject({
    ...amount("µL/(kg h)"),
    unripe: z.number(),
    ripe: z.number(),
    fromMemory: z.boolean(),
  }),
  life: lifeSchema,
  shares: z.array(z.strictObject({ ending: z.enum(endings), share })),
  belongs: placeSchema.describe("Where the kind, alone in the kitchen, can be eaten longest and best"),
  kitchen: z.string(),
  places: z
    .array(placeSchema)
    .describe(
      "One place of each kind, wrapped as well as can be there; where it gets ripe first, then the longest life first",
    ),
  preparation: z
    .array(z.string())
    .describe("What to do first, by name, as far as it agrees with how it is kept where it belongs"),
  cautions: z.array(z.string()).describe("Safety cautions for the kind, whole and once it is cut, by name"),
  sources: z.array(sourceSchema),
  guidance: guidanceSchema
    .omit({ words: true })
    .extend({ words: guidanceWordsSchema })
    .optional()
    .describe("Signs, saving, wraps that suit and season, in English, with where their facts come from"),
});

/** Fails to compile when the schema no longer fits the answer's own type. */
type Fits = z.infer<typeof itemSchema> extends ItemAnswer ? true : never;
export const schemaFits: Fits = true;
