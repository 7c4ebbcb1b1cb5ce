import type { WrapId } from "@keepwright/catalogue";
import { type VentSetting, ventSettings, wrapIds } from "@keepwright/planner";
import type { Lying } from "../state/plannerState.js";

const isWrap = (value: unknown): value is WrapId => wrapIds.some((wrap) => wrap === value);

function lyingFrom(value: unknown): Lying | undefined {
  if (value === "as planned") return value;
  if (typeof value !== "object" || value === null) return undefined;
  const { place, wrap } = value as { place?: unknown; wrap?: unknown };
  return typeof place === "string" && isWrap(wrap) ? { place, wrap } : undefined;
}

const ventFrom = (value: unknown): VentSetting | undefined =>
  ventSettings.find((setting) => setting === value);

/** The entries of a record that say something that can be used. */
function restoreEntries<Value>(
  value: unknown,
  from: (each: unknown) => Value | undefined,
): Readonly<Record<string, Value>> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]): [string, Value][] => {
      const read = from(each);
      return read === undefined ? [] : [[key, read]];
    }),
  );
}

/** Where the person said lots lie; entries that say nothing that can be used are left out. */
export const restoreLying = (value: unknown) => restoreEntries(value, lyingFrom);

/** How the person said vents stand. */
export const restoreVents = (value: unknown) => restoreEntries(value, ventFrom);
