import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { mustRun, root } from "./run.mjs";

const stamp = `${root}/node_modules/.keepwright-installed`;

const lockHash = () =>
  createHash("sha256")
    .update(readFileSync(`${root}/package-lock.json`))
    .digest("hex");

/** Installs the locked packages when they are missing or when the lock file has changed since. */
export function ensureInstalled() {
  const wanted = lockHash();
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return;
  console.log("Installing the locked packages …");
  mustRun("Installing", "npm", ["ci", "--no-audit", "--no-fund", "--ignore-scripts"]);
  writeFileSync(stamp, wanted);
}
