import type { PlannerState } from "../state/plannerState.js";

/** The file that a person saves and opens again, as docs/guide/kept-file.md and schemas/kept-file.schema.json describe it. */
export interface KeptFile {
  readonly format: "keepwright-kept";
  readonly version: 1;
  /** When it was written, ISO 8601. */
  readonly written: string;
  readonly entered: PlannerState;
}

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
