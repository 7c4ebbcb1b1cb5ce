import type { PlannerState } from "../state/plannerState.js";
import { isRecord, type Unused, unusable } from "./check.js";
import { type RestoreWith, restoreAll } from "./restore.js";
import { wholeKitchens } from "./wholeKitchens.js";

/** Largest file that is opened [bytes]. Declared preference, no source: a list of a million words is smaller. */
export const mostBytes = 20_000_000;

export type OpenedFile =
  | { readonly ok: true; readonly state: PlannerState; readonly unused: readonly Unused[] }
  | { readonly ok: false; readonly fault: "notJson" | "notOurs" };

function parsed(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

/** Reads such a file, or a record that was set aside. Never throws; tells everything in it that cannot be used. */
export function readKeptFile(text: string, given: RestoreWith): OpenedFile {
  const how = { ...given, kitchenDoor: wholeKitchens };
  const json = parsed(text);
  if (!json) return { ok: false, fault: "notJson" };
  const { value } = json;
  const wrapped = isRecord(value) && Object.hasOwn(value, "entered");
  const unused: Unused[] = [];
  if (wrapped) {
    const at = (field: string) => ({ field, report: (each: Unused) => unused.push(each) });
    if (value.version !== 1) unusable(value.version, at("version"), { want: "choice", choices: ["1"] });
    for (const key of Object.keys(value))
      if (!["format", "version", "written", "entered"].includes(key))
        unusable(value[key], at(key), { want: "nothing" });
  }
  const restored = restoreAll(wrapped ? value.entered : withoutMark(value), how);
  if (!restored.usable) return { ok: false, fault: "notOurs" };
  return { ok: true, state: restored.state, unused: [...unused, ...restored.unused] };
}

/** A record set aside may have been a copy, with the mark of whose it was. */
function withoutMark(value: unknown): unknown {
  if (!isRecord(value)) return value;
  const { kept: _, ...fields } = value;
  return fields;
}
