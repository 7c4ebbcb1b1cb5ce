import type { WrapId } from "@keepwright/catalogue";
import { wrapIds } from "@keepwright/planner";
import type { Lying } from "../state/plannerState.js";

const isWrap = (value: unknown): value is WrapId => wrapIds.some((wrap) => wrap === value);

/** Where the person said lots lie; entries that say nothing that can be used are left out. */
export function restoreLying(value: unknown): Readonly<Record<string, Lying>> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]): [string, Lying][] => {
      if (typeof each !== "object" || each === null) return [];
      const { place, wrap } = each as { place?: unknown; wrap?: unknown };
      return typeof place === "string" && isWrap(wrap) ? [[key, { place, wrap }]] : [];
    }),
  );
}
