import type { NameGroup } from "./groups.js";
import type { Commodity } from "./schema.js";
import type { OdourPair, SafetyLimit, Source, Wrap, WrapId } from "./tables.js";

/** Everything known about kinds of produce, their wraps, smells and safety limits, with the sources it came from. */
export interface Catalogue {
  readonly commodities: ReadonlyMap<string, Commodity>;
  readonly sources: ReadonlyMap<string, Source>;
  /** Words that name several kinds, or name one in a way its own record does not. */
  readonly groups: readonly NameGroup[];
  readonly wraps: ReadonlyMap<WrapId, Wrap>;
  readonly odours: readonly OdourPair[];
  readonly safety: ReadonlyMap<string, SafetyLimit>;
}

/** The catalogue as it lies in files, before anything is known about it. */
export interface RawCatalogue {
  readonly commodities: unknown;
  readonly sources: unknown;
  readonly groups?: unknown;
  readonly wraps: unknown;
  readonly odours: unknown;
  readonly safety: unknown;
}

/** The record of one kind. Throws RangeError naming the id when the catalogue has none. */
export function commodityOf(catalogue: Catalogue, id: string): Commodity {
  const commodity = catalogue.commodities.get(id);
  if (!commodity)
    throw new RangeError(`The catalogue has no kind "${id}". Look it up by name first, with findKinds.`);
  return commodity;
}
