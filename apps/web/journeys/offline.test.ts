import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { controlled, ownServer } from "./support/ownServer.js";
import { haulBox, planFor, proofOf } from "./support/steps.js";

const browser = useBrowser();
/** Puts a newer version into a folder: the page with another mark, and a service worker that lists it. */
function putNewer(folder: string): void {
  const page = join(folder, "index.html");
  writeFileSync(page, readFileSync(page, "utf8").replace("<body>", '<body data-version="newer">'));
  const worker = join(folder, "serviceWorker.js");
  const before = readFileSync(worker, "utf8");
  const after = before.replace(/(url:`index\.html`,revision:`)[0-9a-f]+/, "$1newer");
  expect(after).not.toBe(before);
  writeFileSync(worker, after);
}

describe("without a network, after one visit", () => {
  it("the page opens, plans, proves, asks, names sources and changes its language", async () => {
    const { address, end } = await ownServer();
    const { page, faults, close } = await visit(browser(), { address, serviceWorkers: "allow" });
    await controlled(page);
    await end();
    await page.reload();
    await planFor(page, 17);
    await proofOf(page).waitFor({ timeout: 120_000 });
    await haulBox(page).fill("2 kg apples\n3 avocados");
    await planFor(page, 2);
    await page.getByRole("link", { name: "Two ways" }).click();
    await page.getByRole("row", { name: /Apples/ }).waitFor({ timeout: 60_000 });
    await page.getByRole("link", { name: "Ask" }).click();
    await page.getByRole("combobox", { name: "Name a fruit or a vegetable" }).waitFor();
    await page.keyboard.type("carrot");
    await page.keyboard.press("Enter");
    await page.locator(".ask-ripe").waitFor({ timeout: 60_000 });
    await page.getByText("Where this comes from").click();
    await page.locator(".ask-sources li").first().waitFor();
    await page.getByRole("link", { name: "Settings" }).click();
    await page.getByLabel("Language").selectOption("es");
    await page.getByRole("link", { name: "Preguntar" }).click();
    await page.getByRole("combobox", { name: "Escribe una fruta o una verdura" }).waitFor();
    await page.keyboard.type("zanahoria");
    await page.keyboard.press("Enter");
    await page.locator(".ask-ripe").waitFor({ timeout: 60_000 });
    expect(await page.getAttribute("html", "lang")).toBe("es");
    await page.reload();
    await page.getByRole("heading", { level: 1, name: "Keepwright" }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });
});

describe("a newer version", () => {
  it("waits until the person takes it, and what was typed is there again", async () => {
    const { folder, address, end } = await ownServer();
    const { page, close } = await visit(browser(), { address, serviceWorkers: "allow" });
    await controlled(page);
    await page.reload();
    await haulBox(page).fill("4 quinces from the neighbour");
    putNewer(folder);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const notice = page.getByRole("status").filter({ hasText: "A newer version of this page is ready." });
    await notice.waitFor({ timeout: 60_000 });
    expect(await page.getAttribute("body", "data-version")).toBeNull();
    expect(await haulBox(page).inputValue()).toBe("4 quinces from the neighbour");
    await notice.getByRole("button", { name: "Open the newer version" }).click();
    await page.locator("body[data-version=newer]").waitFor({ timeout: 60_000 });
    expect(await haulBox(page).inputValue()).toBe("4 quinces from the neighbour");
    expect(await notice.count()).toBe(0);
    await close();
    await end();
  });

  it("can be installed: the page names a manifest with its own icons, and all of them are there", async () => {
    const { address, end } = await ownServer();
    const { page, close } = await visit(browser(), { address });
    const href = await page.locator('link[rel="manifest"]').getAttribute("href");
    const manifest = await page.evaluate(async (url) => (await fetch(url!)).json(), href);
    expect(manifest).toMatchObject({ name: "Keepwright", display: "standalone", start_url: "./" });
    for (const { src, type } of manifest.icons) {
      const answer = await page.evaluate(async (url) => {
        const { status, headers } = await fetch(url);
        return [status, headers.get("content-type")];
      }, src as string);
      expect(answer, src).toEqual([200, type]);
    }
    await close();
    await end();
  });
});
