import { endings } from "@keepwright/physics";
import { z } from "zod";
import { placeKinds, ventSettings } from "./kitchen.js";

const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const grams = z.strictObject({ value: z.number(), unit: z.literal("g") });
const days = z.strictObject({
  early: z.number(),
  middle: z.number(),
  late: z.number(),
  unit: z.literal("d"),
});
export const wrapIds = [
  "none",
  "paper bag",
  "perforated bag",
  "closed film bag",
  "damp towel",
  "beeswax cloth",
  "foil",
  "lidded box",
  "glass of water",
] as const;

/** A part of a lot in one place, one wrap, for a time. `to` is absent for the last stay. */
export const plannedStaySchema = z.strictObject({
  place: z.string(),
  placeKind: z.enum(placeKinds),
  wrap: z.enum(wrapIds),
  from: date,
  to: date.optional(),
  fromDay: z.number(),
  toDay: z.number().optional(),
  /** Why it moves on at the end of this stay. */
  moveWhen: z.enum(["ripe", "day"]).optional(),
});

export const plannedLotSchema = z.strictObject({
  /** Id of this part; the lot's own id, with "/2", "/3" for further parts of a split lot. */
  id: z.string(),
  lot: z.string(),
  commodity: z.string(),
  grams: z.number(),
  /** Litres it takes where it lies, wrap included, at the start. */
  litres: z.number(),
  ripeness: z.number(),
  form: z.enum(["whole", "cut"]),
  tops: z.boolean(),
  washed: z.boolean(),
  /** Things to do before it is put away, by name (see the catalogue). */
  preparation: z.array(z.string()),
  stays: z.array(plannedStaySchema).min(1),
  /** Days from the first day until it is past its best: 10 %, 50 % and 90 % of lots like it. */
  life: days,
  endedBy: z.enum(endings),
  /** First day it is ready to eat (0 = first day); null when it will not get there. */
  readyOnDay: z.number().nullable(),
  eatOn: z.array(
    z.strictObject({
      date,
      day: z.number().int(),
      portions: z.number().int(),
      grams: z.number(),
      /** Chance of being past its best by that day, and quality 0…1 otherwise. */
      chancePastBest: z.number().min(0).max(1).optional(),
      quality: z.number().min(0).max(1).optional(),
    }),
  ),
  /** Portions left at the end of the planned days. */
  leftPortions: z.number().int(),
  /** Edible grams expected to be past their best before they are eaten. */
  expectedWaste: grams,
  /** Conditions where it lies longest, from the simulation. */
  conditions: z.strictObject({ temperature: z.number(), relativeHumidity: z.number(), ethylene: z.number() }),
  /** Longest middle life this lot alone could have among the programmes tried in this kitchen. */
  bestLife: z.strictObject({ value: z.number(), unit: z.literal("d") }).optional(),
  /** Chance of being past its best, and quality 0…1 otherwise, when what is left over is taken to be eaten. */
  ifLeft: z.strictObject({ chancePastBest: z.number(), quality: z.number() }).optional(),
});
export type PlannedLot = z.infer<typeof plannedLotSchema>;

/** Each term of the objective in edible gram equivalents: see docs/decisions on the weights. */
export const objectiveSchema = z.strictObject({
  waste: z.number(),
  qualityLost: z.number(),
  lifeLost: z.number(),
  effort: z.number(),
  /** Litres over a place's room, weighted so that it is never chosen where anything fits. */
  overflow: z.number(),
  total: z.number(),
});
export type Objective = z.infer<typeof objectiveSchema>;

export const planSchema = z.strictObject({
  version: z.literal(1),
  seed: z.number(),
  from: date,
  days: z.number().int(),
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
      litres: z.number(),
      /** Most litres taken on any day. */
      litresTaken: z.number(),
      temperature: z.number(),
      /** Mean over the planned days: relative humidity [%] and ethylene [µL/L]. */
      relativeHumidity: z.number(),
      ethylene: z.number(),
    }),
  ),
  lots: z.array(plannedLotSchema),
  expectedWaste: grams,
  /** Everything in the refrigerator unsorted and unwrapped (but for covers on what is cut), as far as it fits, eaten as well as can be. */
  unsorted: z.strictObject({ expectedWaste: grams, objective: objectiveSchema }),
  objective: objectiveSchema,
  /** Parts of the haul that fit nowhere, as litres over, by place. */
  overflow: z.array(z.strictObject({ place: z.string(), litres: z.number() })),
  /** Safety cautions that hold for this plan, by name; words are made in handout. */
  cautions: z.array(z.string()),
});
export type Plan = z.infer<typeof planSchema>;
