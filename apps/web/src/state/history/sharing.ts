/**
 * `after`, built of what of `before` says the same: what did not change stays one and the same object although it comes anew from the
 * database, so that nothing is worked out or drawn again for it. Plain data only.
 */
export function sharing<Value>(before: unknown, after: Value): Value {
  if (Object.is(before, after)) return after;
  if (!isPlain(before) || !isPlain(after) || Array.isArray(before) !== Array.isArray(after)) return after;
  const old = before as Readonly<Record<string, unknown>>;
  const entries = Object.entries(after).map(
    ([key, value]) => [key, Object.hasOwn(old, key) ? sharing(old[key], value) : value] as const,
  );
  // In the same order too, so that whoever writes it down writes the same.
  const keys = Object.keys(old);
  const same =
    entries.length === keys.length &&
    entries.every(([key, value], index) => key === keys[index] && Object.is(value, old[key]));
  if (same) return before as Value;
  return (Array.isArray(after) ? entries.map(([, value]) => value) : Object.fromEntries(entries)) as Value;
}

const isPlain = (value: unknown): value is object => typeof value === "object" && value !== null;
