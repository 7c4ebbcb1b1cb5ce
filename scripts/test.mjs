// `npm test`, `npm run check` and .ci/run are this one command: install what is missing, then every check there is.
import { rmSync } from "node:fs";
import { ensureChromium } from "./lib/chromium.mjs";
import { closingLine } from "./lib/closingLine.mjs";
import { ensureInstalled } from "./lib/install.mjs";
import { requireNode } from "./lib/nodeVersion.mjs";
import { mustRun, root, run, toolPath } from "./lib/run.mjs";

requireNode();
ensureInstalled();
const chromium = ensureChromium();
const node = process.execPath;
const vitest = (config, report) => [
  toolPath("vitest/vitest.mjs"),
  "run",
  "--config",
  config,
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${report}`,
];

// Comparisons are recorded anew by the tests, so that none stays from an older run.
for (const folder of ["accuracy", "practice", "calibration", "relatives", "draws"]) {
  rmSync(`${root}/test-artefacts/${folder}`, { recursive: true, force: true });
}
mustRun("Building", node, ["scripts/build.mjs"]);
mustRun("Format and lint", node, [toolPath("@biomejs/biome/bin/biome"), "check", "."]);
const reports = ["test-artefacts/unit.json"];
let code = run(node, vitest("vitest.config.ts", reports[0]));
code ||= run(node, ["scripts/write-accuracy.mjs", "--check"]);
code ||= run(node, ["scripts/write-catalogue-pages.mjs", "--check"]);
if (chromium) {
  reports.push("test-artefacts/journeys.json");
  code ||= run(node, vitest("apps/web/vitest.journeys.config.ts", reports[1]), {
    env: { ...process.env, KEEPWRIGHT_CHROMIUM: chromium },
  });
} else {
  console.log(
    "\nNOT RUN: the browser journeys in apps/web/journeys. No Chromium was found and it could not be installed here.\n" +
      "Install Chromium or set KEEPWRIGHT_CHROMIUM to a browser's path, then run npm test again.",
  );
}
console.log(closingLine(reports));
process.exit(code);
