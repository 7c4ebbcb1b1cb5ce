import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, inject } from "vitest";
// @ts-expect-error: a plain script without types
import { findChromium } from "../../../../scripts/lib/chromium.mjs";

const quiet =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync";
const pictures = fileURLToPath(new URL("../../../../test-artefacts/screenshots/", import.meta.url));

/** Every journey happens on the same day, so that the dates on the page can be told beforehand. */
export const firstDay = new Date(2026, 5, 13, 10);

/** A browser for all tests of a file. */
export function useBrowser(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: findChromium(), args: quiet.split(" ") });
  });
  afterAll(async () => {
    await browser?.close();
  });
  return () => {
    if (!browser) throw new Error("The browser is not open yet: ask for it within a test.");
    return browser;
  };
}

/** What went on in a page besides what can be seen on it. */
export interface Watched {
  readonly requests: { readonly url: string; readonly method: string; readonly body: string | null }[];
  /** Uncaught errors, errors on the console, and anything the content security policy refused. */
  readonly faults: string[];
}

export interface Visit extends Watched {
  readonly page: Page;
  readonly close: () => Promise<void>;
}

interface VisitOptions extends BrowserContextOptions {
  /** Runs in the page before any of its own scripts. */
  readonly before?: () => void;
  /** Another address than that of the page as it was built for all journeys. */
  readonly address?: string;
}

/** Opens the page in a browser that has never seen it; it is not kept on the device unless `serviceWorkers` allows it. */
export async function visit(
  browser: Browser,
  { before, address, ...options }: VisitOptions = {},
): Promise<Visit> {
  // The region is part of how dates are written.
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    locale: "en-GB",
    serviceWorkers: "block",
    ...options,
  });
  const page = await context.newPage();
  const watched: Watched = { requests: [], faults: [] };
  context.on("request", (request) =>
    watched.requests.push({ url: request.url(), method: request.method(), body: request.postData() }),
  );
  page.on("pageerror", (error) => watched.faults.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") watched.faults.push(message.text());
  });
  await page.clock.setFixedTime(firstDay);
  if (before) await page.addInitScript(before);
  await page.goto(address ?? inject("address"));
  return { page, ...watched, close: () => context.close() };
}

/** Does something with all of the page drawn, also what is otherwise drawn only when it is scrolled to. */
export async function withAllDrawn<Result>(page: Page, act: () => Promise<Result>): Promise<Result> {
  const draw = (css: string) =>
    page.evaluate((text) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(text);
      document.adoptedStyleSheets = [sheet];
    }, css);
  await draw("* { content-visibility: visible !important }");
  const result = await act();
  await draw("");
  return result;
}

/** Keeps a picture of the whole page, or of a part of it, for people to look at. */
export async function picture(page: Page, name: string, part?: string): Promise<void> {
  mkdirSync(pictures, { recursive: true });
  const path = join(pictures, `${name}.png`);
  // What stays in view while one scrolls is where it stands at first.
  await page.evaluate(() => window.scrollTo({ top: 0, behavior: "instant" }));
  await withAllDrawn(page, () =>
    part === undefined ? page.screenshot({ path, fullPage: true }) : page.locator(part).screenshot({ path }),
  );
}
