import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { planFor, planRegion, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const questions = ["refrigerator", "drawers", "door", "cold", "room", "air", "cupboard", "cellar", "wraps"];

/** Questions with everything that any of them has: pictures, rows of answers, readings, ticks. */
const looked = ["drawers", "cold"];

const heading = (page: Page, name: string) => page.getByRole("heading", { name, level: 2 });
const link = (page: Page, name: string) => page.getByRole("link", { name, exact: true });
const option = (page: Page, name: string | RegExp) => page.getByRole("radio", { name });

async function begin(page: Page): Promise<void> {
  await planFor(page, 17);
  await page.getByRole("navigation", { name: "Screens" }).getByRole("link", { name: "My kitchen" }).click();
  await page.getByRole("button", { name: "Describe my kitchen" }).click();
  await heading(page, "How tall is your refrigerator?").waitFor();
}

async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)} ${nodes[0]?.failureSummary}`);
}

describe("a kitchen described by answering questions", () => {
  it("by touch: every question answered, the kitchen drawn and planned with", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await begin(page);
    let touches = 2;
    const tap = async (target: ReturnType<typeof link>) => {
      await target.tap();
      touches += 1;
    };
    const next = () => tap(link(page, "Next"));
    await tap(option(page, "Taller than I am"));
    await next();
    await tap(option(page, "2 drawers"));
    await tap(
      page.getByRole("group", { name: "Drawer 1" }).getByRole("radio", { name: "A vent that opens" }),
    );
    await tap(page.getByRole("group", { name: "Drawer 2" }).getByRole("radio", { name: "No vent" }));
    await next();
    await tap(option(page, /^No$/));
    await next();
    await tap(option(page, "Milk turns before its date"));
    await next();
    await tap(option(page, /^Hot/));
    await next();
    await tap(option(page, /^Damp/));
    await next();
    await tap(option(page, "Yes, as warm as the kitchen"));
    await next();
    await tap(page.getByRole("checkbox", { name: "A cellar" }));
    await next();
    await tap(page.getByRole("checkbox", { name: "Foil" }));
    await tap(link(page, "That will do, use it now"));
    // A question takes two touches; a minute holds them easily.
    expect(touches).toBeLessThanOrEqual(24);
    await heading(page, "My kitchen").waitFor();
    expect(await page.getByRole("link", { name: /How many drawers does it have\? 2 drawers/ }).count()).toBe(
      1,
    );
    expect(
      await page.getByText(/The refrigerator is taken to be at 7.4 °C. Set it to 4.4 °C or less/).count(),
    ).toBe(1);
    const drawn = await page.getByRole("region", { name: "How it is drawn" }).textContent();
    expect(drawn).toContain("Left drawer");
    expect(drawn).toContain("Cellar");
    expect(drawn).not.toContain("Refrigerator door");
    expect(await sideways(page)).toBe(0);
    await link(page, "To the plan").tap();
    await planFor(page, 17);
    const places = await planRegion(page).getByRole("article").getByRole("heading").allTextContents();
    expect(places).toContain("Cellar");
    expect(places).not.toContain("Refrigerator door");
    expect(faults).toEqual([]);
    await close();
  });

  it("by keyboard: left after one answer, in use at once, and one answer corrected straight from the list", async () => {
    const { page, faults, close } = await visit(browser());
    await begin(page);
    const { keyboard } = page;
    await tabTo(page, option(page, /^I don’t know/));
    await keyboard.press("ArrowDown");
    expect(await option(page, "Up to my hip").isChecked()).toBe(true);
    await tabTo(page, link(page, "That will do, use it now"));
    await keyboard.press("Enter");
    await heading(page, "My kitchen").waitFor();
    expect(await page.getByLabel("Kitchen most like yours").inputValue()).toBe("own-1");
    await tabTo(page, page.getByRole("link", { name: /How cold is it inside\? not known/ }));
    await keyboard.press("Enter");
    await heading(page, "How cold is it inside?").waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("How cold is it inside?");
    await tabTo(page, option(page, /^I don’t know/));
    await keyboard.press("ArrowUp");
    await tabTo(page, page.getByRole("textbox", { name: "The reading" }));
    await keyboard.type("3.5");
    await page.goBack();
    await page.getByRole("link", { name: /How cold is it inside\? read as 3.5 °C/ }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it("a reading that cannot be is named with what would do, stays as typed, and the plan does without it", async () => {
    const { page, faults, close } = await visit(browser());
    await begin(page);
    await page.goto(`${page.url().split("#")[0]}#/kitchen/cold`);
    await option(page, "I read a thermometer").check({ force: true });
    const reading = page.getByRole("textbox", { name: "The reading" });
    await reading.fill("60");
    await page.getByText(/“60” cannot be right: write a number from -5 to 45 °C/).waitFor();
    expect(await reading.getAttribute("aria-invalid")).toBe("true");
    await page.getByRole("radio", { name: "°F" }).check({ force: true });
    // 60 °F are 15.6 °C, which is colder than the room: a refrigerator too warm, but one.
    await page.getByText(/“60” cannot be/).waitFor({ state: "detached" });
    await page.reload();
    expect(await reading.inputValue()).toBe("60");
    expect(await page.getByRole("radio", { name: "°F" }).isChecked()).toBe(true);
    await reading.fill("90");
    await page.getByText(/would be at 32.2 °C in a kitchen of 20 °C/).waitFor();
    await link(page, "That will do, use it now").click();
    await page.getByRole("alert").getByRole("link", { name: "How cold is it inside?" }).waitFor();
    await link(page, "To the plan").click();
    await planFor(page, 17);
    expect(faults).toEqual([]);
    await close();
  });

  it("several are kept, named, copied, chosen and, after a question, removed", async () => {
    const { page, close } = await visit(browser());
    await begin(page);
    await link(page, "That will do, use it now").click();
    const name = page.getByRole("textbox", { name: "Name of this kitchen" });
    await name.fill(" ");
    await page.getByText(/still called “My kitchen”/).waitFor();
    await name.fill("At the lake");
    await page.getByRole("button", { name: "Make a copy" }).click();
    const select = page.getByLabel("Kitchen most like yours");
    expect(await select.locator("optgroup").first().locator("option").allTextContents()).toEqual([
      "At the lake",
      "At the lake (copy)",
    ]);
    await page.getByRole("button", { name: "Remove this kitchen" }).click();
    await page.getByRole("dialog", { name: "Remove “At the lake (copy)”?" }).getByText("Keep it").click();
    expect(await select.inputValue()).toBe("own-2");
    await page.getByRole("button", { name: "Remove this kitchen" }).click();
    await page.getByRole("dialog").getByText("Remove it").click();
    expect(await select.inputValue()).toBe("ordinary");
    await select.selectOption("own-1");
    await page.reload();
    expect(await name.inputValue()).toBe("At the lake");
    await close();
  });

  it("days away and portions are told here and at the first screen, and the plan heeds them", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await page.getByText("Portions, and days away").click();
    await page.getByRole("checkbox", { name: /14/ }).check({ force: true });
    await page.getByRole("status").filter({ hasText: "Working it out" }).waitFor();
    await planFor(page, 17);
    await page.getByRole("navigation", { name: "Screens" }).getByRole("link", { name: "My kitchen" }).click();
    expect(await page.getByRole("checkbox", { name: /14/ }).isChecked()).toBe(true);
    expect(await page.getByLabel(/Portions a person/).inputValue()).toBe("5");
    await close();
  });
});

