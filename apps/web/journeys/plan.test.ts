import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const haul = "2 kg apples\n3 avocados\n1 head of romaine\nhalf a melon";

describe("what to do now", () => {
  it("is a list ticked off by touch: the count is told, nothing changes its place, and it is kept", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await planFor(page, 17);
    const list = planRegion(page).getByRole("region", { name: "Do now" });
    const boxes = list.getByRole("checkbox");
    const all = await boxes.count();
    const left = (count: number) => (count === 1 ? "1 thing left to do." : `${count} things left to do.`);
    await list
      .getByRole("status")
      .filter({ hasText: left(all) })
      .waitFor();
    const order = await list.locator("li").allTextContents();
    await boxes.nth(1).tap();
    await list
      .getByRole("status")
      .filter({ hasText: left(all - 1) })
      .waitFor();
    expect(await list.locator("li").allTextContents()).toEqual(order);
    expect(await boxes.nth(1).isChecked()).toBe(true);
    await page.reload();
    await planFor(page, 17);
    expect(await boxes.nth(1).isChecked()).toBe(true);
    for (const box of await boxes.all()) await box.check();
    await list.getByRole("status").filter({ hasText: "All of it is done." }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it("puts away last, and stays ticked when another plan asks for the same", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(haul);
    await planFor(page, 4);
    const list = planRegion(page).getByRole("region", { name: "Do now" });
    const words = await list.locator("li .what").allTextContents();
    const away = words.map((each) => each.startsWith("Put away: "));
    expect(away.lastIndexOf(false)).toBeLessThan(away.indexOf(true));
    const apples = list.getByRole("checkbox", { name: /apples/i }).last();
    await apples.check();
    const ticked = await list.locator("li.done").allTextContents();
    expect(ticked).toHaveLength(1);
    for (const days of ["9", "10"]) {
      await page.getByLabel("Days to plan").fill(days);
      await planRegion(page).getByRole("status").filter({ hasText: "Working it out" }).waitFor();
      await planFor(page, 4);
    }
    expect(await list.locator("li.done").allTextContents()).toEqual(ticked);
    expect(await list.locator("li .what").allTextContents()).toEqual(words);
    await close();
  });

  it("is ticked by keyboard alone", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(haul);
    await planFor(page, 4);
    const box = planRegion(page).getByRole("region", { name: "Do now" }).getByRole("checkbox").first();
    await tabTo(page, box);
    await page.keyboard.press("Space");
    expect(await box.isChecked()).toBe(true);
    await page.keyboard.press("Space");
    expect(await box.isChecked()).toBe(false);
    await close();
  });
});

describe("the days", () => {
  it("are headings with lists, today marked for all to know", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    const days = planRegion(page).getByRole("region", { name: "Day by day" });
    expect(await days.getByRole("heading", { level: 4 }).first().textContent()).toMatch(
      /^Today, Sat 13 June/,
    );
    expect(await days.locator("[aria-current=date]").count()).toBe(1);
    for (const day of await days.locator(".day").all())
      expect(await day.getByRole("listitem").count()).toBeGreaterThan(0);
    await close();
  });
});

describe("on paper", () => {
  it.each([
    ["A4", "en"],
    ["A4", "es"],
    ["Letter", "en"],
    ["Letter", "es"],
  ] as const)("the worked example is one page of %s in %s, without controls", async (format, locale) => {
    const { page, close } = await visit(browser(), { locale });
    await page.locator(".lives > li").first().waitFor({ timeout: 60_000 });
    await page.emulateMedia({ media: "print" });
    const seen = await page
      .locator("button, select, textarea, nav, .proof")
      .evaluateAll((all) => all.filter((one) => one.getClientRects().length > 0).length);
    expect(seen).toBe(0);
    expect(await page.locator(".cautions.pressing").isVisible()).toBe(true);
    const pdf = await page.pdf({ format });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page(?!s)/g)).toHaveLength(1);
    await page.setViewportSize({ width: 733, height: 1040 });
    await picture(page, `print-${format}-${locale}`);
    await close();
  });
});

describe("the plan is pictured", () => {
  it.each([
    [360, "en", "light"],
    [360, "es", "dark"],
    [768, "en", "dark"],
    [768, "es", "light"],
    [1920, "en", "light"],
    [1920, "es", "dark"],
  ] as const)("at %i px in %s, %s", async (width, locale, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.locator(".lives > li").first().waitFor({ timeout: 60_000 });
    await page.locator(".ticks input").nth(1).check();
    expect(await sideways(page)).toBe(0);
    await picture(page, `plan-${width}-${locale}-${colorScheme}`);
    await close();
  });
});
