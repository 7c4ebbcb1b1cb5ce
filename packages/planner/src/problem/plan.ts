import { endings } from "@keepwright/physics";
import { z } from "zod";
import { proofSchema } from "../proof/proof.js";
import { placeKinds, ventSettings } from "./kitchen.js";
import { planDrawsSchema } from "./planDraws.js";
import { plannedWishSchema } from "./plannedWish.js";
import { wrapIds } from "./wraps.js";

const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const grams = z.strictObject({ value: z.number(), unit: z.literal("g") });
const days = z.strictObject({
  early: z.number().describe("d: 10 % of lots like it are past their best by then"),
  middle: z.number().describe("d: the same for 50 %"),
  late: z.number().describe("d: the same for 90 %"),
  unit: z.literal("d"),
});

/** Units of the figures that stand bare in a plan, by the names of their fields. Shares, chances and quality are 0…1. */
export const planUnits = {
  days: "d",
  day: "d from the first day",
  fromDay: "d from the first day",
  toDay: "d from the first day",
  readyOnDay: "d from the first day",
  bestReadyOnDay: "d from the first day",
  daysAway: "d from the first day",
  grams: "g",
  litres: "L",
  litresTaken: "L",
  temperature: "°C",
  relativeHumidity: "%",
  ethylene: "µL/L",
  objective: "g",
  ripeness: "0 unripe, 1 ripe, 2 over-ripe",
  chancePastBest: "1",
  quality: "1",
  chance: "1",
} as const;
const unitsSchema = z
  .strictObject(
    Object.fromEntries(Object.entries(planUnits).map(([name, unit]) => [name, z.literal(unit)])) as {
      [name in keyof typeof planUnits]: z.ZodLiteral<(typeof planUnits)[name]>;
    },
  )
  .describe("Units of the figures that stand bare, by the names of their fields");

const air = {
  temperature: z.number().describe("°C"),
  relativeHumidity: z.number().describe("%, 0 to 100"),
  ethylene: z.number().describe("µL/L"),
};
/**
 * A part of a lot in one place, one wrap, for a time. The last stay has no `toDay`, since nothing moves it; its `to` is the day after its last
 * meal or, where some is left over, the day after the last planned one.
 */
export const plannedStaySchema = z.strictObject({
  place: z.string(),
  placeKind: z.enum(placeKinds),
  wrap: z.enum(wrapIds),
  from: date,
  to: date
    .optional()
    .describe(
      "The day it moves on, when ripe the first whole day it is; of the last stay, the day after its last meal or, with some left over, after the last planned day",
    ),
  fromDay: z.number().describe("d from the first day, to a tenth; never rounded onto or past a whole day"),
  toDay: z.number().optional().describe("d from the first day, as fromDay; absent for the last stay"),
  /** Why it moves on at the end of this stay. */
  moveWhen: z.enum(["ripe", "day"]).optional(),
});

