import { readFileSync } from "node:fs";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { atRest, putCopy } from "./support/kept.js";
import { haulBox, planFor, planRegion, sideways, tabTo, undoButton } from "./support/steps.js";

const browser = useBrowser();
const address = (page: Page, screen: string) => `${page.url().split("#")[0]}#/${screen}`;
const toSettings = async (page: Page) => {
  await page.getByRole("link", { name: /^(Settings|Ajustes)$/ }).click();
  await page.getByRole("heading", { name: /^(Settings|Ajustes)$/ }).waitFor();
};

/** Saves everything as a file and gives its text. */
async function saved(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save it all as a file" }).click(),
  ]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") };
}

const choose = (page: Page, name: string, text: string) =>
  page
    .getByLabel("Open a saved file")
    .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });

describe("words and measures", () => {
  it("change the language, the units apart, and whose dates and numbers", async () => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, 17);
    await toSettings(page);
    await page.getByText(/Like this: Saturday,? 13 June 2026, 1,234\.5\./).waitFor();
    await page.getByLabel("Dates and numbers as in").selectOption("US");
    await page.getByText("Like this: Saturday, June 13, 2026, 1,234.5.").waitFor();
    await page.getByLabel("Temperatures").selectOption("us");
    await page.getByLabel("Language").selectOption("es");
    await page.getByRole("heading", { name: "Ajustes" }).waitFor();
    expect(await page.locator("html").getAttribute("lang")).toBe("es");
    await page.getByLabel("Fechas y números como en").selectOption("ES");
    await page.getByText("Así: sábado, 13 de junio de 2026, 1234,5.").waitFor();
    await page.getByLabel("Idioma").selectOption("en");
    await page.goto(address(page, "unpack"));
    await planFor(page, 17);
    const plan = await planRegion(page).textContent();
    expect(plan).toContain("°F");
    // Warnings of food safety tell both; a place tells its own in one.
    const place = await page.getByRole("article").first().textContent();
    expect(place).toContain("°F");
    expect(place).not.toContain("°C");
    expect(plan).toMatch(/\d\s?kg/);
    expect(faults).toEqual([]);
    await close();
  });
});

describe("the worked example in another language", () => {
  it("is opened anew while nobody has touched it, and left alone once somebody has", async () => {
    const { page, faults, close } = await visit(browser());
    const box = page.getByRole("textbox").first();
    const english = await box.inputValue();
    await toSettings(page);
    await page.getByLabel("Language").selectOption("es");
    await page.goto(address(page, "unpack"));
    await expect.poll(() => box.inputValue()).toMatch(/aguacates/);
    await planRegion(page)
      .or(page.getByRole("region", { name: "El plan" }))
      .waitFor();
    await box.fill(`${await box.inputValue()}\n2 mangos`);
    await toSettings(page);
    await page.getByLabel("Idioma").selectOption("en");
    await page.goto(address(page, "unpack"));
    await haulBox(page).waitFor();
    expect(await box.inputValue()).toMatch(/aguacates[\s\S]*2 mangos$/);
    // One step back for the language, one for what was written, one for the language before.
    await undoButton(page).click();
    await page.getByRole("button", { name: /^Deshacer/ }).click();
    await page.getByRole("button", { name: /^Deshacer/ }).click();
    await expect.poll(() => box.inputValue()).toBe(english);
    expect(faults).toEqual([]);
    await close();
  });
});

