import { z } from "zod";

export const placeKinds = [
  "refrigerator shelf",
  "refrigerator door",
  "crisper drawer",
  "counter",
  "cool dark cupboard",
  "cellar",
] as const;
export type PlaceKind = (typeof placeKinds)[number];

export const ventSettings = ["open", "half", "closed"] as const;
export type VentSetting = (typeof ventSettings)[number];

/** What a temperature [°C], a relative humidity [%] and the air of a refrigerator [L] may be at all. Beyond, it was misread. */
export const kitchenBounds = {
  celsius: { least: -5, most: 45 },
  humidity: { least: 5, most: 100 },
  litres: { least: 1, most: 2000 },
} as const;
const celsius = z.number().min(kitchenBounds.celsius.least).max(kitchenBounds.celsius.most);
const identifier = z.string().min(1).max(60);

export const placeSchema = z.strictObject({
  id: identifier,
  name: z.string().min(1).max(80),
  kind: z.enum(placeKinds),
  /** Mean temperature of produce there, and its spread (standard deviation) over places and days [°C]. */
  temperature: celsius,
  temperatureSpread: z.number().min(0).max(10).default(1),
  /** Room for produce [L]. */
  litres: z.number().positive().max(kitchenBounds.litres.most),
  /** Refrigerator (by id) whose air it shares; absent for places in the room. */
  refrigerator: identifier.optional(),
  /** Air exchange with what surrounds it [volumes of the place an hour]; for a drawer with a vent, at each setting. Absent: shares the air. */
  airChangesPerHour: z
    .union([
      z.number().positive().max(1000),
      z.strictObject({
        open: z.number().positive(),
        half: z.number().positive(),
        closed: z.number().positive(),
      }),
    ])
    .optional(),
  /** A humidity vent that can be set. Present only where airChangesPerHour has three settings. */
  vent: z.union([z.literal("choose"), z.enum(ventSettings)]).optional(),
  lit: z.boolean(),
});
export type Place = z.infer<typeof placeSchema>;

export const refrigeratorSchema = z.strictObject({
  id: identifier,
  /** Volume of its main air [L]. */
  litres: z.number().positive().max(kitchenBounds.litres.most),
  temperature: celsius,
  /** Air exchanged with the room by door openings and leaks [volumes an hour]. */
  airChangesPerHour: z.number().positive().max(20),
  /** Cold surface that dries the air. */
  coil: z.strictObject({
    temperature: z.number().min(-40).max(10),
    airChangesPerHour: z.number().min(0).max(200),
  }),
});
export type Refrigerator = z.infer<typeof refrigeratorSchema>;

export const kitchenSchema = z.strictObject({
  version: z.literal(1),
  name: z.string().min(1).max(120),
  room: z.strictObject({
    temperature: celsius,
    /** % */
    relativeHumidity: z.number().min(kitchenBounds.humidity.least).max(kitchenBounds.humidity.most),
    /** µL/L */
    ethylene: z.number().min(0).max(100).default(0.02),
  }),
  refrigerators: z.array(refrigeratorSchema).max(4),
  places: z.array(placeSchema).min(1).max(15),
  /** Wraps at hand, besides none. */
  wraps: z.array(
    z.enum([
      "paper bag",
      "perforated bag",
      "closed film bag",
      "damp towel",
      "beeswax cloth",
      "foil",
      "lidded box",
      "glass of water",
    ]),
  ),
});
export type Kitchen = z.infer<typeof kitchenSchema>;

/** Who eats, how much, and when. */
export const householdSchema = z.strictObject({
  people: z.number().int().min(1).max(500).default(2),
  /** Portions of fruit and vegetables a person eats a day. */
  portionsPerPersonPerDay: z.number().min(0.5).max(20).default(5),
  /** Day numbers (0 = first day) on which nobody eats at home. */
  daysAway: z.array(z.number().int().min(0).max(60)).default([]),
  /** Days planned for: until the next shopping and a little beyond. */
  days: z.number().int().min(1).max(28).default(10),
});
export type Household = z.infer<typeof householdSchema>;