export const plannedLotSchema = z.strictObject({
  /** Id of this part; the lot's own id, with "/2", "/3" for further parts of a split lot. */
  id: z.string(),
  lot: z.string(),
  apart: z
    .strictObject({
      word: z
        .string()
        .max(80)
        .optional()
        .describe("What the person calls it, where that says more than its kind"),
      since: date.describe("The day it came home, was bought, picked or cut: its days are counted from then"),
      origin: z.string().describe("The lot as it came home: parts of one lot have the same"),
    })
    .optional()
    .describe("By what it is told apart from other lots of its kind; absent where there are none"),
  commodity: z.string(),
  grams: z.number().describe("g, as bought"),
  litres: z.number().describe("L it takes where it lies at the start, wrap included"),
  ripeness: z.number().describe("0 unripe, 1 ripe, 2 over-ripe"),
  form: z.enum(["whole", "cut"]),
  tops: z.boolean(),
  washed: z.boolean(),
  /** Things to do before it is put away, by name (see the catalogue). */
  preparation: z.array(z.string()),
  stays: z.array(plannedStaySchema).min(1),
  /** Days from the first day until it is past its best or no longer safe: 10 %, 50 % and 90 % of lots like it. */
  life: days,
  /** The life by quality alone, given where the safe time ends it sooner: what the chances and the objective are made from. */
  lifeBeforeSafety: days.optional().describe("The life by quality alone, where the safe time cuts it short"),
  wholeLife: days
    .optional()
    .describe(
      "Of a lot carried over from an earlier plan: its life counted from when it came home (see daysBefore of the lot): what the chances are made from",
    ),
  safeUntil: z
    .union([date, z.literal("past")])
    .optional()
    .describe(
      "Last day it may be eaten, for food safety; “past”: used up already, throw it away; absent: no limit",
    ),
  endedBy: z.enum(endings),
  /** First day it is ready to eat (0 = first day); null when it will not get there. */
  readyOnDay: z.number().nullable().describe("d from the first day; null: it does not get ready"),
  eatOn: z.array(
    z.strictObject({
      date,
      day: z.number().int().describe("d from the first day"),
      portions: z.number().int(),
      grams: z.number().describe("g"),
      /** Chance of being past its best by that day, and quality 0…1 otherwise. */
      chancePastBest: z.number().min(0).max(1).optional(),
      quality: z.number().min(0).max(1).optional(),
    }),
  ),
  /** Whole pieces that are begun and not eaten up on the same day: what is left of each is cut from then on. */
  cutOpen: z
    .array(
      z.strictObject({
        date: date.describe("The day of its first portion"),
        safeUntil: date
          .optional()
          .describe("Last day what is left of it may be eaten, for food safety; absent: no limit"),
        portionsAfter: z
          .number()
          .int()
          .describe(
            "Portions of it left over, which are not safe after that: to be frozen or given away before; none of them is planned as a meal",
          ),
      }),
    )
    .optional(),
  /** Portions left at the end of the planned days. */
  leftPortions: z.number().int(),
  /** Edible grams expected to be past their best before they are eaten. */
  expectedWaste: grams,
  /** Conditions where it lies longest, from the simulation. */
  conditions: z.strictObject(air),
  /** Longest middle life this lot alone could have among the programmes tried in this kitchen. */
  bestLife: z.strictObject({ value: z.number(), unit: z.literal("d") }).optional(),
  /** The day it is wanted for, and what becomes of that; absent where there is no wish. */
  wish: plannedWishSchema.optional(),
  /** Chance of being past its best, and quality 0…1 otherwise, when what is left over is taken to be eaten. */
  ifLeft: z.strictObject({ chancePastBest: z.number(), quality: z.number() }).optional(),
});
export type PlannedLot = z.infer<typeof plannedLotSchema>;

/** Each term of the objective in edible gram equivalents: see docs/decisions on the weights. */
export const objectiveSchema = z.strictObject({
  waste: z.number().describe("g"),
  qualityLost: z.number().describe("g"),
  lifeLost: z.number().describe("g"),
  effort: z.number().describe("g"),
  overflow: z
    .number()
    .describe("g for litres over a place's room, weighted so that it is never chosen where anything fits"),
  /** Plans made before there were wishes have none. */
  wishesMissed: z
    .number()
    .default(0)
    .describe("g for portions that are not as wanted on the day they are wanted for"),
  total: z.number().describe("g: the sum of the others"),
});
export type Objective = z.infer<typeof objectiveSchema>;

export const planSchema = z.strictObject({
  version: z.literal(1),
  units: unitsSchema,
  seed: z.number(),
  from: date,
  days: z.number().int().describe("d planned"),
  kitchen: z.string(),
  household: z.strictObject({
    people: z.number(),
    portionsPerPersonPerDay: z.number(),
    daysAway: z.array(z.number()),
  }),
  vents: z.array(z.strictObject({ place: z.string(), setting: z.enum(ventSettings) })),
  places: z.array(
    z.strictObject({
      place: z.string(),
      name: z.string(),
      placeKind: z.enum(placeKinds),
      litres: z.number().describe("L"),
      litresTaken: z.number().describe("L: most taken on any day"),
      /** Humidity and ethylene are means over the planned days. */
      ...air,
    }),
  ),
  lots: z.array(plannedLotSchema),
  expectedWaste: grams,
  /** Everything in the refrigerator unsorted and unwrapped (but for covers on what is cut), as far as it fits, eaten as well as can be. */
  unsorted: z.strictObject({ expectedWaste: grams, objective: objectiveSchema }),
  objective: objectiveSchema,
  /** Parts of the haul that fit nowhere, as litres over, by place. */
  overflow: z.array(z.strictObject({ place: z.string(), litres: z.number().describe("L over its room") })),
  /** Safety cautions that hold for this plan, by name; words are made in handout. */
  cautions: z.array(z.string()),
  /** The plan carried out many times over, where that was asked for. */
  draws: planDrawsSchema.optional(),
  /** How far it can be from the best there is, where that was asked for. */
  proof: proofSchema.optional(),
});
export type Plan = z.infer<typeof planSchema>;
