/**
 * Kinds from which a small spot of mould may be cut away while they are whole, as their own advice in the catalogue says (a test compares; its source is named there). Of any other kind, firm or not,
 * the piece is thrown away: what is not said to be safe is not told.
 */
const trimmed: ReadonlySet<string> = new Set([
  "beet",
  "black-radish",
  "cabbage",
  "carrot",
  "celeriac",
  "daikon",
  "galangal",
  "ginger",
  "horseradish",
  "kohlrabi",
  "parsley-root",
  "rutabaga",
  "sweet-pepper",
  "turnip",
  "winter-squash",
]);

/** Whether a small spot of mould may be cut away from this kind of produce, by its id, while it is whole. */
export const trimsMould = (kind: string): boolean => trimmed.has(kind);
