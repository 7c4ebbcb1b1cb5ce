import { endings } from "@keepwright/physics";
import { z } from "zod";
import { neighbourhoodSchema } from "../explain/neighbourhood.js";
import { ventSettings } from "../problem/kitchen.js";
import { objectiveSchema, planSchema } from "../problem/plan.js";
import { wrapIds } from "../problem/wraps.js";

const days = z.strictObject({ value: z.number(), unit: z.literal("d") });
const grams = z.strictObject({ value: z.number(), unit: z.literal("g") });
const wasted = z.strictObject({ grams: z.number().describe("g"), portions: z.number().describe("portions") });
const lot = z.string().describe("Id of the lot");

/** Something to say of an arrangement, apart from what it costs. The first four are matters of safety. */
export const arrangementFindingSchema = z.discriminatedUnion("finding", [
  z.strictObject({ finding: z.literal("cut out of refrigerator"), lot, place: z.string() }),
  z
    .strictObject({ finding: z.literal("cut too warm"), lot, place: z.string() })
    .describe("In a refrigerator, but where it is too warm to be safe for longer than hours"),
  z.strictObject({ finding: z.literal("cut uncovered"), lot }),
  z.strictObject({ finding: z.literal("greens in light"), lot, place: z.string() }),
  z.strictObject({
    finding: z.literal("overfull"),
    place: z.string(),
    litresOver: z.strictObject({ value: z.number(), unit: z.literal("L") }),
  }),
  z.strictObject({ finding: z.literal("unsuitable wrap"), lot, wrap: z.enum(wrapIds) }),
  z.strictObject({ finding: z.literal("never moves"), lot }),
]);
export type ArrangementFinding = z.infer<typeof arrangementFindingSchema>;

const lotFateSchema = z.strictObject({
  life: z
    .strictObject({ early: z.number(), middle: z.number(), late: z.number(), unit: z.literal("d") })
    .describe("As in a plan; of a lot in parts, the mean by portions"),
  endedBy: z.enum(endings).describe("What ends the lot; of one in parts, the part that ends first"),
  readyOnDay: z.number().nullable().describe("d from the first day; null: some of it does not get ready"),
  wasted: wasted.describe("Expected to be past its best before it is eaten"),
});
export type LotFate = z.infer<typeof lotFateSchema>;

export const lotBesideSchema = z.strictObject({
  lot,
  commodity: z.string(),
  mentioned: z.boolean().describe("The arrangement says where it lies"),
  here: lotFateSchema,
  planned: lotFateSchema,
  lifeLost: days.describe("Middle life in the plan less that here; below 0: it lasts longer here"),
  worseBy: grams.describe("Waste, quality, life and smells lost of this lot here, less those in the plan"),
});
export type LotBeside = z.infer<typeof lotBesideSchema>;

/** What sets a lot back: it lasts less long, it does not get ripe, its eating is spoilt, or it takes up a smell. */
export const conflictCauses = ["life", "not ripe", "eating", "smell"] as const;

export const conflictSchema = neighbourhoodSchema.extend({
  lot,
  commodity: z.string(),
  cause: z.enum(conflictCauses),
  life: days,
  plannedLife: days,
  endedBy: z.enum(endings),
  worseBy: grams,
  lostToPlace: days.describe(
    "Planned life less the life here with no neighbour: place, wrap, vent and moves, against what the plan's own neighbours take",
  ),
  effects: z
    .array(z.string())
    .describe("Effects that spoil eating where it lies, as the catalogue names them"),
  smellsOf: z.array(lot).describe("Lots whose smell it takes up here and not in the plan"),
});
export type Conflict = z.infer<typeof conflictSchema>;

/** A person's arrangement, judged beside the plan for the same haul and kitchen. */
export const judgementSchema = z.strictObject({
  version: z.literal(1),
  /** The arrangement made whole and written out as if it were a plan: the same simulation, eating days and objective. */
  yours: planSchema.omit({ draws: true }),
  plan: planSchema.omit({ draws: true }),
  notMentioned: z
    .strictObject({
      lots: z.array(lot).describe("Put where a plan would put them beside what is said"),
      vents: z
        .array(z.strictObject({ place: z.string(), setting: z.enum(ventSettings) }))
        .describe("Vents that can be set, with the setting taken: as nobody has touched them"),
    })
    .describe("What the arrangement does not say, and how it was taken"),
  findings: z.array(arrangementFindingSchema),
  wasted: z.strictObject({ yours: wasted, plan: wasted }),
  difference: objectiveSchema.describe("Yours less the plan, term by term; above 0 yours is worse"),
  lots: z.array(lotBesideSchema),
  conflicts: z.array(conflictSchema).max(3).describe("The worst, by what the lot loses against the plan"),
});
export type Judgement = z.infer<typeof judgementSchema>;
