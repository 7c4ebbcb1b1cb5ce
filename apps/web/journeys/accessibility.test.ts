import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { amount, haulBox, planFor, sideways } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();

const looks = [
  [360, "light"],
  [360, "dark"],
  [1920, "light"],
  [1920, "dark"],
] as const;

describe("axe finds nothing wrong", () => {
  it.each(looks)("on a first visit at %i px, %s", async (width, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, colorScheme });
    await planFor(page, 17);
    expect(await violations(page)).toEqual([]);
    await close();
  });

  it.each(looks)(
    "with questions, an error and something left out at %i px, %s",
    async (width, colorScheme) => {
      const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, colorScheme });
      await haulBox(page).fill("2 kg apples\n3 zorbles\n-3 onions\nhalf a cut melon\n3 avocados");
      // In a narrow window the fifth line is one touch away.
      if (width === 360) await page.getByText("One below the other, to change").click();
      await page.getByRole("button", { name: "Change 3 avocados", exact: true }).click();
      await page.getByRole("button", { name: "Leave it out" }).last().click();
      await page.getByRole("button", { name: "Change 2 kg apples" }).click();
      await amount(page).first().fill("-5");
      await page.getByLabel("People").fill("many");
      await planFor(page, 2);
      expect(await page.locator("[aria-invalid=true]").count()).toBe(2);
      expect(await violations(page)).toEqual([]);
      await picture(page, `questions-${width}-${colorScheme}`);
      await close();
    },
  );

  it("in the question before everything is cleared", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("2 kg apples");
    await page.getByRole("button", { name: "Start again" }).click();
    await page.getByRole("dialog").waitFor();
    expect(await violations(page)).toEqual([]);
    await picture(page, "clear-question");
    await close();
  });
});

describe("large text and narrow windows", () => {
  it.each([
    [320, 100],
    [320, 200],
    [640, 200],
    [1280, 200],
    [360, 100],
    [768, 100],
  ])("nothing has to be scrolled sideways at %i px with text at %i per cent", async (width, percent) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 800 } });
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = `${size}%`;
    }, percent);
    await haulBox(page).fill("2 kg apples\n3 zorbles\nhalf a cut melon\n6 bananas\n1 head of romaine");
    await planFor(page, 4);
    expect(await sideways(page)).toBe(0);
    await picture(page, `text-${percent}-${width}`);
    await close();
  });
});

describe("the person's own display settings", () => {
  it("forced colours leave the drawing and the controls to be seen", async () => {
    const { page, close } = await visit(browser(), { forcedColors: "active" });
    await planFor(page, 17);
    const rim = page.locator("article .rim").first();
    const [stroke, ink] = await rim.evaluate((element) => [
      getComputedStyle(element).stroke,
      getComputedStyle(document.body).color,
    ]);
    expect(stroke).toBe(ink);
    await picture(page, "forced-colours");
    await close();
  });

  it("nothing moves for those who want no motion", async () => {
    const { page, close } = await visit(browser(), { reducedMotion: "reduce" });
    await planFor(page, 17);
    const behaviour = await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior);
    expect(behaviour).toBe("auto");
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    await close();
  });
});
