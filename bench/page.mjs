// How the page keeps up with typing: real Chromium, its processor throttled to a quarter (`node bench/page.mjs 1` for not at all). First screen; a haul of
// 30 things typed letter by letter, the tasks of the page's own thread meanwhile, by the clock and by processor time; and the time from the last letter to
// a plan of all of it, and to the plan that everybody gets. Times are taken in the page: asking it from outside takes its time too. Printed, not asserted.
// Chromium throttles the page's own thread; its workers run as fast as the machine.
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
import { findChromium } from "../scripts/lib/chromium.mjs";
import { mustRun, root } from "../scripts/lib/run.mjs";
import { serveFolder } from "../scripts/lib/serveFolder.mjs";
import { quantile } from "./lib/requests.mjs";
import { tasksBetween, traced } from "./lib/threadTasks.mjs";

const throttle = Number(process.argv[2] ?? 4);
const rounds = 3;
/** Milliseconds between two letters of somebody who types about 60 words a minute; memory, no source. */
const betweenLetters = 160;
const things =
  "2 lb apples|a bunch of cilantro|3 avocados|6 bananas|1 head of broccoli|2 lb carrots|1 cauliflower|a head of celery|2 cucumbers|1 eggplant|1 bulb of garlic|2 lb grapes|a bunch of kale|3 lemons|4 limes|1 head of romaine|2 mangoes|1 cantaloupe|8 oz mushrooms|3 onions|4 oranges|a bunch of parsley|4 peaches|3 pears|2 sweet peppers|1 pineapple|5 lb potatoes|8 oz spinach|1 pint strawberries|6 tomatoes".split(
    "|",
  );
/** Typed by the letter; what stands before it is put in at once, so that a round takes seconds and is as long as the longest haul. */
const lettersTyped = 60;

/** Runs in the page: long tasks, the last letter, and when plans of so many things are there. */
const watch = (things) => {
  globalThis.seen = { tasks: [] };
  new PerformanceObserver((list) => {
    seen.tasks.push(...list.getEntries().map(({ duration }) => duration));
  }).observe({ type: "longtask", buffered: true });
  const letter = () => Object.assign(seen, { letter: performance.now(), plan: undefined, last: undefined });
  addEventListener("input", letter, true);
  const look = () => {
    const lots = document.querySelectorAll("#plan .life-line").length;
    const status = document.querySelector("#plan .plan-status")?.textContent ?? "";
    if (lots === things) seen.plan ??= performance.now();
    if (status.startsWith(`Worked out for ${things} `)) seen.last ??= performance.now();
  };
  globalThis.watchPlan = () =>
    new MutationObserver(look).observe(document.body, {
      childList: true,
      subtree: true,
      characterData: true,
    });
};

/** Types the last letters; what the page saw of it. */
async function typed(page, letters) {
  await page.evaluate(() => {
    seen.tasks.length = 0;
    performance.mark("typing begins");
  });
  await page.keyboard.type(letters, { delay: betweenLetters });
  const tasks = await page.evaluate(() => {
    performance.mark("typing ends");
    return [...seen.tasks];
  });
  for (let waited = 0; waited < 120; waited++) {
    await page.waitForTimeout(1000);
    const { letter, plan, last } = await page.evaluate(() => seen);
    if (last !== undefined) return { tasks, plan: plan - letter, last: last - letter };
  }
  throw new Error("No plan came within two minutes.");
}

async function round(browser, address) {
  const page = await browser.newPage({ viewport: { width: 412, height: 915 }, serviceWorkers: "block" });
  await page.addInitScript(watch, things.length);
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: throttle });
  await page.goto(address);
  const box = page.getByRole("textbox", { name: /one thing a line/ });
  await box.waitFor();
  const firstScreen = await page.evaluate(
    () => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
  );
  await page.getByRole("status").filter({ hasText: "Worked out for" }).waitFor({ timeout: 120_000 });
  const text = things.join("\n");
  await box.fill(text.slice(0, -lettersTyped));
  await page.waitForTimeout(4000);
  await page.evaluate(() => void watchPlan());
  await box.press("Control+End");
  const { result, events } = await traced(browser, () => typed(page, text.slice(-lettersTyped)));
  await page.context().close();
  const { tasks, plan, last } = result;
  const own = tasksBetween(events, "typing begins", "typing ends");
  return {
    firstScreen,
    plan,
    last,
    longest: Math.max(0, ...tasks),
    tasks: tasks.length,
    ownLongest: own[0],
    ownTasks: own.filter((each) => each > 50).length,
    own: own.reduce((sum, each) => sum + each, 0),
  };
}

if (!existsSync(`${root}/apps/web/dist/index.html`))
  mustRun("Building", process.execPath, ["scripts/build.mjs"]);
const executablePath = findChromium();
if (!executablePath) {
  console.log("No Chromium was found: set KEEPWRIGHT_CHROMIUM to a browser's path.");
} else {
  const { address, close } = await serveFolder(`${root}/apps/web/dist`, { firstPort: 0 });
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const results = [];
  for (let index = 0; index < rounds; index++) results.push(await round(browser, address));
  const line = (name, key) => {
    const values = results.map((each) => each[key]).sort((one, other) => one - other);
    console.log(
      `${name}: median ${quantile(values, 0.5).toFixed(0)}, from ${values[0].toFixed(0)} to ${values.at(-1).toFixed(0)}`,
    );
  };
  console.log(
    `Processor throttled ${throttle}×, ${rounds} rounds, ${things.length} things, the last ${lettersTyped} letters typed.`,
  );
  line("First screen painted after [ms]", "firstScreen");
  line("A plan of all things after the last letter by [ms] (aim below 2000)", "plan");
  line("The plan that everybody gets, by [ms]", "last");
  line("Longest task of the page's thread while typing, by the clock [ms] (aim below 50)", "longest");
  line("Tasks above 50 ms, by the clock", "tasks");
  line("Longest task by processor time [ms]", "ownLongest");
  line("Tasks above 50 ms of processor time", "ownTasks");
  line("Processor time of the page's thread while typing [ms]", "own");
  await browser.close();
  close();
}
