import { z } from "zod";
import { evidence, evidenceSchema } from "./figures.js";
import { wrapIds } from "./tables.js";

const sentence = z
  .string()
  .min(8)
  .max(220)
  .regex(/[.!?]$/, "end the sentence with a full stop");

/** Plain sentences in one language, in our own words; the lists of both languages answer each other line by line. */
export const guidanceWordsSchema = z.strictObject({
  /** How to tell that it is ripe or good to use, and how to test it. */
  ripe: z.array(sentence).min(1).max(4),
  /** Signs that it is going: still good, eat it now. */
  going: z.array(sentence).min(1).max(4),
  /** Signs that mean: throw it away. */
  discard: z.array(sentence).min(1).max(4),
  /** What to do before it is put away, and why. */
  prepare: z
    .array(z.strictObject({ do: sentence, why: sentence }))
    .min(1)
    .max(4),
  /** What stems, peel, leaves or seeds are good for; empty where nothing is trimmed. */
  trimmings: z.array(sentence).max(3),
  /** How to freeze it or otherwise save it when it cannot be eaten in time. */
  save: z.array(sentence).min(1).max(4),
  /** What can hurt; empty where nothing is known beyond the general cautions. */
  hazards: z.array(sentence).max(4),
});
export type GuidanceWords = z.infer<typeof guidanceWordsSchema>;

const month = z.number().int().min(1).max(12);

export const guidanceSchema = z.strictObject({
  /** Wraps that suit it in the cold or on the counter, best first; at least two of them are not plastic. */
  wraps: z.strictObject({ suit: z.array(z.enum(wrapIds)).min(2), ...evidence }),
  season: z.strictObject({
    /** Spans of months, first to last, in which it is harvested north of the tropics (or in them, for tropical kinds). */
    northern: z.array(z.tuple([month, month])).min(1),
    /** The same in the south; where left out, the northern spans moved by six months. */
    southern: z
      .array(z.tuple([month, month]))
      .min(1)
      .optional(),
    ...evidence,
  }),
  /** Where the words' facts come from. */
  basis: z.strictObject({
    signs: evidenceSchema,
    prepare: evidenceSchema,
    trimmings: evidenceSchema.optional(),
    save: evidenceSchema,
    hazards: evidenceSchema.optional(),
  }),
  words: z.strictObject({ en: guidanceWordsSchema, es: guidanceWordsSchema }),
});
export type Guidance = z.infer<typeof guidanceSchema>;
