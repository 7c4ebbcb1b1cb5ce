// After `npm install`: builds the command line, so that `npx keepwright` works at once. The page is built by `npm start`.
import { existsSync } from "node:fs";
import { mustRun, toolPath } from "./lib/run.mjs";

if (existsSync(toolPath("typescript/bin/tsc")))
  mustRun("Building", process.execPath, ["scripts/build.mjs", "--no-web"]);
