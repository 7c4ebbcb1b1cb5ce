import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { atRest } from "./support/kept.js";
import { haulBox, planFor, planRegion, sideways, tabTo, undoButton } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();
const haul = "2 kg apples\n1 head of romaine\n3 ripe avocados\n500 g strawberries\n1 kg carrots";
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;

/** Opens the page again some days after the first. */
async function daysLater(page: Page, days: number): Promise<void> {
  await page.clock.setFixedTime(new Date(2026, 5, 13 + days, 10));
  await page.reload();
}
const dayLine = (page: Page) => page.getByRole("region", { name: /^(Day by day|Día por día)$/ });
const passed = (page: Page) => dayLine(page).locator(".day.passed");
const made = (page: Page) => page.getByText("Working it out").waitFor({ state: "detached", timeout: 90_000 });

async function listOfSaturday(page: Page): Promise<void> {
  await haulBox(page).fill(haul);
  await planFor(page, 5);
  await atRest(page);
}

describe("a list of Saturday opened on Monday", () => {
  it("shows the days that have passed, today, and only what is left to do; what was not eaten is there still", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await listOfSaturday(page);
    await daysLater(page, 2);
    await passed(page).nth(1).waitFor({ timeout: 90_000 });
    expect(await passed(page).getByRole("heading").allTextContents()).toEqual([
      expect.stringMatching(/^Sat 13 June.*passed/),
      expect.stringMatching(/^Sun 14 June.*passed/),
    ]);
    expect(await dayLine(page).locator("[aria-current=date] h4").textContent()).toMatch(
      /^Today, Mon 15 June/,
    );
    await page.getByText(/This came home 2 days ago, on Saturday,? 13 June/).waitFor();
    expect(await page.getByText(/^Put away/).count()).toBe(0);
    const meal = passed(page).first().getByRole("checkbox").last();
    expect(await meal.isChecked()).toBe(true);
    const lives = () => planRegion(page).locator(".day-line").textContent();
    const before = await lives();
    await meal.tap();
    await passed(page).getByText("Not done.").waitFor();
    await made(page);
    await page.waitForFunction((words) => document.querySelector(".day-line")?.textContent !== words, before);
    const after = await lives();
    await page.reload();
    await passed(page).getByText("Not done.").waitFor({ timeout: 90_000 });
    expect(await lives()).toBe(after);
    await undoButton(page).tap();
    await passed(page).getByText("Not done.").waitFor({ state: "detached" });
    await made(page);
    expect(await lives()).toBe(before);
    expect(faults).toEqual([]);
    await close();
  });

  it("is judged as it lies then, without ranges of what is carried over", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await listOfSaturday(page);
    await daysLater(page, 2);
    await passed(page).nth(1).waitFor({ timeout: 90_000 });
    await page.getByRole("link", { name: "As I have it" }).click();
    await page.getByRole("button", { name: "All in the refrigerator" }).click();
    const told = page.locator(".beside-told");
    await told.filter({ hasText: /\d/ }).waitFor({ timeout: 90_000 });
    await page.locator(".beside[aria-busy=false] .one-move").waitFor();
    expect(await page.locator(".beside [role=alert]").count()).toBe(0);
    expect(await page.locator(".beside").textContent()).not.toContain("carried over");
    await picture(page, "mine-days-later-360-en");
    expect(faults).toEqual([]);
    await close();
  });

  it("takes what is added then for come home then, and tells apart what was only rewritten", async () => {
    const { page, faults, close } = await visit(browser());
    await listOfSaturday(page);
    await daysLater(page, 2);
    await passed(page).nth(1).waitFor({ timeout: 90_000 });
    await haulBox(page).fill(`${haul.replace("1 kg carrots", "900 g carrots")}\n1 kg spinach`);
    const doNow = planRegion(page).getByRole("region", { name: "Do now" });
    await doNow
      .getByText(/spinach/i)
      .first()
      .waitFor({ timeout: 90_000 });
    await made(page);
    expect(await doNow.getByText(/carrots/i).count()).toBe(0);
    expect(await passed(page).count()).toBe(2);
    const file = page.waitForEvent("download");
    await page.getByRole("link", { name: "Settings" }).click();
    await page.getByRole("button", { name: "Save it all as a file" }).click();
    const stream = await (await file).createReadStream();
    let text = "";
    for await (const piece of stream) text += piece;
    expect(JSON.parse(text).entered).toMatchObject({
      version: 5,
      from: "2026-06-13",
      before: [{ day: "2026-06-15", text: haul }],
    });
    expect(faults).toEqual([]);
    await close();
  });

  it("is marked by keyboard alone; axe finds nothing wrong", async () => {
    const { page, close } = await visit(browser());
    await listOfSaturday(page);
    await daysLater(page, 1);
    await passed(page).first().waitFor({ timeout: 90_000 });
    const meal = passed(page).first().getByRole("checkbox").first();
    await meal.focus();
    await page.keyboard.press("Space");
    expect(await meal.isChecked()).toBe(false);
    await made(page);
    expect(await violations(page)).toEqual([]);
    await tabTo(page, page.getByRole("button", { name: "All of it came home today" }), "Shift+Tab");
    await close();
  });
});

describe("a plan that is over", () => {
  it("says so, and begins anew when all of it came home today", async () => {
    const { page, faults, close } = await visit(browser());
    await listOfSaturday(page);
    await daysLater(page, 30);
    await page
      .getByText(/This plan began 30 days ago, on Saturday,? 13 June, and is over/)
      .waitFor({ timeout: 90_000 });
    await page.getByRole("button", { name: "All of it came home today" }).click();
    await page.getByText(/and is over/).waitFor({ state: "detached", timeout: 90_000 });
    await planFor(page, 5);
    expect(await dayLine(page).locator("[aria-current=date] h4").textContent()).toMatch(
      /^Today, Mon 13 July/,
    );
    expect(faults).toEqual([]);
    await close();
  });
});

describe("days that went by are pictured", () => {
  it.each([
    [360, "en-GB", "light"],
    [360, "es-MX", "dark"],
    [768, "es-MX", "light"],
    [1920, "en-GB", "dark"],
  ] as const)("at %i px in %s, %s", async (width, locale, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.getByRole("textbox").first().fill(haul);
    await page.locator(".lives > li").nth(4).waitFor({ state: "attached", timeout: 90_000 });
    await atRest(page);
    await daysLater(page, 2);
    await passed(page).nth(1).waitFor({ timeout: 90_000 });
    await passed(page).first().getByRole("checkbox").first().uncheck();
    await page.locator(".missed strong").waitFor();
    expect(await sideways(page)).toBe(0);
    await picture(page, `days-${width}-${locale.slice(0, 2)}-${colorScheme}`);
    await close();
  });
});
