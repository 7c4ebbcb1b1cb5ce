// Writes schemas/*.schema.json from the zod schemas of the built command line. With --check: writes nothing, and fails
// when a file is stale or missing.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { mustRun, toolPath } from "./lib/run.mjs";

const folder = fileURLToPath(new URL("../schemas/", import.meta.url));
const built = new URL("../apps/cli/dist/output/schemas.js", import.meta.url);
if (!existsSync(built)) {
  console.error("apps/cli is not built. Run `npm run build` first.");
  process.exit(1);
}
const { schemaFiles } = await import(built.href);
const check = process.argv.includes("--check");
const current = (name) => (existsSync(folder + name) ? readFileSync(folder + name, "utf8") : undefined);
/** Compared as JSON: the formatter lays it out in its own way. */
const same = (one, other) =>
  one !== undefined && JSON.stringify(JSON.parse(one)) === JSON.stringify(JSON.parse(other));
const stale = [...schemaFiles()].filter(([name, text]) => !same(current(name), text));

if (check && stale.length > 0) {
  console.error(
    `Stale: ${stale.map(([name]) => `schemas/${name}`).join(", ")}. Run node scripts/write-schemas.mjs.`,
  );
  process.exit(1);
}
mkdirSync(folder, { recursive: true });
for (const [name, text] of check ? [] : stale) writeFileSync(folder + name, text);
if (!check)
  mustRun("Formatting schemas", process.execPath, [
    toolPath("@biomejs/biome/bin/biome"),
    "format",
    "--write",
    folder,
  ]);
