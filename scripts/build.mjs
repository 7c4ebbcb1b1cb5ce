// Builds everything: the bundled catalogue, the packages and the command line, and (unless --no-web) the page.
import { mustRun, root, toolPath } from "./lib/run.mjs";

const withWeb = !process.argv.includes("--no-web");
mustRun("Bundling the catalogue", process.execPath, ["scripts/bundle-catalogue.mjs"]);
mustRun("Compiling", process.execPath, [toolPath("typescript/bin/tsc"), "-b"]);
if (withWeb) {
  mustRun("Building the page", process.execPath, [toolPath("vite/bin/vite.js"), "build"], {
    cwd: `${root}/apps/web`,
  });
}
