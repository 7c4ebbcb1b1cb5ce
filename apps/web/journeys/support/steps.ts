import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";

export const haulBox = (page: Page): Locator => page.getByRole("textbox", { name: /one thing a line/ });
export const amount = (page: Page): Locator => page.getByRole("textbox", { name: "Amount" });
/** One touch among answers that stand side by side; the words lie over the radio itself. */
export const segment = (page: Page, group: string, name: string): Locator =>
  page.getByRole("group", { name: group }).getByRole("radio", { name, exact: true });
export const planRegion = (page: Page): Locator => page.getByRole("region", { name: "The plan" });

/** Undo and redo, whatever they would do; both are always there. */
export const undoButton = (page: Page): Locator => page.getByRole("button", { name: /^Undo(:|$)/ });
export const redoButton = (page: Page): Locator => page.getByRole("button", { name: /^Redo(:|$)/ });

/** Waits until a plan for this many things stands on the page. */
export async function planFor(page: Page, things: number): Promise<void> {
  const words = things === 1 ? "Worked out for 1 thing." : `Worked out for ${things} things.`;
  await page.getByRole("status").filter({ hasText: words }).waitFor({ timeout: 60_000 });
}

/** How much better the plan could be, once it is known; it comes after everything else. */
export const proofOf = (page: Page): Locator => planRegion(page).locator(".proof");

/** The words of the plan when all of them are there, for comparing one with another: the proof comes last, after the reasons. */
export async function planWords(page: Page): Promise<string | null> {
  await proofOf(page).waitFor({ timeout: 120_000 });
  return planRegion(page).textContent();
}

/** Most stops of the Tab key between any two controls of the page. */
const mostStops = 150;

/** Goes by the Tab key alone until the control is reached; at every stop the focus has to be seen. */
export async function tabTo(page: Page, target: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  for (let stop = 0; stop < mostStops; stop++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press(key);
    const outline = await page.evaluate(() => {
      const { activeElement } = document;
      if (!activeElement || activeElement === document.body) return undefined;
      const { outlineStyle, outlineWidth } = getComputedStyle(activeElement);
      return {
        where: activeElement.outerHTML.slice(0, 80),
        outlineStyle,
        width: Number.parseFloat(outlineWidth),
      };
    });
    if (outline === undefined) continue;
    expect(outline.outlineStyle, outline.where).not.toBe("none");
    expect(outline.width, outline.where).toBeGreaterThanOrEqual(2);
  }
  throw new Error(`The Tab key does not reach ${target} within ${mostStops} stops.`);
}

/** Pixels by which the page is wider than its window. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Puts a text in place of the haul the way a person does who has copied it elsewhere. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await haulBox(page).focus();
  await page.keyboard.press("Control+A");
  await page.keyboard.press("Control+V");
}
