import type { z } from "zod";
import type { Catalogue, RawCatalogue } from "./catalogue.js";
import { checkCrossReferences } from "./check/crossReferences.js";
import { checkGuidance } from "./check/guidance.js";
import { CatalogueError, describeIssues, shown } from "./check/problems.js";
import { commodityFileSchema } from "./fileSchema.js";
import { nameGroupSchema } from "./groups.js";
import { withInferred } from "./infer/withInferred.js";
import type { Commodity } from "./schema.js";
import {
  odourSchema,
  safetyLimitSchema,
  sourceSchema,
  type Wrap,
  type WrapId,
  wrapSchema,
} from "./tables.js";

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

/** The kinds completed from their relatives; where one cannot be, its fault goes to `problems`. */
function readKinds(
  raw: unknown,
  { wraps, sources }: Pick<Catalogue, "wraps" | "sources">,
  problems: string[],
): Commodity[] {
  const files = readList(raw, "kind", commodityFileSchema, problems);
  problems.push(
    ...files.flatMap(({ id, guidance }) => (guidance ? checkGuidance(id, guidance, wraps, sources) : [])),
  );
  try {
    return problems.length === 0 ? withInferred(files) : [];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    problems.push(error.message);
    return [];
  }
}

/**
 * Checks raw catalogue data and returns it. Throws CatalogueError with every fault found: each names the record, the
 * field, the value and what would be accepted.
 */
export function loadCatalogue(raw: RawCatalogue): Catalogue {
  const problems: string[] = [];
  const wraps = byId<WrapId, Wrap>(readList(raw.wraps, "wrap", wrapSchema, problems), "wrap", problems);
  const sources = byId(readList(raw.sources, "source", sourceSchema, problems), "source", problems);
  const catalogue: Catalogue = {
    commodities: byId(readKinds(raw.commodities, { wraps, sources }, problems), "kind", problems),
    sources,
    groups: readList(raw.groups ?? [], "group", nameGroupSchema, problems),
    wraps,
    odours: readList(raw.odours, "odour", odourSchema, problems),
    safety: byId(readList(raw.safety, "safety limit", safetyLimitSchema, problems), "safety limit", problems),
  };
  if (problems.length === 0) problems.push(...checkCrossReferences(catalogue));
  if (problems.length > 0) throw new CatalogueError(problems);
  return catalogue;
}
