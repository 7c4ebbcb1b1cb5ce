import { assembled, withNames } from "./assembled.js";
import type { Catalogue, RawCatalogue } from "./catalogue.js";
import * as figures from "./figures.generated.js";
import { provenance } from "./provenance.generated.js";
import { withProvenance } from "./provenance.js";

/** The catalogue that comes with the program, as raw data, guidance aside. */
export function bundledData(): RawCatalogue {
  // A module is no plain object: its sections are laid out anew.
  const whole = withProvenance({ ...figures }, provenance) as RawCatalogue;
  return { ...whole, commodities: withNames(whole.commodities) };
}

let bundled: Catalogue | undefined;

/**
 * The catalogue that comes with the program, every figure with its provenance. It is trusted here, not checked again:
 * test/bundled.test.ts shows that `loadCatalogue` accepts it and gives the very same records.
 */
export function catalogue(): Catalogue {
  bundled ??= assembled(bundledData());
  return bundled;
}
