const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;

/**
 * Puts back what was kept apart of a value: `provenance` has the same shape with only the fields that say where figures come
 * from, lists by their positions.
 */
export function withProvenance(value: unknown, provenance: unknown): unknown {
  if (!isObject(provenance)) return value;
  if (Array.isArray(value))
    return value.map((each: unknown, index) => withProvenance(each, provenance[String(index)]));
  if (!isObject(value)) return provenance;
  const whole: Record<string, unknown> = { ...value };
  for (const [key, own] of Object.entries(provenance)) {
    whole[key] = Object.hasOwn(value, key) ? withProvenance(value[key], own) : own;
  }
  return whole;
}
