import * as data from "./names.generated.js";
import type { Commodity } from "./schema.js";

/** The names of one kind: all that is needed before anything is computed. */
export type KindNames = Pick<Commodity, "id" | "names">;

let known: ReadonlyMap<string, KindNames> | undefined;

/** Names of every kind that comes with the program, without the figures: a small part that can be there first. */
export function kindNames(): ReadonlyMap<string, KindNames> {
  known ??= new Map((data.names as KindNames[]).map((each) => [each.id, each]));
  return known;
}
