import { z } from "zod";
import { evidence, figure } from "./figures.js";

export const sourceSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  citation: z.string().min(5),
  /** What standing it has: a paper, a handbook, a page seen second hand, common practice, our own inference. */
  standing: z.enum([
    "paper",
    "handbook",
    "public authority",
    "secondary page",
    "common practice",
    "inference",
    "definition",
  ]),
  note: z.string().optional(),
  /** BCP 47 tag of the language of its title, where that is not English. */
  language: z
    .string()
    .regex(/^[a-z]{2}$/)
    .optional(),
});
export type Source = z.infer<typeof sourceSchema>;

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

/** A wrap as a small box of air around the lot, in series with the place: equivalent air exchange for one kilogram. */
export const wrapSchema = z.strictObject({
  id: z.enum(wrapIds),
  /** Litres of outside air an hour that would carry as much vapour as passes through the wrap around 1 kg of produce. */
  vapourExchange: figure("L/h for 1 kg", 0, 100_000),
  /** The same for ethylene. */
  ethyleneExchange: figure("L/h for 1 kg", 0, 100_000),
  /** Extra room the wrap takes, as a share of the lot's own. */
  extraRoom: figure("1", 0, 3),
  /** Keeps the surface wet or the air inside saturated by its own water. */
  wet: z.boolean(),
  /** Share of transpired water replaced by uptake through the stem. */
  uptake: figure("1", 0, 1),
  plastic: z.boolean(),
});
export type Wrap = z.infer<typeof wrapSchema>;
export type WrapId = Wrap["id"];

/** A taker of smells that is no produce: milk, butter and cheese, taken to stand in every refrigerator. */
export const dairy = "dairy";

/** Who passes its smell to whom (Handbook 66's table), by commodity id; the taker may also be `dairy`. */
export const odourSchema = z.strictObject({ giver: z.string(), taker: z.string(), ...evidence });
export type OdourPair = z.infer<typeof odourSchema>;

/** A safety rule as a figure; never optimised away. */
export const safetyLimitSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  value: z.number(),
  unit: z.enum(["°C", "h", "d", "cm", "mg/kg"]),
  /** The same limit as published in °F, where the publication has both or only that: never converted and rounded, which might tell more than is safe. */
  fahrenheit: z.int().optional(),
  text: z.string(),
  ...evidence,
});
export type SafetyLimit = z.infer<typeof safetyLimitSchema>;
