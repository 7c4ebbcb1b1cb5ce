import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { sideways } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();

const many = {
  "en-GB":
    "2 kg apples\n3 avocados\n1 head of romaine\n6 bananas\n1 bunch of coriander\n500 g tomatoes\n1.5 kg potatoes\n1 kg onions\n2 bulbs of garlic\n1 bunch of carrots\n2 broccoli\n500 g strawberries\n4 lemons\n1 cucumber\n3 sweet peppers\n1 kg spinach\n400 g mushrooms\n1 cauliflower\n500 g green beans\n1 bunch of parsley\n1 aubergine\n2 courgettes\n4 oranges\n1 kg grapes",
  "es-MX":
    "2 kg manzanas\n3 aguacates\n1 lechuga romana\n6 plátanos\n1 manojo de cilantro\n500 g jitomates\n1.5 kg papas\n1 kg cebollas\n2 cabezas de ajo\n1 manojo de zanahorias\n2 brócolis\n500 g fresas\n4 limones\n1 pepino\n3 pimientos\n1 kg espinacas\n400 g champiñones\n1 coliflor\n500 g ejotes\n1 manojo de perejil\n1 berenjena\n2 calabacitas\n4 naranjas\n1 kg uvas",
};
const one = "electroencefalografistasdesoxirribonucleicosotorrinolaringólogos";
const unclear = `${one}\n-3 cebollas\nmedio melón\n2 kg manzanas`;

/** What was typed has come to rest, and a plan for so many things stands there. */
async function typed(page: Page, text: string, things: number): Promise<void> {
  const box = page.locator(".haul-box textarea");
  await box.fill(text);
  await page
    .locator(".plan-status")
    .filter({ hasText: new RegExp(`\\b${things}\\b`) })
    .waitFor({ timeout: 120_000 });
  await box.blur();
}

describe("states that a person meets", () => {
  it.each([
    [360, "en-GB", "light"],
    [360, "es-MX", "dark"],
    [768, "en-GB", "dark"],
    [768, "es-MX", "light"],
    [1920, "en-GB", "light"],
    [1920, "es-MX", "dark"],
  ] as const)(
    "are pictured at %i px in %s, %s: nothing entered, what is not understood, 24 things, no network for the papers",
    async (width, locale, colorScheme) => {
      const { page, close } = await visit(browser(), {
        viewport: { width, height: 900 },
        locale,
        colorScheme,
      });
      const keep = async (name: string, part?: string) => {
        expect(await sideways(page), name).toBe(0);
        await picture(page, `state-${name}-${width}-${locale.slice(0, 2)}`, part);
      };
      await page.locator(".haul-buttons > .main-button").click();
      await page.locator(".plan").waitFor();
      await keep("empty");
      await typed(page, unclear, 2);
      await page.locator(".kitchen .field input").first().fill("muchos");
      await keep("unclear");
      expect(await violations(page)).toEqual([]);
      await page.locator(".kitchen .field input").first().fill("3");
      await typed(page, many[locale], 24);
      await keep("24");
      await page.locator(".print-button").click();
      await page.locator("dialog.take-along .main-button").first().waitFor();
      await page.context().setOffline(true);
      await page.locator("dialog.take-along .main-button").first().click();
      await page.locator("dialog.take-along .wrong:not(:empty)").waitFor({ timeout: 60_000 });
      await keep("no-network", "dialog.take-along");
      await close();
    },
  );
});
