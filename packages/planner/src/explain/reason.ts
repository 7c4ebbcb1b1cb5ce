import { endings } from "@keepwright/physics";
import { z } from "zod";
import { placeKinds } from "../problem/kitchen.js";
import { objectiveSchema } from "../problem/plan.js";
import { wrapIds } from "../problem/wraps.js";
import { neighbourhoodSchema } from "./neighbourhood.js";

const days = z.strictObject({ value: z.number(), unit: z.literal("d") });
const grams = z.strictObject({ value: z.number(), unit: z.literal("g") });
const lot = z.string().describe("Id of the lot");
const byDay = z.array(z.number());

/** Days until past its best: 10 %, 50 % and 90 % of lots like it. */
const lifeRangeSchema = z.strictObject({
  early: z.number(),
  middle: z.number(),
  late: z.number(),
  unit: z.literal("d"),
});
export type LifeRange = z.infer<typeof lifeRangeSchema>;

const courseSchema = z
  .strictObject({
    ripeness: byDay.describe("0 unripe, 1 ripe, 2 over-ripe; as on arrival in kinds that do not ripen"),
    waterLost: byDay.describe("Share of the mass on arrival"),
    ageing: byDay.describe("Share of the life that ageing alone would leave, used up: 1 has ended it"),
    lifeUsed: byDay.describe("The same for whatever is furthest on; 1 and it is past its best"),
    quality: byDay.describe("0 to 1, of what is not past its best"),
  })
  .describe(
    "What becomes of it day by day: one number for the start of each planned day and one for the end",
  );
/** What becomes of a part from day to day, to be drawn. */
export type Course = z.infer<typeof courseSchema>;

const fateSchema = z.strictObject({
  place: z.string(),
  placeKind: z.enum(placeKinds),
  wrap: z.enum(wrapIds),
  ripensIn: z
    .strictObject({ place: z.string(), wrap: z.enum(wrapIds) })
    .optional()
    .describe("Where it ripens first, when it only comes here once ripe"),
  life: lifeRangeSchema,
  endedBy: z.enum(endings),
  readyOnDay: z
    .number()
    .nullable()
    .describe("d from the first day it is ready to eat; null when it does not get there"),
  course: courseSchema.optional(),
});
/** What a part would come to in one place: simulated with everything else lying where the plan puts it. */
export type Fate = z.infer<typeof fateSchema>;

/** What speaks against another place or wrap, and the little that may speak for it, in the order it is told. */
export const alternativeGrounds = [
  "no room",
  "not ripe",
  "ready later",
  "lasts less",
  "eating spoilt",
  "smell",
  "harms others",
  "lasts longer",
  "more to do",
  "hardly matters",
  "better",
] as const;
export type AlternativeGround = (typeof alternativeGrounds)[number];

const alternativeSchema = fateSchema.extend({
  worseBy: grams.describe(
    "Change of the whole objective if only this part lay so, others and vents as planned and eating days as suits; above 0 it is worse",
  ),
  cost: objectiveSchema.describe("That term by term"),
  grounds: z.array(z.enum(alternativeGrounds)),
  effects: z
    .array(z.string())
    .describe("Effects that spoil eating there and not here, by their names in the catalogue"),
  smellsOf: z.array(lot).describe("Lots whose smell it takes up there and not here"),
  harmed: z
    .array(z.strictObject({ lot, commodity: z.string(), daysLost: days, worseBy: grams }))
    .describe("Other lots that lose by it, the worst first"),
  lostToNeighbours: days.describe("Middle life there with no neighbour, less that with all of them"),
  neighbourhood: neighbourhoodSchema
    .optional()
    .describe("Which neighbours take it; worked out where a lot is asked about by name"),
});
/** Another place or wrap, and what choosing it would change. */
export type Alternative = z.infer<typeof alternativeSchema>;

/** Hard rules that leave a place or a wrap out before anything is simulated. */
export const placingRules = [
  "cut out of refrigerator",
  "cut uncovered",
  "must breathe",
  "keep dry",
  "does not stand in water",
] as const;
const ruledOutSchema = z.strictObject({
  place: z.string().optional(),
  wrap: z.enum(wrapIds).optional(),
  rule: z.enum(placingRules),
  evidence: z
    .strictObject({ source: z.string(), place: z.string(), fromMemory: z.boolean() })
    .optional()
    .describe("Where the rule is from; absent: common practice, no source"),
});
/** A place or a wrap that a rule leaves out. */
export type RuledOut = z.infer<typeof ruledOutSchema>;

/** Why a part lies where it lies, as data; words are made in handout. */
export const lotReasonSchema = z.strictObject({
  part: z.string(),
  lot,
  commodity: z.string(),
  here: fateSchema.extend({ neighbourhood: neighbourhoodSchema }),
  elsewhere: z.array(alternativeSchema).describe("Other places, each at its best there, the least bad first"),
  wraps: z.array(alternativeSchema).describe("Other wraps in the same place, the least bad first"),
  ruledOut: z.array(ruledOutSchema),
});
export type LotReason = z.infer<typeof lotReasonSchema>;
