import type { Use } from "./record.js";

/** Whether a key of a table and an id of the catalogue name one source: the same, or the same but for a year at the end ("handbook-66" and "handbook-66-2016"). */
export function isSameSource(key: string, id: string): boolean {
  const withoutYear = (name: string) => name.replace(/-\d{4}$/, "");
  return (
    key === id ||
    (withoutYear(key) === withoutYear(id) && (key === withoutYear(key) || id === withoutYear(id)))
  );
}

/**
 * Use of a row: what its column says; where that is empty, a fit where one of the catalogue's figures it is set beside is from the row's source, else a check. The column must
 * say "fit" where the catalogue's figure was inferred from the row, since an inference has a source of its own. An unknown use is a RangeError.
 */
export function useOf(row: Readonly<Record<string, string>>, given: readonly string[]): Use {
  if (row.use === "fit" || row.use === "check" || row.use === "shown") return row.use;
  if (row.use) throw new RangeError(`${row.kind}: "${row.use}" is no use of a published figure.`);
  return given.some((id) => isSameSource(row.sourceKey ?? "", id)) ? "fit" : "check";
}
