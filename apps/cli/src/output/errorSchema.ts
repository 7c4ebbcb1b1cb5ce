import { z } from "zod";

/** What every command prints with --json when it fails. More may stand beside these: candidates, the reading. */
export const errorSchema = z.strictObject({
  error: z.looseObject({
    exitCode: z.int().min(1).max(2),
    message: z.string(),
    problems: z.array(z.strictObject({ thing: z.string(), value: z.string(), remedy: z.string() })),
  }),
});
