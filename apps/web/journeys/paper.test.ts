import { readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import {
  calendarEvents,
  calendarText,
  englishLanguage,
  handoutContext,
  labelRows,
  pageWords,
  sheetView,
  spanishLanguage,
  usualSheets,
} from "@keepwright/handout";
import { labelsPdf, type PaperSize, sheetPdf } from "@keepwright/paper";
import { ordinaryKitchens, type Plan, planHaul, readHaul } from "@keepwright/planner";
import type { Download, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { readPdf } from "../../../packages/paper/test/support/readPdf.js";
import { firstDay, picture, useBrowser, visit } from "./support/browser.js";
import { controlled, ownServer } from "./support/ownServer.js";
import { haulBox, planFor, sideways, tabTo } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();

/** A haul that reads alike in both languages' tests, and what the command line plans of it. */
const haul = "3 avocados\n8 apples\n300 g kale\n1 melon\n500 g cut melon";
function planned(): { plan: Plan; counted: Map<string, never> } {
  const lots = readHaul(haul, catalogue()).items.flatMap((item, index) =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}`, typed: item.typed }] : [],
  );
  const household = { people: 4, portionsPerPersonPerDay: 5, daysAway: [], days: 10 };
  const request = { haul: { lots }, kitchen: ordinaryKitchens.ordinary, household, from: "2026-06-13" };
  const plan = planHaul({ ...request, seed: 1, catalogue: catalogue() });
  return { plan, counted: new Map(lots.map((lot) => [lot.id, lot])) as Map<string, never> };
}

/** The sheet as the command line writes it. */
function sheetOf(language: typeof englishLanguage, units: "metric" | "us", paper: PaperSize, large: boolean) {
  const context = handoutContext(catalogue(), { units, language });
  const { plan, counted } = planned();
  return sheetPdf(sheetView(context, plan, counted), {
    paper,
    large,
    pageWords: (page, pages) => pageWords(context, page, pages),
  });
}

async function bytesOf(download: Download): Promise<Uint8Array> {
  const path = await download.path();
  return new Uint8Array(readFileSync(path));
}

/** Does something, and waits for the file that comes of it. */
async function fileFrom(page: Page, act: () => Promise<void>) {
  const [download] = await Promise.all([page.waitForEvent("download", { timeout: 120_000 }), act()]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

async function openTakeAlong(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Print, labels, calendar" }).click();
  await page.getByRole("dialog", { name: "To print and take along" }).waitFor();
}

async function plannedPage(options: Parameters<typeof visit>[1] = {}) {
  const visited = await visit(browser(), { acceptDownloads: true, ...options });
  await haulBox(visited.page).fill(haul);
  await planFor(visited.page, 5);
  return visited;
}

const same = (one: Uint8Array, other: Uint8Array) => Buffer.from(one).equals(Buffer.from(other));

describe("the sheet for the door, from the page", () => {
  it("by keyboard alone: the very bytes of the command line, and focus is back where it was", async () => {
    const { page, faults, requests, close } = await plannedPage();
    const opener = page.getByRole("button", { name: "Print, labels, calendar" });
    expect(requests.filter(({ url }) => url.endsWith(".packed"))).toEqual([]);
    await tabTo(page, opener);
    await page.keyboard.press("Enter");
    const save = page.getByRole("button", { name: "Save the sheet" });
    await tabTo(page, save);
    const { name, bytes } = await fileFrom(page, () => page.keyboard.press("Enter"));
    await page
      .getByRole("status")
      .filter({ hasText: "Saved: door-sheet-2026-06-13.pdf (1 page)." })
      .waitFor();
    expect(name).toBe("door-sheet-2026-06-13.pdf");
    const wanted = sheetOf({ ...englishLanguage, tag: "en-GB" }, "metric", "a4", false);
    expect((await readPdf(bytes)).spoken).toBe((await readPdf(wanted.bytes)).spoken);
    expect(same(bytes, wanted.bytes)).toBe(true);
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "hidden" });
    expect(await opener.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(faults).toEqual([]);
    await close();
  });

  it("by pointer: US Letter and large print; what is set with is fetched once", async () => {
    const { page, faults, requests, close } = await plannedPage();
    await openTakeAlong(page);
    await page.getByLabel("Paper", { exact: true }).selectOption("letter");
    await page.getByLabel("Large print").check();
    const { bytes } = await fileFrom(page, () =>
      page.getByRole("button", { name: "Save the sheet" }).click(),
    );
    const wanted = sheetOf({ ...englishLanguage, tag: "en-GB" }, "metric", "letter", true);
    expect(wanted.pages).toBeGreaterThan(1);
    expect(same(bytes, wanted.bytes)).toBe(true);
    await page.getByLabel("Large print").uncheck();
    await fileFrom(page, () => page.getByRole("button", { name: "Save the sheet" }).click());
    expect(requests.filter(({ url }) => url.endsWith(".packed"))).toHaveLength(3);
    expect(faults).toEqual([]);
    await close();
  });
});

describe("labels and days, from the page", () => {
  it("labels as the command line writes them, from a chosen label on", async () => {
    const { page, faults, close } = await plannedPage();
    await openTakeAlong(page);
    await page.getByLabel("Label sheet").selectOption("a4-2x4-105x74");
    await page.getByLabel("First free label").fill("99");
    await page.getByText("“99”").waitFor();
    await page.getByLabel("First free label").fill("3");
    await page.getByLabel("Draw the edges").check();
    const { name, bytes } = await fileFrom(page, () =>
      page.getByRole("button", { name: "Save the labels" }).click(),
    );
    const context = handoutContext(catalogue(), { language: { ...englishLanguage, tag: "en-GB" } });
    const { plan, counted } = planned();
    const wanted = labelsPdf(labelRows(context, plan, counted), {
      grid: usualSheets["a4-2x4-105x74"],
      start: 3,
      outlines: true,
      title: "Labels",
      language: "en-GB",
    });
    expect(name).toBe("labels-2026-06-13.pdf");
    expect(same(bytes, wanted.bytes)).toBe(true);
    expect(faults).toEqual([]);
    await close();
  });

  it("the days as a calendar file, with a reminder", async () => {
    const { page, faults, close } = await plannedPage();
    await openTakeAlong(page);
    await page.getByLabel("Reminder").selectOption("before");
    const { name, bytes } = await fileFrom(page, () =>
      page.getByRole("button", { name: "Save the days" }).click(),
    );
    expect(name).toBe("days-2026-06-13.ics");
    const text = new TextDecoder().decode(bytes);
    expect(text).toContain("TRIGGER:-PT6H\r\n");
    const context = handoutContext(catalogue(), { language: { ...englishLanguage, tag: "en-GB" } });
    const { plan } = planned();
    const succession = { began: plan.from, name: "" };
    const wanted = calendarText(context, succession, calendarEvents(context, plan, succession), plan.from, {
      made: firstDay.toISOString(),
      reminders: [{ day: "before", hour: 18, minute: 0 }],
    });
    expect(text).toBe(wanted);
    await page.getByText("Saved: days-2026-06-13.ics.").waitFor();
    expect(faults).toEqual([]);
    await close();
  });
});

/** Until all that pages are set with is on the device. */
async function paperKept(page: Page): Promise<void> {
  const kept = () => page.evaluate(async () => (await (await caches.open("keepwright-paper")).keys()).length);
  while ((await kept()) < 3) await page.waitForTimeout(500);
}

describe("without a network", () => {
  it("after one visit the sheet is set, in Spanish too, with nobody having asked for it before", async () => {
    const { address, end } = await ownServer();
    const { page, faults, close } = await plannedPage({ address, serviceWorkers: "allow" });
    await controlled(page);
    await paperKept(page);
    await end();
    await page.reload();
    await planFor(page, 5);
    await page.getByRole("link", { name: "Settings" }).click();
    await page.getByLabel("Language").selectOption("es");
    await page.evaluate(() => {
      location.hash = "#/unpack";
    });
    await page.getByRole("button", { name: "Imprimir, etiquetas, calendario" }).click({ timeout: 60_000 });
    const { name, bytes } = await fileFrom(page, () =>
      page.getByRole("button", { name: "Guardar la hoja" }).click(),
    );
    expect(name).toBe("hoja-para-la-puerta-2026-06-13.pdf");
    const wanted = sheetOf({ ...spanishLanguage, tag: "es-GB" }, "metric", "a4", false);
    expect((await readPdf(bytes)).spoken).toBe((await readPdf(wanted.bytes)).spoken);
    expect(faults).toEqual([]);
    await close();
  });

  it("before it is on the device: says so, and what to do, and nothing is lost", async () => {
    const { address, end } = await ownServer();
    const look = { hasTouch: true, isMobile: true, viewport: { width: 360, height: 800 } } as const;
    const { page, close } = await plannedPage({ address, serviceWorkers: "allow", ...look });
    await controlled(page);
    await openTakeAlong(page);
    await page.getByText("The first time this needs the network (12 MB)").first().waitFor();
    await end();
    await page.getByRole("button", { name: "Save the sheet" }).click();
    await page.getByRole("alert").filter({ hasText: "Connect once (12 MB) and try again" }).waitFor();
    await close();
  });
});

describe("how it looks", () => {
  it.each([
    ["en-GB", 360, "light", "Print, labels, calendar"],
    ["es-MX", 360, "dark", "Imprimir, etiquetas, calendario"],
    ["en-GB", 1920, "dark", "Print, labels, calendar"],
    ["es-MX", 768, "light", "Imprimir, etiquetas, calendario"],
  ] as const)(
    "in %s at %d px, %s: axe finds nothing, nothing lies beside the window",
    async (locale, width, colorScheme, opener) => {
      const look = { locale, viewport: { width, height: 900 }, colorScheme } as const;
      const { page, close } = await visit(browser(), look);
      await page.getByRole("button", { name: opener }).click({ timeout: 60_000 });
      await page.locator("dialog.take-along[open]").waitFor();
      await page.locator("dialog.take-along section").nth(2).waitFor();
      expect(await violations(page)).toEqual([]);
      expect(await sideways(page)).toBe(0);
      const small = await page
        .locator("dialog.take-along button, dialog.take-along select")
        .evaluateAll((all) =>
          all.filter((each) => each.getBoundingClientRect().height < 43.9).map((each) => each.textContent),
        );
      expect(small).toEqual([]);
      // The dialog scrolls by itself: a picture of all of it needs a window as high as it is.
      await page.setViewportSize({ width, height: 1500 });
      await picture(page, `paper-${width}-${locale.slice(0, 2)}-${colorScheme}`, "dialog.take-along");
      await close();
    },
  );
});
