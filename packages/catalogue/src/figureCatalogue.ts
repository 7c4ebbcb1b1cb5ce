import { assembledFigures, wrapsById } from "./assembled.js";
import type { Catalogue } from "./catalogue.js";
import * as figures from "./figures.generated.js";

let known: Catalogue | undefined;

/**
 * The catalogue that comes with the program without the provenance of its figures: `source`, `place`, `note`, `rivals` and the
 * citations are missing from its records. Less than half of the bytes, for where everything is computed and nothing cited.
 */
export function figureCatalogue(): Catalogue {
  known ??= assembledFigures(figures);
  return known;
}

let wraps: Catalogue["wraps"] | undefined;

/** The wraps alone: whoever wants no more need not wait for kinds to be completed from their relatives. */
export function figureWraps(): Catalogue["wraps"] {
  wraps ??= wrapsById(figures.wraps);
  return wraps;
}
