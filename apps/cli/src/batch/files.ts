import { existsSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** The files of one row: its page, and its plan as `keepwright plan --json` prints it. */
export const filesOf = (folder: string, id: string) => ({
  pdf: join(folder, `${id}.pdf`),
  plan: join(folder, `${id}.plan.json`),
});

export const haveFiles = (folder: string, id: string): boolean => {
  const { pdf, plan } = filesOf(folder, id);
  return existsSync(pdf) && existsSync(plan);
};

/** Written under another name and then renamed, so that a file is there whole or not at all, whenever the run is killed. */
export function writeWhole(path: string, content: Uint8Array | string): void {
  const half = `${path}.half`;
  writeFileSync(half, content);
  renameSync(half, path);
}
