import { z } from "zod";
import { ventSettings } from "../problem/kitchen.js";
import { haulSchema } from "../problem/lot.js";
import { planSchema } from "../problem/plan.js";
import { wrapIds } from "../problem/wraps.js";
import { waysGone } from "./remaining.js";

const days = z.number().describe("d");
const grams = z.strictObject({ value: z.number(), unit: z.literal("g") });
const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const place = z.string().describe("Id of the place");
const lots = z.array(z.string()).describe("Ids of lots in the new haul");
const lying = z.strictObject({ place, wrap: z.enum(wrapIds) });
const meals = z.array(
  z.strictObject({ day: z.number().int().describe("d from the new first day"), portions: z.number().int() }),
);

/** Why something changed, from the simulation or from what was said. */
export const reasonSchema = z.discriminatedUnion("because", [
  z.strictObject({ because: z.literal("eaten") }),
  z.strictObject({ because: z.literal("thrown out") }),
  z.strictObject({ because: z.literal("given away") }),
  z.strictObject({ because: z.literal("frozen") }),
  z.strictObject({ because: z.literal("came home") }),
  z.strictObject({
    because: z.literal("usual kind"),
    word: z.string(),
    kinds: z.array(z.string()).describe("Ids of the other kinds it may mean"),
  }),
  z.strictObject({ because: z.literal("moved by hand") }),
  z.strictObject({ because: z.literal("cut since") }),
  z.strictObject({ because: z.literal("ripe sooner"), days }),
  z.strictObject({ because: z.literal("ripe later"), days }),
  z.strictObject({ because: z.literal("ends sooner"), days }),
  z.strictObject({ because: z.literal("keeps longer"), days }),
  z.strictObject({ because: z.literal("more left"), portions: z.number().int() }),
  z.strictObject({ because: z.literal("less left"), portions: z.number().int() }),
  z.strictObject({ because: z.literal("may not stay") }),
  z.strictObject({ because: z.literal("room taken"), place, lots }),
  z.strictObject({ because: z.literal("room free"), place }),
  z.strictObject({ because: z.literal("beside"), lots, days }),
  z.strictObject({ because: z.literal("lasts longer there"), days }),
  z.strictObject({ because: z.literal("ripens there") }),
  z.strictObject({ because: z.literal("eats better there") }),
  z.strictObject({ because: z.literal("better for the rest"), gain: grams }),
  z.strictObject({ because: z.literal("others to eat"), lots }),
  z.strictObject({ because: z.literal("others gone") }),
]);
export type ChangeReason = z.infer<typeof reasonSchema>;

/**
 * What became of one lot: “stays” as it was, to be eaten as was planned; “other days”: lies as it was; “moves as planned”: now, as the earlier plan had foreseen;
 * “moves”: though it was not to; “new”; “gone”; “throw away”: it may no longer be eaten safely, so it has no place and no meal, whatever else became of it.
 */
export const changeKinds = [
  "stays",
  "other days",
  "moves as planned",
  "moves",
  "new",
  "gone",
  "throw away",
] as const;

export const lotChangeSchema = z.strictObject({
  lot: z.string().optional().describe("Id in the new haul; absent where nothing is left"),
  part: z.string().optional().describe("Id of the part in the earlier plan; absent for what came home"),
  commodity: z.string(),
  change: z.enum(changeKinds),
  from: lying.optional().describe("Where it lies"),
  to: z
    .array(lying)
    .describe("Where it goes now, one for each part it is in; empty when gone or thrown away"),
  meals: z.strictObject({
    before: meals.describe("What the earlier plan still had"),
    now: meals,
  }),
  taken: z
    .array(z.strictObject({ way: z.enum(waysGone).exclude(["eaten"]), grams }))
    .optional()
    .describe("What is said to be given away, frozen or thrown out of it: none of it was eaten"),
  gain: grams
    .optional()
    .describe("Of what moves though it was not to: what the plan would lose if it stayed, its cost counted"),
  reasons: z.array(reasonSchema),
});
export type LotChange = z.infer<typeof lotChangeSchema>;

export const ventChangeSchema = z.strictObject({
  place,
  from: z.enum(ventSettings).describe("Setting as it stands"),
  to: z.enum(ventSettings),
});

/** A plan carried on: the new plan with the haul it is for, and what changed. The haul and the plan are what the next carrying on begins from. */
export const carriedOnSchema = z.strictObject({
  version: z.literal(1),
  plan: planSchema.omit({ draws: true }),
  haul: haulSchema,
  elapsed: z.number().int().describe("d since the earlier plan's first day"),
  changes: z.array(lotChangeSchema),
  vents: z.array(ventChangeSchema).describe("Vents that are turned"),
  begun: lots.describe("Whole pieces of which some has been eaten, so that the rest is cut: see the caution"),
  takenAsCut: z
    .array(
      z.strictObject({
        lot: z.string(),
        date,
        because: z.enum(["begun", "day not told", "lay warm", "cut today"]).default("begun"),
        place: place.optional(),
      }),
    )
    .default([])
    .describe(
      "Melons that were begun, and what is said to be cut without a day, each with the day from which it is taken as cut since none was told; and what is cut since a day that was told and lay out of the refrigerator by the plan, with that place: “lay warm”, taken as left there; “cut today”, taken as put into the refrigerator at once",
    ),
});
export type CarriedOn = z.infer<typeof carriedOnSchema>;
