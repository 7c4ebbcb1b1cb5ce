import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { amount, haulBox, planFor, segment, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const nameBox = (page: Page) => page.getByRole("combobox", { name: "Add one by name" });
const suggestion = (page: Page, name: string | RegExp) => page.getByRole("option", { name });

async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)} ${nodes[0]?.failureSummary}`);
}

describe("a word that means two kinds where the reader is", () => {
  it("is planned as what it usually means there; the kinds are one touch each, and all else is one touch away", async () => {
    const { page, faults, close } = await visit(browser(), { ...phone, locale: "es-MX" });
    const box = page.getByRole("textbox", { name: /una cosa por línea/ });
    await page.getByRole("button", { name: "Escribir la mía" }).tap();
    await box.fill("6 plátanos");
    await box.blur();
    await page.getByRole("status").filter({ hasText: "Calculado para 1 cosa" }).waitFor();
    const line = page.locator(".line.asked");
    const offered = await line.getByRole("button").allTextContents();
    expect(offered).toEqual(["Cambiar", "plátanos", "plátanos machos", "Está bien así", "Dejarlo fuera"]);
    expect(await line.getByRole("textbox").count()).toBe(0);
    expect(
      await line.getByRole("button", { name: "plátanos", exact: true }).getAttribute("aria-pressed"),
    ).toBe("true");
    await line.getByRole("button", { name: "Cambiar 6 plátanos" }).tap();
    expect(await line.getByRole("textbox").count()).toBe(1);
    expect(await page.locator(".line.asked").count()).toBe(1);
    await line.getByRole("button", { name: "plátanos machos", exact: true }).tap();
    expect(await page.locator(".line.asked").count()).toBe(0);
    expect(await page.locator(".line .read-as").first().textContent()).toContain("plátanos machos");
    expect(faults).toEqual([]);
    await close();
  });
});

describe("adding by name", () => {
  it("by keyboard: arrows choose, Enter adds, Escape closes, and the box says what it points at", async () => {
    const { page, faults, close } = await visit(browser());
    await haulBox(page).fill("2 kg apples");
    await planFor(page, 1);
    const { keyboard } = page;
    await tabTo(page, nameBox(page));
    await keyboard.type("brocoli");
    await suggestion(page, /^broccoli/)
      .first()
      .waitFor();
    expect(await nameBox(page).getAttribute("aria-expanded")).toBe("true");
    await keyboard.press("ArrowDown");
    const pointed = await nameBox(page).getAttribute("aria-activedescendant");
    expect(await page.locator(`[id="${pointed}"]`).getAttribute("aria-selected")).toBe("true");
    await keyboard.press("Escape");
    expect(await page.getByRole("listbox", { name: "Add one by name" }).count()).toBe(0);
    expect(await nameBox(page).inputValue()).toBe("brocoli");
    await keyboard.type(" ");
    await keyboard.press("Backspace");
    await keyboard.press("Enter");
    await page
      .getByRole("status")
      .filter({ hasText: /Added: broccoli/ })
      .waitFor();
    expect(await haulBox(page).inputValue()).toBe("2 kg apples\nbroccoli");
    await planFor(page, 2);
    expect(faults).toEqual([]);
    await close();
  });

  it("by touch: a Spanish name brings the kind, its amount and state are changed in a touch or two each", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await page.getByRole("button", { name: "Put in your own" }).tap();
    await nameBox(page).tap();
    await nameBox(page).fill("aguac");
    await suggestion(page, /avocados/).tap();
    await planFor(page, 1);
    await page.getByRole("button", { name: "Change avocados" }).tap();
    const before = Number(await amount(page).inputValue());
    await page.getByRole("button", { name: "A little more" }).tap();
    expect(Number(await amount(page).inputValue())).toBe(before + 1);
    await segment(page, "Ripeness", "ripe").tap();
    await segment(page, "Bought or picked", "3 days ago").tap();
    await planFor(page, 1);
    expect(await page.locator(".read-as").textContent()).toMatch(/ripe.*3 days ago/);
    expect(await sideways(page)).toBe(0);
    expect(faults).toEqual([]);
    await picture(page, "unpack-line-360");
    await close();
  });

  it("says when no kind is called so", async () => {
    const { page, close } = await visit(browser());
    await nameBox(page).fill("qqqqxx");
    await page.getByText("No kind is called “qqqqxx” or nearly so.").waitFor();
    await close();
  });
});

describe("an amount", () => {
  it("of two pounds stays two pounds whatever units are shown, and pieces stay pieces of another kind", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("1 kg carrots\n3 avocados");
    await page.getByRole("button", { name: "Change 1 kg carrots" }).click();
    await page.getByLabel("Units").selectOption("us");
    await segment(page, "Unit", "lb").check({ force: true });
    await amount(page).fill("2");
    for (const units of ["metric", "us", "metric"]) {
      await page.getByLabel("Units").selectOption(units);
      expect(await amount(page).inputValue()).toBe("2");
      expect(await segment(page, "Unit", "lb").isChecked()).toBe(true);
    }
    await page.getByRole("button", { name: "Done with 1 kg carrots" }).click();
    await page.getByRole("button", { name: "Change 3 avocados" }).click();
    await page.getByRole("combobox", { name: "Kind" }).selectOption("pear");
    expect(await amount(page).inputValue()).toBe("3");
    expect(await page.locator(".read-as").nth(1).textContent()).toMatch(/^pears, 3 \(about/);
    await close();
  });

  it("that cannot be stays in its box with what would do, and the last one holds", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("1 kg carrots");
    await page.getByRole("button", { name: "Change 1 kg carrots" }).click();
    await amount(page).fill("none");
    await page.getByText("“none” is not an amount.").waitFor();
    expect(await amount(page).inputValue()).toBe("none");
    expect(await page.locator(".read-as").textContent()).toContain("about 1 kg");
    await close();
  });
});

describe.each([
  ["en", "light"],
  ["es", "dark"],
] as const)("typing and what was understood in %s, %s", (locale, colorScheme) => {
  it.each([360, 768, 1920])("is pictured and without fault for axe at %i px", async (width) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.locator(".lines .line").nth(3).waitFor();
    await page
      .locator(".haul-box textarea")
      .fill("2 lb apples\n3 avocados, 1 ripe\nspinach\n3 zorbles\nbag of greens");
    await page.locator(".asked").first().waitFor();
    await page.locator(".line-buttons button").nth(1).click();
    await page.locator(".name-box input").fill("ca");
    await page.locator(".suggestions > div").first().waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await picture(page, `unpack-${width}-${locale}`);
    await close();
  });
});
