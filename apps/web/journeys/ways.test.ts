import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, sideways, tabTo } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();
const haul = "1 broccoli\n2 heads of romaine\n6 bananas, green\n1 kg apples\n1 pt strawberries";

const heading = (page: Page): Locator => page.locator("#ways-evening");
const next = (page: Page): Locator => page.getByRole("button", { name: "Next evening" });
const rowNames = (page: Page) => page.locator(".ways-things tbody th").allTextContents();

/** Until the ranges stand there too: nothing more comes. */
const settled = (page: Page) =>
  page.waitForFunction(
    () =>
      document.querySelector(".ways-things") !== null &&
      document.querySelector(".ways-working")?.textContent === "",
    undefined,
    { timeout: 90_000 },
  );

async function openWays(page: Page, lines = haul, things = 5): Promise<void> {
  await haulBox(page).fill(lines);
  await planFor(page, things);
  await page.getByRole("link", { name: "Two ways" }).click();
  await settled(page);
}

/** Grams that a figure shows. */
function grams(words: string | null): number {
  const found = /([\d.]+)\s*(kg|g)/u.exec(words ?? "");
  return found ? Number(found[1]) * (found[2] === "kg" ? 1000 : 1) : 0;
}

describe("the same food, two ways", () => {
  it("by pointer: goes evening by evening, tells each, and adds up; the rows stay in their order", async () => {
    const { page, faults, close } = await visit(browser());
    await openWays(page);
    expect(await heading(page).textContent()).toBe("Evening 1: Sat 13 June");
    const order = await rowNames(page);
    const seen: string[] = [];
    const last = Number(await page.getByRole("slider", { name: "Evening" }).getAttribute("max"));
    for (let step = 0; step < last; step++) {
      await next(page).click();
      const words = (await heading(page).textContent()) ?? "";
      seen.push(words);
      expect(await page.locator(".ways-evenings [aria-live]").textContent()).toContain(words);
      for (const name of ["Unsorted", "Planned"]) {
        const figures = page.getByRole("region", { name, exact: true }).locator("strong");
        const sum = (await figures.allTextContents()).reduce((total, words) => total + grams(words), 0);
        // Each figure is told to two digits, or to a tenth of a kilogram.
        expect(Math.abs(sum - 3000)).toBeLessThan(1200);
      }
    }
    expect(new Set(seen).size).toBe(last);
    expect(seen.at(-1)).toContain("what is left over");
    expect(await rowNames(page)).toEqual(order);
    expect(await next(page).getAttribute("aria-disabled")).toBe("true");
    await next(page).click({ force: true });
    expect(await heading(page).textContent()).toBe(seen.at(-1));
    const gone = page.getByRole("row", { name: /Bananas/ });
    expect(await gone.locator("td").first().textContent()).toMatch(/gone|eaten/);
    await page.getByText("How this is worked out").click();
    expect(await page.locator(".ways details").textContent()).toContain("declared and has no source");
    expect(faults).toEqual([]);
    await close();
  });

  it("by keyboard alone: another habit, the slider, the arrow keys and Page Down of a presenter's remote", async () => {
    const { page, close } = await visit(browser());
    await openWays(page);
    const cold = page.getByRole("radio", { name: "All in the refrigerator, unsorted" });
    await tabTo(page, cold);
    await page.keyboard.press("ArrowDown");
    await settled(page);
    expect(await page.getByRole("radio", { name: "All on the counter, unsorted" }).isChecked()).toBe(true);
    await page.getByRole("row", { name: /Apples.*Counter/ }).waitFor();
    await tabTo(page, page.getByRole("slider", { name: "Evening" }));
    await page.keyboard.press("ArrowRight");
    expect(await heading(page).textContent()).toContain("Evening 2");
    expect(await page.getByRole("slider", { name: "Evening" }).getAttribute("aria-valuetext")).toContain(
      "Evening 2",
    );
    await tabTo(page, next(page));
    await page.keyboard.press("PageDown");
    expect(await heading(page).textContent()).toContain("Evening 3");
    await page.keyboard.press("ArrowLeft");
    expect(await heading(page).textContent()).toContain("Evening 2");
    await page.keyboard.press("Enter");
    expect(await heading(page).textContent()).toContain("Evening 3");
    await close();
  });

  it("by touch: a wipe sideways goes on, one up and down does not", async () => {
    const { page, close } = await visit(browser(), {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    });
    await openWays(page);
    const wipe = (toX: number, toY: number) =>
      page.locator(".ways-sides").evaluate(
        (element, [x, y]) => {
          const finger = (clientX: number, clientY: number) =>
            new Touch({ identifier: 1, target: element, clientX, clientY });
          const [from, to] = [finger(200, 300), finger(x!, y!)];
          const start = { touches: [from], changedTouches: [from], bubbles: true };
          element.dispatchEvent(new TouchEvent("touchstart", start));
          element.dispatchEvent(new TouchEvent("touchend", { changedTouches: [to], bubbles: true }));
        },
        [toX, toY],
      );
    await wipe(60, 310);
    expect(await heading(page).textContent()).toContain("Evening 2");
    await wipe(210, 100);
    expect(await heading(page).textContent()).toContain("Evening 2");
    await wipe(330, 290);
    expect(await heading(page).textContent()).toContain("Evening 1");
    for (const button of await page.locator(".ways-steps button").all())
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await close();
  });

  it("plays by itself when asked, stops when told, and glides only where motion is wanted", async () => {
    const { page, close } = await visit(browser(), { reducedMotion: "reduce" });
    await openWays(page);
    await page.getByRole("button", { name: "Play slowly" }).click();
    await page.waitForFunction(() =>
      document.querySelector("#ways-evening")?.textContent?.includes("Evening 2"),
    );
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByRole("button", { name: "Play slowly" }).waitFor();
    const glide = () =>
      page
        .locator(".fate")
        .first()
        .evaluate((one) => getComputedStyle(one).transitionDuration);
    expect(await glide()).toBe("0s");
    await page.emulateMedia({ reducedMotion: "no-preference" });
    expect(await glide()).toContain("0.7s");
    await close();
  });

  it("sets what the person said of how things lie beside the plan", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(haul);
    await planFor(page, 5);
    await page.getByRole("link", { name: "As I have it" }).click();
    await page.getByLabel("Where it is: Bananas").selectOption("shelf");
    await page.getByRole("link", { name: "Two ways" }).click();
    await page.getByRole("radio", { name: "As I have it" }).check();
    await page.getByRole("columnheader", { name: "As it lies" }).waitFor({ timeout: 60_000 });
    await page.getByRole("row", { name: /Bananas.*Refrigerator shelves/ }).waitFor();
    await close();
  });
});

