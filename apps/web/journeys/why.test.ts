import { AxeBuilder } from "@axe-core/playwright";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { planFor, planRegion, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;

describe("why a lot lies there", () => {
  it("opens by touch from the list of a place, and going back leads to where one was", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await planFor(page, 17);
    const lot = planRegion(page)
      .getByRole("article")
      .getByRole("link", { name: /romaine/i });
    await lot.scrollIntoViewIfNeeded();
    const top = await page.evaluate(() => scrollY);
    await lot.tap();
    const why = page.getByRole("dialog", { name: "Why? Romaine lettuces" });
    await why.getByRole("heading", { name: "In other places" }).waitFor({ timeout: 60_000 });
    for (const name of ["How long here, and what ends it", "What its neighbours do to it", "From day to day"])
      expect(await why.getByRole("heading", { name }).count(), name).toBe(1);
    await page.goBack();
    await why.waitFor({ state: "detached" });
    expect(await page.evaluate(() => scrollY)).toBe(top);
    expect(faults).toEqual([]);
    await close();
  });

  it("opens and closes by keyboard alone, tells the figures of the drawing and where they come from", async () => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, 17);
    const link = planRegion(page).getByRole("link", { name: "Why? Apples" });
    await tabTo(page, link);
    await page.keyboard.press("Enter");
    const why = page.getByRole("dialog", { name: "Why? Apples" });
    await why
      .getByRole("img", { name: /Ageing, water lost and ripening of Apples/ })
      .waitFor({ timeout: 60_000 });
    await tabTo(page, why.getByText("The same in figures"));
    await page.keyboard.press("Enter");
    expect(await why.getByRole("row").count()).toBe(12);
    expect(await why.getByRole("rowheader").first().textContent()).toBe("0");
    await tabTo(page, why.getByText("Where the figures come from"));
    await page.keyboard.press("Enter");
    await why.getByText(/Storage temperature.*:/).waitFor({ timeout: 60_000 });
    await page.keyboard.press("Escape");
    await why.waitFor({ state: "detached" });
    expect(await link.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(faults).toEqual([]);
    await close();
  });

  it("opens from its address, and what is no longer in the plan says so", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await page.evaluate(() => {
      location.hash = "#/why/lot-99";
    });
    const gone = page.getByRole("dialog", { name: "This is no longer in the plan" });
    await gone.getByRole("button", { name: "Back to the plan" }).click();
    await gone.waitFor({ state: "detached" });
    expect(new URL(page.url()).hash).not.toContain("why");
    await page.evaluate(() => {
      location.hash = "#/why/lot-1";
    });
    await page.reload();
    await page.getByRole("dialog", { name: "Why? Apples" }).waitFor({ timeout: 60_000 });
    await close();
  });

  it.each([
    [360, "en", "light"],
    [360, "es", "dark"],
    [768, "es", "light"],
    [1920, "en", "dark"],
  ] as const)(
    "has nothing wrong by axe and is pictured at %i px in %s, %s",
    async (width, locale, colorScheme) => {
      const { page, close } = await visit(browser(), {
        viewport: { width, height: 900 },
        locale,
        colorScheme,
      });
      await page.locator(".lives > li").first().waitFor({ timeout: 60_000 });
      await page.locator(".lives .why-link").nth(1).click();
      await page.locator(".why .course").waitFor({ timeout: 60_000 });
      await page.locator(".why details").first().locator("summary").click();
      const { violations } = await new AxeBuilder({ page }).include("dialog.why").analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      const tall = await page.locator("dialog.why").evaluate((dialog) => dialog.scrollHeight);
      await page.setViewportSize({ width, height: tall + 40 });
      await picture(page, `why-${width}-${locale}-${colorScheme}`, "dialog.why");
      await close();
    },
  );
});