describe.each([
  ["en", "light"],
  ["es", "dark"],
] as const)("every question in %s, %s", (locale, colorScheme) => {
  it.each([360, 768, 1920])("is without fault for axe and fits at %i px", async (width) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.locator("#plan").waitFor();
    await page.goto(`${page.url().split("#")[0]}#/kitchen`);
    await page.locator(".my-kitchen .main-button").click();
    for (const question of width === 360 ? questions : looked) {
      await page.goto(`${page.url().split("#")[0]}#/kitchen/${question}`);
      await page.locator(".question-screen input").first().waitFor();
      if (question === "drawers") await page.locator(".card input").nth(2).check({ force: true });
      if (question === "cold") {
        await page.locator(".card input").nth(3).check({ force: true });
        await page.getByRole("textbox").fill("60");
      }
      if (question === "cellar")
        for (const index of [0, 1]) await page.locator(".card input").nth(index).check({ force: true });
      if (looked.includes(question)) expect(await violations(page), question).toEqual([]);
      expect(await sideways(page), question).toBe(0);
      await picture(page, `kitchen-${question}-${width}-${locale}`);
    }
    await page.goto(`${page.url().split("#")[0]}#/kitchen`);
    await page.locator(".answers").waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await picture(page, `kitchen-${width}-${locale}`);
    await close();
  });
});