const looks = [
  [768, "es-MX", "light"],
  [1920, "en-GB", "light"],
  [360, "es-MX", "dark"],
] as const;

describe("as people see it", () => {
  it.each(looks)(
    "at %i px in %s, %s: axe finds nothing, nothing has to be scrolled sideways",
    async (width, locale, colorScheme) => {
      const height = width === 1920 ? 1080 : 800;
      const { page, close } = await visit(browser(), { viewport: { width, height }, locale, colorScheme });
      await planFor17(page);
      await page.goto(`${page.url().split("#")[0]}#/ways`);
      await settled(page);
      await page.locator(".ways-steps button").nth(1).click();
      await page.locator(".ways-steps button").nth(1).click();
      // Bars glide to where they belong.
      await page.waitForFunction(() => document.getAnimations().length === 0);
      expect(await violations(page)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      await picture(page, `ways-${width}-${locale.slice(0, 2)}-${colorScheme}`);
      await close();
    },
  );

  it("with text at 200 per cent at 320 px, and in forced colours", async () => {
    const { page, close } = await visit(browser(), {
      viewport: { width: 320, height: 800 },
      forcedColors: "active",
    });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    await openWays(page);
    await next(page).click();
    expect(await sideways(page)).toBe(0);
    await picture(page, "ways-320-forced");
    await close();
  });
});

/** The worked example of a first visit, in whichever language. */
async function planFor17(page: Page): Promise<void> {
  await page.getByRole("status").filter({ hasText: /\b17 / }).waitFor({ timeout: 90_000 });
}
