import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, planWords } from "./support/steps.js";

const browser = useBrowser();
const example = haulOf("haul.txt");
function haulOf(file: string): string {
  return readFileSync(new URL(`../../../examples/market-saturday/${file}`, import.meta.url), "utf8");
}
const things = 17;

describe("a first visit", () => {
  it("opens the worked example, says that it is one, and has it planned", async () => {
    const { page, faults, close } = await visit(browser());
    expect(await haulBox(page).inputValue()).toBe(example);
    expect(
      await page
        .getByText("This is a worked example: the household and what it brought home are invented.")
        .isVisible(),
    ).toBe(true);
    await planFor(page, things);
    const plan = planRegion(page);
    for (const name of ["Do now", "Where each thing goes", "Day by day", "How long each will last, and why"])
      expect(await plan.getByRole("heading", { name }).count(), name).toBe(1);
    expect(await plan.locator(".lives > li").count()).toBeGreaterThanOrEqual(things);
    expect(faults).toEqual([]);
    await close();
  });

  it("is in Spanish where the device is, said to be invented, and is opened so again after a list of one's own", async () => {
    const { page, faults, close } = await visit(browser(), { locale: "es-MX" });
    const box = page.getByRole("textbox", { name: /una cosa por línea/i });
    await page.locator(".lives > li").first().waitFor({ timeout: 60_000 });
    expect(await box.inputValue()).toBe(haulOf("haul.es.txt"));
    expect(await page.getByText("el hogar y lo que llegó a casa son inventados").isVisible()).toBe(true);
    expect(await page.locator(".understood .asked").count()).toBe(0);
    expect(await page.locator(".lines > li").count()).toBe(things);
    await box.fill("2 kg de papas");
    await page.getByRole("button", { name: "Abrir el ejemplo" }).click();
    expect(await box.inputValue()).toBe(haulOf("haul.es.txt"));
    expect(faults).toEqual([]);
    await close();
  });

  it("draws every place of the kitchen with its litres, and every lot with a letter of its own", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, things);
    const places = planRegion(page).getByRole("article");
    expect(await places.count()).toBe(7);
    for (const place of await places.all()) {
      const name = await place.getByRole("heading").textContent();
      const drawing = place.getByRole("img", { name: new RegExp(`^${name}: .* of \\d+ L taken`) });
      expect(await drawing.count(), name).toBe(1);
    }
    const letters = await page.locator(".entries .swatch text").allTextContents();
    expect(letters.length).toBeGreaterThanOrEqual(things);
    expect(new Set(letters).size).toBe(letters.length);
    await close();
  });

  it("draws all places to one scale: the areas stand to one another as the litres", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, things);
    const drawn = await page.locator("article .drawing").evaluateAll((drawings) =>
      drawings.map((drawing) => {
        const rim = drawing.querySelector(".rim")?.getBoundingClientRect();
        const litres = Number(/of (\d+) L/.exec(drawing.getAttribute("aria-label") ?? "")?.[1]);
        return rim ? (rim.width * rim.height) / litres : 0;
      }),
    );
    for (const perLitre of drawn) expect(perLitre / (drawn[0] ?? 1)).toBeCloseTo(1, 2);
    await close();
  });

  it("gives the same plan for the same haul, in another browser too", async () => {
    const first = await visit(browser());
    await planFor(first.page, things);
    const second = await visit(browser());
    await planFor(second.page, things);
    expect(await planWords(second.page)).toBe(await planWords(first.page));
    await first.close();
    await second.close();
  });

  it.each([
    [360, "light"],
    [360, "dark"],
    [768, "light"],
    [1920, "light"],
    [1920, "dark"],
  ] as const)("is pictured at %i px, %s", async (width, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, colorScheme });
    await planFor(page, things);
    await picture(page, `first-visit-${width}-${colorScheme}`);
    await close();
  });
});

describe("the page as a screen reader has it", () => {
  it("names its regions and puts headings in order", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, things);
    for (const name of ["What came home", "What was understood", "The kitchen and who eats", "The plan"])
      expect(await page.getByRole("region", { name, exact: true }).count(), name).toBe(1);
    expect(await page.getByRole("main").count()).toBe(1);
    const levels = await page
      .getByRole("heading")
      .evaluateAll((headings) => headings.map((heading) => Number(heading.tagName.slice(1))));
    expect(levels[0]).toBe(1);
    levels.slice(1).forEach((level, index) => {
      expect(level - (levels[index] ?? 1), `heading ${index + 2}`).toBeLessThanOrEqual(1);
    });
    await close();
  });

  it("announces that it works and that it is done, and how many answers are wanted", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, things);
    await haulBox(page).fill("2 kg apples\n3 zorbles");
    await page.getByRole("status").filter({ hasText: "Working it out" }).waitFor();
    await page.getByRole("status").filter({ hasText: "2 things. One needs an answer." }).waitFor();
    await planFor(page, 1);
    expect(await planRegion(page).getAttribute("aria-busy")).toBe("false");
    await close();
  });
});
