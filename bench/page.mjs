// How the page keeps up with typing: real Chromium, its processor throttled to a quarter. First screen; a haul of 30 things typed letter by letter, the
// longest task of the page's own thread meanwhile; and the time from the last letter to the plan. Printed, not asserted.
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
import { findChromium } from "../scripts/lib/chromium.mjs";
import { mustRun, root } from "../scripts/lib/run.mjs";
import { serveFolder } from "../scripts/lib/serveFolder.mjs";
import { quantile } from "./lib/requests.mjs";

const throttle = 4;
const rounds = 3;
/** Milliseconds between two letters of somebody who types about 60 words a minute; memory, no source. */
const betweenLetters = 160;
const things =
  "2 lb apples|a bunch of cilantro|3 avocados|6 bananas|1 head of broccoli|2 lb carrots|1 cauliflower|a head of celery|2 cucumbers|1 eggplant|1 bulb of garlic|2 lb grapes|a bunch of kale|3 lemons|4 limes|1 head of romaine|2 mangoes|1 cantaloupe|8 oz mushrooms|3 onions|4 oranges|a bunch of parsley|4 peaches|3 pears|2 sweet peppers|1 pineapple|5 lb potatoes|8 oz spinach|1 pint strawberries|6 tomatoes".split(
    "|",
  );
/** Typed by the letter; what stands before it is put in at once, so that a round takes seconds and is as long as the longest haul. */
const lettersTyped = 60;

const watchLongTasks = () => {
  globalThis.longTasks = [];
  new PerformanceObserver((list) => {
    for (const { duration, startTime } of list.getEntries())
      globalThis.longTasks.push({ duration, startTime });
  }).observe({ type: "longtask", buffered: true });
};

async function round(browser, address) {
  const page = await browser.newPage({ viewport: { width: 412, height: 915 }, serviceWorkers: "block" });
  await page.addInitScript(watchLongTasks);
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
  await page.evaluate(() => {
    globalThis.longTasks.length = 0;
  });
  await box.press("Control+End");
  await box.pressSequentially(text.slice(-lettersTyped), { delay: betweenLetters, timeout: 300_000 });
  const last = await page.evaluate(() => performance.now());
  const tasks = await page.evaluate(() => globalThis.longTasks.map(({ duration }) => duration));
  const words = `Worked out for ${things.length} things.`;
  await page.getByRole("status").filter({ hasText: words }).waitFor({ timeout: 120_000 });
  const plan = (await page.evaluate(() => performance.now())) - last;
  await page.context().close();
  return { firstScreen, plan, longest: Math.max(0, ...tasks), tasks: tasks.length };
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
  line("Plan there after the last letter by [ms] (aim below 2000)", "plan");
  line("Longest task of the page's thread while typing [ms] (aim below 50)", "longest");
  line("Tasks above 50 ms while typing", "tasks");
  await browser.close();
  close();
}
