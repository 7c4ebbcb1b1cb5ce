import { z } from "zod";

/**
 * A word that names several kinds ("greens", "squash"), or names one kind in a way its record does not.
 * Two records may carry the same name only when a group declares that name for both.
 */
export const nameGroupSchema = z.strictObject({
  word: z.string().min(1),
  kinds: z.array(z.string().min(1)).min(1),
  /** The kind most people mean by the word (common practice): ranked first, but still to be asked about. */
  usual: z.string().min(1).optional(),
  /** The same in some regions, by ISO 3166 code (common practice, from memory), where it is another one there or there is none elsewhere. */
  usualIn: z.record(z.string().regex(/^[A-Z]{2}$/), z.string().min(1)).optional(),
});
export type NameGroup = z.infer<typeof nameGroupSchema>;
