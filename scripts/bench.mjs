// `npm run bench`: every figure is a ratio or a rate measured in this one run. Nothing here is asserted.
import { readdirSync } from "node:fs";
import { mustRun, root, run } from "./lib/run.mjs";

mustRun("Building", process.execPath, ["scripts/build.mjs", "--no-web"]);
const chosen = process.argv.slice(2);
for (const file of readdirSync(`${root}/bench`)
  .filter((name) => name.endsWith(".mjs"))
  .sort()) {
  if (chosen.length > 0 && !chosen.some((name) => file.includes(name))) continue;
  console.log(`\n# bench/${file}`);
  if (run(process.execPath, [`bench/${file}`]) !== 0) process.exitCode = 1;
}
