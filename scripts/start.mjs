// `npm start`: installs what is missing, builds, and serves the planner with the worked example opened.
import { ensureInstalled } from "./lib/install.mjs";
import { requireNode } from "./lib/nodeVersion.mjs";
import { openInBrowser } from "./lib/openInBrowser.mjs";
import { mustRun, root } from "./lib/run.mjs";
import { serveFolder } from "./lib/serveFolder.mjs";

requireNode();
ensureInstalled();
mustRun("Building", process.execPath, ["scripts/build.mjs"]);
const { address } = await serveFolder(`${root}/apps/web/dist`, {
  firstPort: Number(process.env.PORT ?? 4780),
});
console.log(`\nKeepwright is at ${address} with the worked example opened. Stop it with Ctrl+C.`);
openInBrowser(address);
