import { z } from "zod";

/** How a figure came to be. "common practice" means: told in the trade, no publication found. */
export const evidenceKinds = ["measured", "recommended", "inferred", "common practice"] as const;

export const evidence = {
  /** Key of data/sources.json. */
  source: z.string().min(1),
  /** Where in the source: table, page, section, abstract; or, for an inferred value, from what it was inferred. */
  place: z.string().min(1),
  kind: z.enum(evidenceKinds),
  /** True when the figure was recalled from the publication and not checked in it. */
  fromMemory: z.boolean(),
  note: z.string().min(1).optional(),
};
export const evidenceSchema = z.strictObject(evidence);
export type Evidence = z.infer<typeof evidenceSchema>;

export const ordered = (range: {
  low?: number | undefined;
  high?: number | undefined;
  value?: number | undefined;
}) =>
  (range.low ?? range.value ?? -Infinity) <= (range.value ?? range.high ?? Infinity) &&
  (range.value ?? range.low ?? -Infinity) <= (range.high ?? range.value ?? Infinity);
export const orderMessage = "the low end is above the high end; write low ≤ value ≤ high";

const besideRivals = <Single extends z.ZodType>(single: Single) => ({
  /** What other sources say. */
  rivals: z.array(single).optional(),
  /** Why this one is the default though a rival stands before it by the rule (`check/defaults.ts`). */
  chosen: z.string().min(8).optional(),
});

/** One figure with its unit, optional range, evidence and rival figures from other sources. */
export const figure = <Unit extends string>(unit: Unit, least = -Infinity, most = Infinity) => {
  const number = z.number().min(least).max(most);
  const shape = {
    value: number,
    low: number.optional(),
    high: number.optional(),
    unit: z.literal(unit),
    ...evidence,
  };
  const single = z.strictObject(shape).refine(ordered, orderMessage);
  return z.strictObject({ ...shape, ...besideRivals(single) }).refine(ordered, orderMessage);
};

/** A published range with its unit and evidence. */
export const range = <Unit extends string>(unit: Unit, least = -Infinity, most = Infinity) => {
  const number = z.number().min(least).max(most);
  const shape = { low: number, high: number, unit: z.literal(unit), ...evidence };
  const single = z.strictObject(shape).refine(ordered, orderMessage);
  return z.strictObject({ ...shape, ...besideRivals(single) }).refine(ordered, orderMessage);
};

/** A figure that holds at one temperature. */
export const atTemperature = <Unit extends string>(unit: Unit, least = 0) =>
  z
    .strictObject({
      temperature: z.number().min(-5).max(45).describe("°C"),
      low: z.number().min(least),
      high: z.number().min(least),
      unit: z.literal(unit),
      ...evidence,
    })
    .refine(ordered, orderMessage);
