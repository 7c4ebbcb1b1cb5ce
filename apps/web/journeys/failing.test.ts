import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();
const list = "2 kg potatoes\n3 avocados";

/** Lets no file of that name through until told. */
async function withheld(page: Page, name: RegExp): Promise<() => Promise<void>> {
  await page.route(name, (route) => route.abort());
  return () => page.unroute(name);
}

async function savedText(page: Page, words = "Save it all as a file"): Promise<string> {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: words }).click();
  return JSON.parse(readFileSync(await (await download).path(), "utf8")).entered.text;
}

describe("a part of the page that does not come", () => {
  it("is a screen: says so, all else goes on, and it comes when it is asked for again", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(list);
    await planFor(page, 2);
    const through = await withheld(page, /SettingsPage-.*\.js/);
    await page.getByRole("link", { name: "Settings" }).click();
    await page.getByRole("alert").filter({ hasText: "“Settings” could not be opened." }).waitFor();
    await picture(page, "mishap-screen-en");
    const again = page.getByRole("button", { name: "Try again" });
    await expect.poll(() => again.evaluate((button) => button === document.activeElement)).toBe(true);
    expect(await savedText(page)).toBe(list);
    await again.click();
    await page.getByRole("alert").filter({ hasText: "“Settings” could not be opened." }).waitFor();
    await page.goBack();
    await planFor(page, 2);
    expect(await haulBox(page).inputValue()).toBe(list);
    await page.getByRole("link", { name: "Settings" }).click();
    await again.waitFor();
    await through();
    await again.click();
    await page.getByLabel("Open a file").or(page.locator("input[type=file]")).first().waitFor();
    expect(await page.getByRole("alert").filter({ hasText: "could not be opened" }).count()).toBe(0);
    await close();
  });

  it("is the reasons: says so in the place, in the language of the person, and opens them then", async () => {
    const { page, close } = await visit(browser(), {
      locale: "es-MX",
      viewport: { width: 360, height: 740 },
    });
    await haulBoxOf(page).fill("2 kg de papas\n3 aguacates");
    const why = page.locator("#plan a[href^='#/why']").first();
    await why.waitFor({ timeout: 60_000 });
    const through = await withheld(page, /WhyDialog-.*\.js/);
    await why.click();
    await page.getByRole("alert").filter({ hasText: "No se pudieron abrir las razones." }).waitFor();
    await picture(page, "mishap-why-es-360");
    expect(await violations(page)).toEqual([]);
    await through();
    await page.getByRole("button", { name: "Intentar otra vez" }).click();
    await page.getByRole("dialog").waitFor();
    await close();
  });

  it("is the plan: the list stays, and can be saved", async () => {
    const { page, close } = await visit(browser());
    await page.route(/PlanView-.*\.js/, (route) => route.abort());
    await page.reload();
    await page
      .getByRole("alert")
      .filter({ hasText: "The plan could not be shown." })
      .waitFor({ timeout: 60_000 });
    await haulBox(page).fill(list);
    expect(await savedText(page)).toBe(list);
    await page.unroute(/PlanView-.*\.js/);
    await page.getByRole("button", { name: "Try again" }).click();
    await planFor(page, 2);
    await close();
  });
});

const haulBoxOf = (page: Page) => page.locator("textarea").first();
