/** A source named somewhere in the data, and where. */
export interface SourceUse {
  readonly source: string;
  readonly path: string;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;

/** Every place in a record that names a source, however deep. */
export function sourceUses(value: unknown, path = ""): SourceUse[] {
  if (!isRecord(value)) return [];
  const own = typeof value.source === "string" ? [{ source: value.source, path: path || "the record" }] : [];
  const below = Object.entries(value).flatMap(([key, child]) =>
    sourceUses(child, path ? `${path}.${key}` : key),
  );
  return [...own, ...below];
}
