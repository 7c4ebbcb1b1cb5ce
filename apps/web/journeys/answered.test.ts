import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, sideways, tabTo, undoButton } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const list = "2 bunches greens\n6 eggs\ntortillas\n2 kg apples";

const asked = (page: Page) => page.locator(".line.asked");
const line = (page: Page, typed: string) => page.locator(".line").filter({ hasText: typed });

describe("what was answered about a word", () => {
  it("by touch: is asked once, with what is no fruit or vegetable left out in one touch, and not in the next list", async () => {
    const { page, faults, close } = await visit(browser(), { ...phone, locale: "en-US" });
    await page.getByRole("button", { name: "Put in your own" }).tap();
    await haulBox(page).fill(list);
    await planFor(page, 1);
    expect(await asked(page).count()).toBe(3);
    // No form, no kinds that share nothing with the word: a plain line and one touch.
    const eggs = line(page, "6 eggs");
    expect(await eggs.textContent()).toContain("Keepwright is about fresh fruit and vegetables alone.");
    expect(await eggs.getByRole("textbox").count()).toBe(0);
    expect(await line(page, "tortillas").locator(".candidates").count()).toBe(0);
    await eggs.getByRole("button", { name: "No fruit or vegetable: leave it out" }).tap();
    await line(page, "tortillas").getByRole("button", { name: "No fruit or vegetable: leave it out" }).tap();
    await line(page, "greens").getByRole("button", { name: "kale", exact: true }).tap();
    await planFor(page, 2);
    expect(await asked(page).count()).toBe(0);
    expect(await line(page, "greens").locator(".read-as").textContent()).toBe("kale, about 1 lb");

    await haulBox(page).fill("1 bunch greens\n12 eggs\n3 figs");
    await planFor(page, 2);
    expect(await asked(page).count()).toBe(0);
    expect(await line(page, "greens").textContent()).toContain("Taken as you answered before.");
    expect(await line(page, "12 eggs").textContent()).toContain("Left out of the plan, as before.");
    expect(await violations(page)).toEqual([]);
    await picture(page, "answered-360-en");

    await page.getByRole("button", { name: "Ask again about 1 bunch greens" }).tap();
    await planFor(page, 1);
    expect(await asked(page).count()).toBe(1);
    await undoButton(page).first().tap();
    await planFor(page, 2);
    expect(await asked(page).count()).toBe(0);
    expect(await sideways(page)).toBe(0);
    expect(faults).toEqual([]);
    await close();
  });

  it("stays on the device, is shown among the settings, and can be asked about again there", async () => {
    const { page, faults, close } = await visit(browser(), { locale: "es-MX" });
    const box = page.getByRole("textbox", { name: /una cosa por línea/ });
    await box.fill("2 calabazas\n6 huevos\n1 kg de jitomates");
    const { keyboard } = page;
    const eggs = line(page, "6 huevos");
    await tabTo(page, eggs.getByRole("button", { name: "No es fruta ni verdura: dejarlo fuera" }));
    await keyboard.press("Enter");
    await eggs.getByText("Queda fuera del plan.").waitFor();
    await page.reload();
    await box.fill("12 huevos\n1 kg de jitomates");
    await line(page, "12 huevos").getByText("Queda fuera del plan, como antes.").waitFor();
    await page.goto(`${page.url().split("#")[0]}#/settings`);
    const known = page.getByRole("region", { name: "Lo que respondiste sobre palabras" });
    await known.waitFor();
    expect(await known.getByRole("listitem").allTextContents()).toEqual([
      "“huevos” queda fuera.Preguntar otra vez",
    ]);
    expect(await violations(page)).toEqual([]);
    await picture(page, "answered-settings-es");
    await tabTo(page, known.getByRole("button", { name: "Preguntar otra vez por “huevos”" }));
    await keyboard.press("Enter");
    await known.waitFor({ state: "detached" });
    expect(faults).toEqual([]);
    await close();
  });

  it.each([
    [768, "en-US", "light"],
    [1920, "es-MX", "dark"],
  ] as const)("is pictured while it is asked at %i px, %s", async (width, locale, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.locator(".haul-box textarea").fill("6 huevos\n3 zorbles\nmilk\n2 bunches greens\n3 figs");
    await asked(page).nth(3).waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await picture(page, `answered-${width}-${locale.slice(0, 2)}`);
    await close();
  });
});
