import type { z } from "zod";
import type { Catalogue, RawCatalogue } from "./catalogue.js";
import { checkCrossReferences } from "./check/crossReferences.js";
import { CatalogueError, describeIssues, shown } from "./check/problems.js";
import { nameGroupSchema } from "./groups.js";
import { commoditySchema } from "./schema.js";
import { odourSchema, safetyLimitSchema, sourceSchema, wrapSchema } from "./tables.js";

/** Reads a list of records with one schema; each fault goes to `problems` under the record's name. */
function readList<Schema extends z.ZodType>(
  raw: unknown,
  what: string,
  schema: Schema,
  problems: string[],
): z.infer<Schema>[] {
  if (!Array.isArray(raw)) {
    problems.push(`${what}: the whole is ${shown(raw)}; write a list, [ … ].`);
    return [];
  }
  return raw.flatMap((record: unknown, index) => {
    const parsed = schema.safeParse(record);
    if (parsed.success) return [parsed.data];
    const id = (record as { id?: unknown } | null)?.id;
    problems.push(
      ...describeIssues(
        record,
        typeof id === "string" ? `${what} "${id}"` : `${what} number ${index + 1}`,
        parsed.error.issues,
      ),
    );
    return [];
  });
}

function byId<Key extends string, Item extends { id: Key }>(
  items: readonly Item[],
  what: string,
  problems: string[],
): Map<Key, Item> {
  const map = new Map<Key, Item>();
  for (const item of items) {
    if (map.has(item.id)) problems.push(`${what} "${item.id}": the id is used twice; keep one.`);
    map.set(item.id, item);
  }
  return map;
}

/**
 * Checks raw catalogue data and returns it. Throws CatalogueError with every fault found: each names the record, the
 * field, the value and what would be accepted.
 */
export function loadCatalogue(raw: RawCatalogue): Catalogue {
  const problems: string[] = [];
  const catalogue: Catalogue = {
    commodities: byId(readList(raw.commodities, "kind", commoditySchema, problems), "kind", problems),
    sources: byId(readList(raw.sources, "source", sourceSchema, problems), "source", problems),
    groups: readList(raw.groups ?? [], "group", nameGroupSchema, problems),
    wraps: byId(readList(raw.wraps, "wrap", wrapSchema, problems), "wrap", problems),
    odours: readList(raw.odours, "odour", odourSchema, problems),
    safety: byId(readList(raw.safety, "safety limit", safetyLimitSchema, problems), "safety limit", problems),
  };
  if (problems.length === 0) problems.push(...checkCrossReferences(catalogue));
  if (problems.length > 0) throw new CatalogueError(problems);
  return catalogue;
}