describe("the file to take along", () => {
  it("holds everything and is opened again after asking, in another browser too; and that can be undone", async () => {
    const first = await visit(browser());
    await haulBox(first.page).fill("2 kg apples\n3 avocados");
    await first.page.getByLabel("People").fill("3");
    await toSettings(first.page);
    const file = await saved(first.page);
    expect(file.name).toBe("keepwright-2026-06-13.json");
    expect(JSON.parse(file.text)).toMatchObject({
      format: "keepwright-kept",
      version: 1,
      entered: { version: 5, text: "2 kg apples\n3 avocados", people: 3 },
    });
    await first.close();

    const { page, requests, faults, close } = await visit(browser());
    await planFor(page, 17);
    await toSettings(page);
    await choose(page, "mine.json", file.text);
    const question = page.getByRole("dialog");
    await question.getByText("In the file: a list of 2 lines, 0 kitchens of your own.").waitFor();
    await question.getByRole("button", { name: "Leave as it is" }).click();
    await page.getByText("Your list has 16 lines.").waitFor();
    await choose(page, "mine.json", file.text);
    await question.getByRole("button", { name: "Replace" }).click();
    await page.getByText("Your list has 2 lines.").waitFor();
    await undoButton(page).click();
    await page.getByText("Your list has 16 lines.").waitFor();
    const own = new URL(page.url()).origin;
    // The page's own parts may still be on their way; nothing is sent.
    for (const { url, method, body } of requests) {
      expect(method, url).toBe("GET");
      expect(body, url).toBeNull();
      expect(url.startsWith("blob:") || new URL(url).origin === own, url).toBe(true);
    }
    expect(faults).toEqual([]);
    await close();
  });

  it("names what cannot be used by field, value and remedy, and what is no such file at all", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await toSettings(page);
    const entered = {
      text: "2 kg apples",
      people: 40,
      kitchens: [{ key: "own-1", kitchen: { version: 1 } }],
    };
    await choose(page, "mended.json", JSON.stringify({ version: 1, entered }));
    const question = page.getByRole("dialog");
    await question.getByText("people: 40. Write a whole number from 1 to 12.").waitFor();
    await question.getByText(/kitchens\[1\]\.kitchen\.name: there is nothing\. Write a text there/).waitFor();
    await picture(page, "settings-replace");
    await page.keyboard.press("Escape");
    for (const [name, text, fault] of [
      ["cut.json", '{"entered": {"te', "it cannot be read as JSON"],
      ["other.json", '{"version": 1, "places": []}', "there is no list in it"],
    ] as const) {
      await choose(page, name, text);
      await page
        .getByRole("alert")
        .filter({ hasText: `“${name}” is not opened: ${fault}` })
        .waitFor();
    }
    await close();
  });
});

describe("forgetting everything", () => {
  it("asks first, leaves nothing on the device, and can be undone until the page is closed", async () => {
    const { page, faults, close } = await visit(browser());
    await haulBox(page).fill("1 kg pears");
    await planFor(page, 1);
    await atRest(page);
    await toSettings(page);
    const open = page.getByRole("button", { name: "Forget everything" });
    await tabTo(page, open);
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").getByRole("button", { name: "Keep it" }).click();
    await page.getByText("Your list has one line.").waitFor();
    await open.click();
    await page.getByRole("button", { name: "Forget it all" }).click();
    await page.getByRole("status").filter({ hasText: "Everything is forgotten." }).waitFor();
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await page.getByRole("button", { name: "Undo: everything forgotten" }).click();
    await page.getByText("Your list has one line.").waitFor();
    await page.getByRole("button", { name: "Undo: “1 kg pears” rewritten" }).waitFor();
    await open.click();
    await page.getByRole("button", { name: "Forget it all" }).click();
    await page.getByRole("status").filter({ hasText: "Everything is forgotten." }).waitFor();
    await page.reload();
    await page.goto(address(page, "unpack"));
    await planFor(page, 17);
    await page.getByRole("button", { name: "Undo", exact: true }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });
});

describe("the settings", () => {
  it.each(
    (["light", "dark"] as const).flatMap((scheme) =>
      (["en-GB", "es-MX"] as const).map((locale) => [scheme, locale] as const),
    ),
  )("have nothing wrong by axe, %s, %s, at 360 and 1920 px", async (colorScheme, locale) => {
    const { page, close } = await visit(browser(), { colorScheme, locale });
    await putCopy(page, '{"text": "2 kg apples", "people": 40}');
    await page.reload();
    await toSettings(page);
    await page.getByRole("heading", { name: /^(Set aside|Apartado)$/ }).waitFor();
    for (const width of [360, 768, 1920]) {
      await page.setViewportSize({ width, height: 900 });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      if (colorScheme === "light") await picture(page, `settings-${width}-${locale.slice(0, 2)}`);
    }
    await close();
  });
});
