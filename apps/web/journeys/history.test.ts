import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { atRest } from "./support/kept.js";
import { haulBox, paste, planFor, redoButton, sideways, tabTo, undoButton } from "./support/steps.js";

const browser = useBrowser();

/** Waits until the button says so. */
const says = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).waitFor();

describe("undo", () => {
  it("of a paste tells how many lines it is about; lines of the same words have buttons of their own names", async () => {
    const { page, close } = await visit(browser());
    await paste(page, "3 avocados, 1 ripe\n2 kg apples\n2 kg apples\n1 cucumber");
    await says(page, "Undo: “3 avocados, 1 ripe” and more, 4 lines in all, rewritten");
    await planFor(page, 5);
    const buttons = page.locator(".understood .line-buttons button");
    const names = await buttons.evaluateAll((all) => all.map((button) => button.getAttribute("aria-label")));
    expect(names).toHaveLength(5);
    expect(new Set(names).size).toBe(5);
    expect(names[0]).toMatch(/^Change 3 avocados, 1 ripe, number 1: .+/);
    expect(names[4]).toBe("Change 1 cucumber");
    await close();
  });

  it("is named by what it would undo, letters typed in one go together, and survives a reload", async () => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, 17);
    await haulBox(page).fill("");
    await haulBox(page).pressSequentially("2 kg apples");
    await says(page, "Undo: “2 kg apples” typed");
    await planFor(page, 1);
    await page.getByLabel("People").fill("3");
    await says(page, "Undo: people changed");
    await atRest(page);
    await page.reload();
    await says(page, "Undo: people changed");
    await undoButton(page).click();
    await page.getByRole("status").filter({ hasText: "Undone: people changed." }).waitFor();
    expect(await page.getByLabel("People").inputValue()).toBe("4");
    await undoButton(page).click();
    await says(page, "Redo: “2 kg apples” typed");
    expect(await haulBox(page).inputValue()).toBe("");
    await undoButton(page).click();
    await planFor(page, 17);
    await redoButton(page).click();
    await redoButton(page).click();
    await page.getByRole("status").filter({ hasText: "Done again: “2 kg apples” typed." }).waitFor();
    expect(await haulBox(page).inputValue()).toBe("2 kg apples");
    expect(faults).toEqual([]);
    await close();
  });

  it("goes by the keys wherever no text is typed, and leaves a field its own letters", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await haulBox(page).fill("1 kg pears");
    await says(page, "Undo: “1 kg pears” rewritten");
    await haulBox(page).press("End");
    await page.keyboard.type("!");
    await page.keyboard.press("Control+Z");
    expect(await haulBox(page).inputValue()).toBe("1 kg pears");
    await tabTo(page, page.getByRole("link", { name: "Settings" }), "Shift+Tab");
    while ((await haulBox(page).inputValue()).startsWith("1 kg")) {
      await page.keyboard.press("Control+Z");
      await page.waitForTimeout(50);
    }
    await planFor(page, 17);
    await page.keyboard.press("Control+Shift+Z");
    await page
      .getByRole("status")
      .filter({ hasText: /^Done again:/ })
      .waitFor();
    expect(await haulBox(page).inputValue()).toContain("1 kg pears");
    await close();
  });

  it("by the keyboard alone keeps the focus, also when nothing is left to undo", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await page.getByLabel("People").fill("3");
    await tabTo(page, undoButton(page), "Shift+Tab");
    await page.keyboard.press("Enter");
    await says(page, "Undo");
    expect(await undoButton(page).getAttribute("aria-disabled")).toBe("true");
    expect(await undoButton(page).evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await says(page, "Redo");
    expect(await page.getByLabel("People").inputValue()).toBe("3");
    await close();
  });

  it("is reached on every screen at 360 px, in both languages, by large targets that crowd nothing", async () => {
    const { page, close } = await visit(browser(), { viewport: { width: 360, height: 740 }, hasTouch: true });
    await planFor(page, 17);
    await haulBox(page).fill("a bunch of cilantro and three avocados, one of which is ripe");
    for (const language of ["en", "es"]) {
      await page.goto(`${page.url().split("#")[0]}#/settings`);
      await page.getByLabel(language === "en" ? "Language" : /Language|Idioma/).selectOption(language);
      for (const screen of ["unpack", "kitchen", "mine", "ask", "settings"]) {
        await page.goto(`${page.url().split("#")[0]}#/${screen}`);
        const undo = page.getByRole("button", { name: language === "en" ? /^Undo:/ : /^Deshacer:/ });
        await undo.waitFor();
        const box = await undo.boundingBox();
        expect(box?.height).toBeGreaterThanOrEqual(44);
        expect(box?.width).toBeGreaterThanOrEqual(44);
        expect(await sideways(page)).toBe(0);
      }
      await picture(page, `undo-360-${language}`);
    }
    await close();
  });
});

describe("two tabs", () => {
  it("show what is done in one another, and undo it", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await planFor(other, 17);
    await haulBox(page).fill("1 kg pears");
    await planFor(other, 1);
    expect(await haulBox(other).inputValue()).toBe("1 kg pears");
    await other.getByLabel("People").fill("2");
    await says(page, "Undo: people changed");
    expect(await page.getByLabel("People").inputValue()).toBe("2");
    expect(await haulBox(page).inputValue()).toBe("1 kg pears");
    await undoButton(other).click();
    await says(page, "Undo: “1 kg pears” rewritten");
    await close();
  });

  it("that typed over one another lose nothing and say so", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await haulBox(page).fill("1 kg pears");
    await atRest(page);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await says(other, "Undo: “1 kg pears” rewritten");
    // The first tab is held up, so that it has not heard of the other when its own letters come.
    const heldUp = page.evaluate(() => {
      const box = document.querySelector("textarea");
      const start = performance.now();
      while (performance.now() - start < 4000);
      Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, "value")?.set?.call(box, "2 kg apples");
      box?.dispatchEvent(new Event("input", { bubbles: true }));
    });
    await haulBox(other).fill("3 figs");
    await heldUp;
    await atRest(page);
    await atRest(other);
    for (const tab of [page, other])
      await tab.getByRole("status").filter({ hasText: "Another tab changed the list" }).waitFor();
    await other.close();
    const reached = new Set([await haulBox(page).inputValue()]);
    for (let turn = 0; turn < 3; turn++) {
      await undoButton(page).click();
      await page.waitForTimeout(200);
      reached.add(await haulBox(page).inputValue());
    }
    expect(reached).toContain("2 kg apples");
    expect(reached).toContain("3 figs");
    await close();
  });
});
