// The same plans in Node and in the page's own worker in Chromium, in one run and by turns: 40 lots in 10 places (aim: in the browser within three times Node).
// Times by the clock, both alone on the machine while they plan; the first of each is told apart, for both are slower before they are warm. Nothing is throttled.
// Needs built packages and a built page (npm run build). Printed, not asserted.
import { readdirSync } from "node:fs";
import { figureCatalogue } from "@keepwright/catalogue";
import { planHaul } from "@keepwright/planner";
import { chromium } from "playwright-core";
import { findChromium } from "../scripts/lib/chromium.mjs";
import { root } from "../scripts/lib/run.mjs";
import { serveFolder } from "../scripts/lib/serveFolder.mjs";
import { quantile, requestOf, tenPlaces, timed } from "./lib/requests.mjs";

const rounds = Number(process.argv[2] ?? 10);
const household = { people: 5, portionsPerPersonPerDay: 5, daysAway: [], days: 10 };

/** The question of a round: another weight each time, since the worker remembers the last plan it made. */
function question(round) {
  const { haul, kitchen, from } = requestOf(40, tenPlaces);
  const usual = { form: "whole", tops: false, washed: false, extraDays: 0 };
  const lots = haul.lots.map((lot) => ({ ...usual, ...lot, grams: lot.grams + 10 * round }));
  return { lots, kitchen, household, from };
}

const inNode = ({ lots, ...asked }) =>
  timed(() => planHaul({ ...asked, haul: { lots }, seed: 1, catalogue: figureCatalogue() }));

/** Asks the worker that the page plans with, started once and kept, as the page keeps it. */
const inPage = (page, script, asked) =>
  page.evaluate(
    async ([address, message]) => {
      globalThis.planning ??= new Worker(address, { type: "module" });
      const begin = performance.now();
      const answer = await new Promise((resolve) => {
        planning.onmessage = ({ data }) => resolve(data);
        planning.onerror = ({ message: broken }) => resolve({ kind: "problem", message: broken });
        planning.postMessage({ ...message, number: 1 });
      });
      return { wall: performance.now() - begin, ...answer };
    },
    [script, asked],
  );

const figures = (times) => ({
  first: times[0],
  median: quantile(times.slice(1), 0.5),
  least: Math.min(...times.slice(1)),
  slowest: Math.max(...times.slice(1)),
});

const executablePath = findChromium();
const script = readdirSync(`${root}/apps/web/dist/assets`).find((name) => /^planWorker-.*\.js$/.test(name));
if (!executablePath || !script) {
  console.log("No Chromium (KEEPWRIGHT_CHROMIUM) or no built page (npm run build) was found.");
} else {
  const { address, close } = await serveFolder(`${root}/apps/web/dist`, { firstPort: 0 });
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const page = await browser.newPage();
  await page.goto(`${address}icon.svg`);
  const [node, chrome, others] = [[], [], []];
  for (let round = 0; round < rounds; round++) {
    const asked = question(round);
    const own = inNode(asked);
    const answer = await inPage(page, `${address}assets/${script}`, asked);
    if (answer.kind !== "plan") throw new Error(`The worker gave no plan: ${answer.message}`);
    node.push(own.wall);
    chrome.push(answer.wall);
    const [here, there] = [own.value.objective.total, answer.plan.objective.total];
    if (Math.abs(here - there) > 1e-9 * here) others.push({ round, node: here, chromium: there });
  }
  const [first, second] = [figures(node), figures(chrome)];
  const ratio = {
    first: second.first / first.first,
    median: second.median / first.median,
    ofPairs: quantile(
      chrome.slice(1).map((wall, index) => wall / node[index + 1]),
      0.5,
    ),
  };
  console.log(
    JSON.stringify({
      bench: "browser",
      lots: 40,
      places: tenPlaces.places.length,
      rounds,
      node: first,
      chromium: second,
      unit: "ms",
    }),
  );
  console.log(JSON.stringify({ ratio, aim: 3, otherPlans: others }));
  await browser.close();
  close();
}
