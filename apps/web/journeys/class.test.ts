import { readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import {
  type ClassDocument,
  type ClassRegion,
  classReader,
  classTopics,
  makeKit,
  seasonItems,
} from "@keepwright/handout";
import { documentPdf, kitOptions } from "@keepwright/paper";
import { ordinaryKitchens } from "@keepwright/planner";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { readPdf } from "../../../packages/paper/test/support/readPdf.js";
import { picture, useBrowser, visit } from "./support/browser.js";
import { sideways, tabTo } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();

declare global {
  interface Window {
    /** Titles of the pages that were to be seen when printing was asked for. */
    printed?: string[][];
  }
}

/** For `before`: printing is noted, with what would be on paper; the dialogue of the browser cannot be answered. */
function notePrinting(): void {
  window.printed = [];
  window.print = () => {
    const pages = [...document.querySelectorAll(".class-page:not(.class-kept) > h3")];
    window.printed?.push(pages.map((title) => title.textContent ?? ""));
  };
}

async function openClass(page: Page, word = "For a class"): Promise<void> {
  await page.getByRole("link", { name: word }).click();
  await page.locator("#class-kinds").waitFor();
}

/** A document without tables has the very bytes that the command line writes; one with a table the same words in the same order. */
async function savesAsThePrintedKit(page: Page, kit: ReturnType<typeof makeKit>): Promise<void> {
  const { title, language } = kit;
  const hasTable = ({ blocks }: ClassDocument) => blocks.some(({ block }) => block === "table");
  const asked = [kit.documents.find((one) => !hasTable(one))!, kit.documents.find(hasTable)!];
  for (const document of asked) {
    const button = page.getByRole("button", { name: `Save as PDF: ${document.title}`, exact: true });
    const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
    expect(download.suggestedFilename()).toBe(`${document.id}.pdf`);
    const bytes = new Uint8Array(readFileSync(await download.path()));
    const wanted = documentPdf(document, kitOptions({ audience: kit.request.audience, title, language }));
    if (hasTable(document)) expect(await readPdf(bytes)).toEqual(await readPdf(wanted.bytes));
    else expect(Buffer.from(bytes).equals(Buffer.from(wanted.bytes))).toBe(true);
  }
}

/** Least height of what is touched: WCAG 2.2, success criterion 2.5.5, 44 CSS pixels. */
const leastTouch = 44;
const tooSmall = (page: Page) =>
  page
    .locator(".class-form :is(button, select, textarea, .field input, .tick, .segments label)")
    .evaluateAll(
      (controls, least) =>
        controls
          .filter((control) => control.getBoundingClientRect().height < least - 0.5)
          .map((control) => control.outerHTML.slice(0, 80)),
      leastTouch,
    );

const made = (page: Page) => page.locator(".class-page").first().waitFor({ timeout: 90_000 });

describe("pages for a class", () => {
  it("by keyboard: the very words that the command line prints, all or one of them to be printed", async () => {
    const { page, faults, close } = await visit(browser(), { before: notePrinting });
    await openClass(page);
    await page.waitForFunction(() => document.querySelector("textarea")?.value.includes("romaine"));
    await page.locator("#class-kinds").fill("bananas\nkale");
    await page.getByRole("textbox", { name: "Length in minutes" }).fill("45");
    await tabTo(page, page.getByRole("checkbox", { name: "How much to buy" }));
    await page.keyboard.press("Space");
    await tabTo(page, page.getByRole("button", { name: "Make the pages" }));
    await page.keyboard.press("Enter");
    await made(page);
    const kit = makeKit(
      {
        version: 1,
        audience: { language: "en", print: "ordinary", paper: "a4", units: "metric" },
        items: ["bananas", "kale"],
        household: { kitchen: ordinaryKitchens.ordinary, people: 4, portions: 5, days: 10 },
        minutes: 45,
        topics: classTopics.filter((topic) => topic !== "buying"),
        seed: 1,
      },
      catalogue(),
    );
    const titles = await page.locator(".class-page > h3").allTextContents();
    expect(titles).toEqual(kit.documents.map(({ title }) => title));
    const seen = (await page.locator(".class").textContent())?.replace(/\s+/gu, "") ?? "";
    const lines = kit.documents.flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.block === "list" ? block.items : block.block === "table" ? block.rows.flat() : [],
      ),
    );
    for (const line of lines) expect(seen).toContain(line.replace(/\s+/gu, ""));
    await page.getByRole("button", { name: "Print them all" }).click();
    await page.getByRole("button", { name: "Print: Kale" }).click();
    await page.waitForFunction(() => window.printed?.length === 2);
    expect(await page.evaluate(() => window.printed)).toEqual([titles, ["Kale"]]);
    await savesAsThePrintedKit(page, kit);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".class button:visible, .masthead:visible").count()).toBe(0);
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page(?!s)/g)!.length).toBeGreaterThanOrEqual(
      titles.length,
    );
    expect(faults).toEqual([]);
    await page.emulateMedia({ media: "screen" });
    expect(await violations(page)).toEqual([]);
    await picture(page, "class-1280-en");
    await close();
  });

  it.each(["es-MX", "es-ES"])(
    "in %s: the names that stand there untouched are understood, and what is wrong is told in Spanish",
    async (locale) => {
      const { page, faults, close } = await visit(browser(), { locale });
      await openClass(page, "Clase");
      await page.waitForFunction(() => document.querySelector("textarea")?.value.includes("\n"));
      const kinds = page.locator("#class-kinds");
      const names = (await kinds.inputValue()).split("\n");
      expect(names).toContain("plátanos");
      const make = page.getByRole("button", { name: "Hacer las hojas" });
      await make.click();
      await made(page);
      expect(await page.locator(".class [role=alert]").count()).toBe(0);
      expect(await page.locator(".class-page[id^=class-answer-]").count()).toBe(names.length);
      expect(await page.locator("#class-answer-banana").count()).toBe(1);
      await kinds.fill("zorbulón");
      await make.click();
      const wrong = page.getByRole("alert").filter({ hasText: "no se conoce ningún producto" });
      await wrong.waitFor({ timeout: 60_000 });
      expect(await wrong.textContent()).not.toMatch(/no kind|Check|Give one/);
      expect(faults).toEqual([]);
      await close();
    },
  );

  it("says what is wrong with a name, and keeps what was typed", async () => {
    const { page, close } = await visit(browser());
    await openClass(page);
    await page.locator("#class-kinds").fill("kale\nzorbulon");
    await page.getByRole("button", { name: "Make the pages" }).click();
    await page.getByRole("alert").filter({ hasText: "zorbulon" }).waitFor({ timeout: 60_000 });
    expect(await page.locator("#class-kinds").inputValue()).toBe("kale\nzorbulon");
    await close();
  });

  it.each([
    [360, "en-NZ", "For a class", "What is in season", "Make the pages", "southern"],
    [1920, "es-MX", "Clase", "Lo que está en temporada", "Hacer las hojas", "northern"],
    [1920, "en-GB", "For a class", "What is in season", "Make the pages", "northern"],
    [360, "es-MX", "Clase", "Lo que está en temporada", "Hacer las hojas", "northern"],
  ])(
    "at %i px, %s: what is in season is chosen and named, with large controls",
    async (width, locale, link, season, make, half) => {
      const { page, faults, close } = await visit(browser(), { viewport: { width, height: 900 }, locale });
      await openClass(page, link);
      await page.locator("#class-kinds").fill("kale\nbananas");
      await picture(page, `class-form-${width}-${locale}`);
      await page.getByRole("radio", { name: season }).check();
      const [month, region] = [page.getByRole("combobox").nth(0), page.getByRole("combobox").nth(1)];
      // The journeys' day is in June.
      expect([await month.inputValue(), await region.inputValue()]).toEqual(["6", half]);
      await page.locator(".class-season input").fill("3");
      expect(await tooSmall(page)).toEqual([]);
      expect(await violations(page)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      await picture(page, `class-season-${width}-${locale}`);
      await page.getByRole("button", { name: make }).click();
      await made(page);
      const reader = classReader(
        { language: "en", print: "ordinary", paper: "a4", units: "metric" },
        catalogue(),
      );
      const kinds = seasonItems(reader, { month: 6, region: half as ClassRegion, kinds: 3 }, 1);
      expect(await page.locator(".class-page[id^=class-answer-]").count()).toBe(3);
      for (const id of kinds) expect(await page.locator(`#class-answer-${id}`).count()).toBe(1);
      const told = (await page.locator(".class-status").textContent())?.toLowerCase() ?? "";
      for (const title of await page.locator(".class-page[id^=class-answer-] > h3").allTextContents())
        expect(told).toContain(title.toLowerCase());
      // What was typed for the other way stays.
      await page.getByRole("radio").first().check();
      expect(await page.locator("#class-kinds").inputValue()).toBe("kale\nbananas");
      expect(faults).toEqual([]);
      await close();
    },
  );

  it("asks for one topic at least, and for minutes that can be held", async () => {
    const { page, close } = await visit(browser());
    await openClass(page);
    await page.locator("#class-kinds").fill("kale");
    for (const box of await page.locator(".class-topics input").all()) await box.uncheck();
    await page.getByRole("alert").filter({ hasText: "Tick one topic at least." }).waitFor();
    await page.getByRole("button", { name: "Make the pages" }).click();
    expect(await page.locator(".class-status").textContent()).toBe("");
    await page.getByRole("checkbox", { name: "Sayings that are not true" }).check();
    await page.getByRole("textbox", { name: "Length in minutes" }).fill("5");
    expect(await page.locator(".class-form .field .wrong").textContent()).toMatch(/5.*10.*240/);
    await page.getByRole("textbox", { name: "Length in minutes" }).fill("20");
    await page.getByRole("button", { name: "Make the pages" }).click();
    await made(page);
    const sheet = await page.locator("#class-running-sheet").textContent();
    expect(sheet).toContain("20 minutes in all");
    expect(sheet).not.toContain("Find it on the sheet");
    await close();
  });

  it("at 360 px in Spanish in the dark: axe finds nothing, nothing has to be scrolled sideways", async () => {
    const look = { viewport: { width: 360, height: 800 }, locale: "es-MX", colorScheme: "dark" } as const;
    const { page, close } = await visit(browser(), look);
    await openClass(page, "Clase");
    await page.locator("#class-kinds").fill("kale");
    await page.getByRole("button", { name: "Hacer las hojas" }).click();
    await made(page);
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await picture(page, "class-360-es");
    await close();
  });
});

describe("what was said of a class", () => {
  it("is there again on coming back, and after a reload; undoing takes it back", async () => {
    const { page, faults, close } = await visit(browser());
    await openClass(page);
    await page.locator("#class-kinds").fill("kale\nfigs");
    await page.getByRole("link", { name: "Settings" }).click();
    await page.locator("#words-heading").waitFor();
    await openClass(page);
    expect(await page.locator("#class-kinds").inputValue()).toBe("kale\nfigs");
    await page.reload();
    await page.locator("#class-kinds").waitFor();
    await expect.poll(() => page.locator("#class-kinds").inputValue()).toBe("kale\nfigs");
    await page.getByRole("button", { name: "Undo: class pages changed" }).click();
    await expect.poll(() => page.locator("#class-kinds").inputValue()).not.toBe("kale\nfigs");
    expect(faults).toEqual([]);
    await close();
  });
});
