import { readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import { type ClassDocument, classTopics, makeKit } from "@keepwright/handout";
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

const made = (page: Page) => page.locator(".class-page").first().waitFor({ timeout: 90_000 });

describe("pages for a class", () => {
  it("by keyboard: the very words that the command line prints, all or one of them to be printed", async () => {
    const { page, faults, close } = await visit(browser(), { before: notePrinting });
    await openClass(page);
    await page.waitForFunction(() => document.querySelector("textarea")?.value.includes("romaine"));
    await page.locator("#class-kinds").fill("bananas\nkale");
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
        topics: classTopics,
        seed: 1,
      },
      catalogue(),
    );
    const titles = await page.locator(".class-page > h3").allTextContents();
    expect(titles).toEqual(kit.documents.map(({ title }) => title));
    const seen = (await page.locator(".class").textContent())?.replace(/\s+/gu, "") ?? "";
    for (const { blocks } of kit.documents)
      for (const block of blocks)
        if (block.block === "list")
          for (const item of block.items) expect(seen).toContain(item.replace(/\s+/gu, ""));
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

  it("says what is wrong with a name, and keeps what was typed", async () => {
    const { page, close } = await visit(browser());
    await openClass(page);
    await page.locator("#class-kinds").fill("kale\nzorbulon");
    await page.getByRole("button", { name: "Make the pages" }).click();
    await page.getByRole("alert").filter({ hasText: "zorbulon" }).waitFor({ timeout: 60_000 });
    expect(await page.locator("#class-kinds").inputValue()).toBe("kale\nzorbulon");
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
