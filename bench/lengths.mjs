// How long the page is in a narrow window, by the number of things (`node bench/lengths.mjs`, after the page is built; `node bench/lengths.mjs es-MX` for
// another language). Height in px of the whole and of its parts. Printed, not asserted.
import { chromium } from "playwright-core";
import { findChromium } from "../scripts/lib/chromium.mjs";
import { root } from "../scripts/lib/run.mjs";
import { serveFolder } from "../scripts/lib/serveFolder.mjs";

const locale = process.argv[2] ?? "en-US";
const counts = [1, 2, 4, 6, 8, 12, 16, 21, 26, 31];
const things =
  "3 tomatoes|1 head of romaine|6 bananas|1 punnet of strawberries|2 lb potatoes|3 onions|a bunch of cilantro|3 avocados|2 lb apples|1 head of broccoli|2 lb carrots|8 oz spinach|1 cauliflower|a head of celery|2 cucumbers|1 eggplant|1 bulb of garlic|2 lb grapes|a bunch of kale|3 lemons|4 limes|2 mangoes|1 cantaloupe|8 oz mushrooms|4 oranges|a bunch of parsley|4 peaches|3 pears|2 sweet peppers|1 pineapple|1 pint blueberries".split(
    "|",
  );
const parts = {
  understood: ".understood",
  "do now": ".do-now",
  where: ".where",
  "leave as it is": ".leave",
  days: ".day-line",
  lives: ".life-section",
};

async function lengths(page, count) {
  await page.locator(".haul-box textarea").fill(things.slice(0, count).join("\n"));
  await page.locator(".haul-box textarea").blur();
  await page.waitForFunction(
    (wanted) =>
      document.querySelector("#plan .plan-status")?.textContent?.match(/\d+/)?.[0] === String(wanted),
    count,
    { timeout: 120_000 },
  );
  await page.locator(".proof").waitFor({ timeout: 120_000 });
  return page.evaluate((asked) => {
    const height = (selector) => Math.round(document.querySelector(selector)?.clientHeight ?? 0);
    return {
      all: document.documentElement.scrollHeight,
      ...Object.fromEntries(Object.entries(asked).map(([part, selector]) => [part, height(selector)])),
    };
  }, parts);
}

const { address, close } = await serveFolder(`${root}/apps/web/dist`, { firstPort: 0 });
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ["--no-sandbox", "--disable-gpu"],
});
const table = {};
for (const count of counts) {
  const page = await browser.newPage({
    viewport: { width: 360, height: 740 },
    locale,
    serviceWorkers: "block",
  });
  await page.clock.setFixedTime(new Date(2026, 5, 13, 10));
  await page.goto(address);
  table[count] = await lengths(page, count);
  await page.close();
}
console.table(table);
await browser.close();
close();
