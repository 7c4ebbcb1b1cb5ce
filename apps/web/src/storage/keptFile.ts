import type { PlannerState } from "../state/plannerState.js";
import { isRecord, type Unused, unusable } from "./check.js";
import { type RestoreWith, restoreAll } from "./restore.js";
import { wholeKitchens } from "./wholeKitchens.js";

/** The file that a person saves and opens again, as docs/guide/kept-file.md and schemas/kept-file.schema.json describe it. */
export interface KeptFile {
  readonly format: "keepwright-kept";
  readonly version: 1;
  /** When it was written, ISO 8601. */
  readonly written: string;
  readonly entered: PlannerState;
}

/** Largest file that is opened [bytes]. Declared preference, no source: a list of a million words is smaller. */
export const mostBytes = 20_000_000;

/** The text of the file. */
export function keptFileText(entered: PlannerState, written: Date): string {
  const file: KeptFile = {
    format: "keepwright-kept",
    version: 1,
    written: written.toISOString(),
    entered,
  };
  return `${JSON.stringify(file, undefined, 2)}\n`;
}

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
