import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { amount, haulBox, planFor, segment } from "./support/steps.js";

const browser = useBrowser();

/** The words of what has the focus. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const { activeElement } = document;
    return activeElement?.getAttribute("aria-label") ?? activeElement?.className ?? "nothing";
  });
const pressed = async (page: Page, name: string | RegExp) => {
  await page.getByRole("button", { name }).first().focus();
  await page.keyboard.press("Enter");
};
const said = (page: Page, words: string) => page.getByRole("status").filter({ hasText: words }).waitFor();

describe("a line by keyboard alone", () => {
  it("keeps the focus when it is left out, taken as right and put back, and says so", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("2 leeks\n3 avocados\nlettuce");
    await planFor(page, 3).catch(() => undefined);
    await pressed(page, "Change 2 leeks");
    await page.keyboard.press("Tab");
    await pressed(page, "Leave it out");
    await said(page, "“2 leeks” is left out.");
    await expect.poll(() => focused(page)).toBe("Undo the change to 2 leeks");
    await page.keyboard.press("Enter");
    await said(page, "“2 leeks” is again as it was read.");
    await expect.poll(() => focused(page)).toMatch(/(Change|Done with) 2 leeks/);
    await pressed(page, "It is right");
    await said(page, "“lettuce” is taken as it was read.");
    await expect.poll(() => focused(page)).toMatch(/^Change lettuce/);
    await close();
  });
});

describe("an amount in the numbers of the region", () => {
  it.each([
    ["en-GB", "500 g potatoes", "1,500", "1500", /1\.5 kg/],
    ["es-ES", "500 g patatas", "1.500", "1500", /1,5 kg/],
    ["es-MX", "500 g papas", "1,500", "1500", /1\.5 kg/],
    ["en-US", "1 lb spinach", "1 1/2", "1.5", /1\.5 lb/],
  ])("%s: in %s, %s is %s", async (locale, list, typed, shown, read) => {
    const { page, close } = await visit(browser(), { locale });
    await page.locator("textarea").first().fill(list);
    await page
      .getByRole("button", { name: /^(Change|Cambiar) / })
      .first()
      .click();
    const field = page.locator(".amount input").first();
    await field.fill(typed);
    await page.locator(".understood .read-as").filter({ hasText: read }).waitFor();
    await field.blur();
    await expect.poll(() => field.inputValue()).toBe(shown);
    await close();
  });

  it("comes back to what was entered, through a step there and back and through other units", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("1.25 kg carrots");
    await page.getByRole("button", { name: "Change 1.25 kg carrots" }).click();
    const now = () => amount(page).inputValue();
    expect(await now()).toBe("1.25");
    await page.getByRole("button", { name: "A little more" }).click();
    await expect.poll(now).toBe("1.5");
    await page.getByRole("button", { name: "A little less" }).click();
    await expect.poll(now).toBe("1.25");
    for (const unit of ["each", "g", "each", "kg"])
      await segment(page, "Unit", unit === "each" ? "pieces" : unit).check({ force: true });
    await expect.poll(now).toBe("1.25");
    await close();
  });
});
