import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export interface PracticeRow {
  readonly name: string;
  readonly followed: number;
  readonly of: number;
  /** Follows from a declared rule, not from the simulation. */
  readonly declared: boolean;
  readonly why: string;
}

const folder = fileURLToPath(new URL("../../../../test-artefacts/practice/", import.meta.url));

/** Keeps the rows where scripts/write-accuracy.mjs finds them. */
export function recordPractices(rows: readonly PracticeRow[]): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}commonPractice.json`, `${JSON.stringify(rows, null, 2)}\n`);
}
