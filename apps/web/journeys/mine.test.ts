import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();

const told = (page: Page) => page.locator(".beside-told");
/** Waits until the sentence about the waste stands there and is another than before. */
async function toldAnew(page: Page, before = ""): Promise<string> {
  await page.waitForFunction(
    (old) => {
      const text = document.querySelector(".beside-told")?.textContent ?? "";
      const busy = document.querySelector(".beside")?.getAttribute("aria-busy");
      return busy === "false" && /\d|othing should|nada deber/u.test(text) && text !== old;
    },
    before,
    { timeout: 90_000 },
  );
  return (await told(page).textContent()) ?? "";
}

async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)} ${nodes[0]?.failureSummary}`);
}

/** Types a haul and opens the screen. */
async function openWith(page: Page, haul: string, things: number): Promise<void> {
  await haulBox(page).fill(haul);
  await planFor(page, things);
  await page.getByRole("link", { name: "As I have it" }).click();
  await page.getByRole("heading", { name: "Where it is now" }).waitFor({ timeout: 60_000 });
}

const haul = "1 broccoli\n600 g spinach\n6 bananas\n1 kg apples";

describe("as I have it", () => {
  it("by pointer: all as planned costs nothing, a thing on the counter costs something, and the one move brings it back", async () => {
    const { page, faults, close } = await visit(browser());
    await openWith(page, haul, 4);
    expect(await told(page).textContent()).toContain("Say where at least one thing is");
    await page.getByRole("button", { name: "All as in the plan" }).click();
    const same = await toldAnew(page);
    expect(await page.getByText("No single move helps any more.").count()).toBe(1);

    await page.getByLabel("Which thing").selectOption({ label: "B Spinach" });
    await page.getByRole("button", { name: "Spinach here: Counter" }).click();
    const worse = await toldAnew(page, same);
    expect(worse).not.toBe(same);
    const conflicts = page.locator(".conflicts > li");
    expect(await conflicts.first().textContent()).toContain("Spinach");
    expect(await page.getByLabel("Where it is: Spinach").inputValue()).toBe("counter");

    const move = page.locator(".one-move");
    expect(await move.textContent()).toContain("Put spinach where the plan has it");
    await move.getByRole("button").click();
    expect(await toldAnew(page, worse)).toBe(same);
    expect(faults).toEqual([]);
    await close();
  });

  it("takes up what is said thing by thing and of vents, says what was not said, and keeps it", async () => {
    const { page, close } = await visit(browser());
    await openWith(page, haul, 4);
    await page.getByLabel("Where it is: Bananas").selectOption("shelf");
    await toldAnew(page);
    await page.getByLabel("Wrap: Bananas").selectOption({ label: "in a closed plastic bag" });
    await page
      .getByRole("group", { name: "How the vents are set" })
      .getByRole("combobox")
      .first()
      .selectOption("closed");
    await toldAnew(page, "x");
    expect(await page.locator(".aside-lines").textContent()).toContain("Put where a plan would put them");
    await page.reload();
    await page.getByLabel("Wrap: Bananas").waitFor({ timeout: 60_000 });
    expect(await page.getByLabel("Wrap: Bananas").inputValue()).toBe("closed film bag");
    await close();
  });

  it("by keyboard alone", async () => {
    const { page, faults, close } = await visit(browser());
    await openWith(page, haul, 4);
    await tabTo(page, page.getByRole("button", { name: "All in the refrigerator" }));
    await page.keyboard.press("Enter");
    const cold = await toldAnew(page);
    await tabTo(page, page.getByLabel("Which thing"));
    await page.keyboard.press("End");
    await tabTo(page, page.getByRole("button", { name: "Apples here: Counter" }));
    await page.keyboard.press("Space");
    await page.getByRole("status").filter({ hasText: "Apples: “Counter”." }).waitFor();
    expect(await toldAnew(page, cold)).not.toBe(cold);
    await tabTo(page, page.getByLabel("Where it is: Broccoli"));
    await page.keyboard.press("End");
    expect(await page.getByLabel("Where it is: Broccoli").inputValue()).toBe("cupboard-lower");
    expect(faults).toEqual([]);
    await close();
  });

  it("by touch on a narrow window: one touch for each thing, and nothing moves under the finger", async () => {
    const { page, close } = await visit(browser(), { viewport: { width: 360, height: 760 }, hasTouch: true });
    await openWith(page, haul, 4);
    const names = ["Broccoli", "Spinach", "Bananas", "Apples"];
    const counter = (name: string) => page.getByRole("button", { name: `${name} here: Counter` });
    await counter("Broccoli").scrollIntoViewIfNeeded();
    const before = await counter("Broccoli").boundingBox();
    for (const name of names) await counter(name).tap();
    const after = await page.getByRole("button", { name: / here: Counter$/ }).boundingBox();
    // What is told above it changes: the browser then holds the button in its place, to the nearest whole pixel of scrolling.
    expect({ ...after, y: 0 }).toEqual({ ...before, y: 0 });
    expect(Math.abs((after?.y ?? 0) - (before?.y ?? 0))).toBeLessThan(1);
    for (const name of names)
      expect(await page.getByLabel(`Where it is: ${name}`).inputValue()).toBe("counter");
    await toldAnew(page);
    expect(await sideways(page)).toBe(0);
    // Measured all at once: an answer that comes meanwhile may take a control away between two questions.
    const heights = await page
      .locator(".mine")
      .locator("button, select")
      .evaluateAll((controls) => controls.map((control) => control.getBoundingClientRect().height));
    expect(heights.length).toBeGreaterThan(names.length * 2);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
    await close();
  });
});

describe("what would help most", () => {
  it("comes change by change, can be stopped, and a change is taken over", async () => {
    const { page, faults, close } = await visit(browser());
    await haulBox(page).fill("600 g spinach\n900 g romaine\n500 g kale\n300 g arugula");
    await page.getByLabel("People").fill("1");
    await planFor(page, 4);
    await page.getByRole("link", { name: "As I have it" }).click();
    const helps = page.getByRole("region", { name: "What would help most" });
    await helps.getByRole("button", { name: "Work it out", exact: true }).click();
    await helps.getByText(/of \d+ changes tried/).waitFor({ timeout: 90_000 });
    await helps.getByRole("button", { name: "Stop" }).click();
    expect(await helps.getByRole("status").textContent()).toMatch(/^Stopped/u);
    await helps.getByRole("button", { name: "Work it out again" }).click();
    await helps.getByRole("status").filter({ hasText: "changes were tried" }).waitFor({ timeout: 180_000 });
    const rows = helps.locator(".helps-rows > li");
    expect(await rows.count()).toBeGreaterThan(0);
    expect(await rows.first().textContent()).toMatch(/less waste/u);
    await rows.first().getByText("Where this comes from").click();
    expect(await rows.first().locator("details").textContent()).toContain("plans made without and with");
    await helps
      .getByRole("button", { name: /^Do it/u })
      .first()
      .click();
    await helps.getByRole("status").filter({ hasText: "Done." }).waitFor({ timeout: 60_000 });
    expect(faults).toEqual([]);
    await close();
  });
});

const looks = [
  [360, "light", "en"],
  [768, "light", "es"],
  [1920, "dark", "en"],
  [1920, "light", "es"],
  [360, "dark", "es"],
  [768, "dark", "en"],
] as const;

describe("its looks", () => {
  it.each(looks)("axe finds nothing wrong at %i px, %s, %s", async (width, colorScheme, language) => {
    const locale = language === "es" ? "es-MX" : "en-GB";
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, colorScheme, locale });
    await page.getByRole("status").filter({ hasText: "17" }).first().waitFor({ timeout: 90_000 });
    await page.goto(`${page.url().split("#")[0]}#/mine`);
    const cold = language === "es" ? "Todo en el refrigerador" : "All in the refrigerator";
    await page.getByRole("button", { name: cold }).click({ timeout: 60_000 });
    await toldAnew(page);
    await page.locator(".helps button").first().click();
    await page.locator(".helps-rows > li, .helps-none").first().waitFor({ timeout: 180_000 });
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await picture(page, `mine-${width}-${colorScheme}-${language}`);
    await close();
  });
});
