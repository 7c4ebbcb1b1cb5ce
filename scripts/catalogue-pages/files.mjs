import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const pagesIn = (folder) =>
  existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith(".html")) : [];

/** Names of pages that are missing from a folder, differ from what they should be, or belong to no kind. */
export function differences(folder, pages) {
  const present = new Set(pagesIn(folder));
  const wanted = [...pages.keys()];
  return {
    missing: wanted.filter((name) => !present.has(name)),
    stale: wanted.filter(
      (name) => present.has(name) && readFileSync(join(folder, name), "utf8") !== pages.get(name),
    ),
    leftOver: [...present].filter((name) => !pages.has(name)).sort(),
  };
}

/** Makes the pages of a folder those given: writes what is missing or stale and removes what is left over. */
export function bringUpToDate(folder, pages) {
  mkdirSync(folder, { recursive: true });
  const found = differences(folder, pages);
  for (const name of [...found.missing, ...found.stale]) writeFileSync(join(folder, name), pages.get(name));
  for (const name of found.leftOver) rmSync(join(folder, name));
  return found;
}
