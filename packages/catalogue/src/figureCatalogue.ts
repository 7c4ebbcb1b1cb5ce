import { assembled, withNames } from "./assembled.js";
import type { Catalogue } from "./catalogue.js";
import * as figures from "./figures.generated.js";

let known: Catalogue | undefined;

/**
 * The catalogue that comes with the program without the provenance of its figures: `source`, `place`, `note`, `rivals` and the
 * citations are missing from its records. Less than half of the bytes, for where everything is computed and nothing cited.
 */
export function figureCatalogue(): Catalogue {
  known ??= assembled({ ...figures, commodities: withNames(figures.commodities) });
  return known;
}
