/** Fields that say where a figure comes from. Nothing is computed from them. */
const provenanceFields = new Set(["note", "rivals", "place", "source", "citation", "chosen"]);

const isObject = (value) => typeof value === "object" && value !== null;

/** A value without its provenance. */
function withoutProvenance(value) {
  if (Array.isArray(value)) return value.map(withoutProvenance);
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) =>
      provenanceFields.has(key) ? [] : [[key, withoutProvenance(each)]],
    ),
  );
}

/** Only the provenance of a value, in the same shape (lists by their positions); undefined where it has none. */
function onlyProvenance(value) {
  if (!isObject(value)) return undefined;
  const kept = Object.entries(value).flatMap(([key, each]) => {
    const own = provenanceFields.has(key) ? each : onlyProvenance(each);
    return own === undefined ? [] : [[key, own]];
  });
  return kept.length === 0 ? undefined : Object.fromEntries(kept);
}

/** Splits a value in two that `withProvenance` of the catalogue puts together again. */
export const parted = (value) => ({
  figures: withoutProvenance(value),
  provenance: onlyProvenance(value) ?? {},
});
