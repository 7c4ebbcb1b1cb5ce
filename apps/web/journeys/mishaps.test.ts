import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { atRest } from "./support/kept.js";
import { haulBox, planFor } from "./support/steps.js";

const browser = useBrowser();
const list = "2 kg apples\n3 avocados";

/** Lets the browser keep no more than so many bytes for the page from now on. */
async function room(page: Page, quotaSize?: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(inject("address"));
  await session.send("Storage.overrideQuotaForOrigin", {
    origin,
    ...(quotaSize !== undefined && { quotaSize }),
  });
}

/** A page of the same browser once more, as it is opened after the one before is gone. */
async function openedAnew(page: Page): Promise<Page> {
  const again = await page.context().newPage();
  await again.goto(inject("address"));
  return again;
}

describe("a disk that is full", () => {
  it("loses nothing: what is typed then is kept as long as anything is, is told, and is there after a reload", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(list);
    await planFor(page, 2);
    await atRest(page);
    await room(page, 1);
    const long = `${list}\n${Array.from({ length: 40 }, (_, line) => `${line + 1} lemons`).join("\n")}`;
    await haulBox(page).fill(long);
    expect(await haulBox(page).inputValue()).toBe(long);
    await page.reload();
    await haulBox(page).waitFor();
    expect(await haulBox(page).inputValue()).toBe(long);
    await room(page);
    await haulBox(page).fill(`${long}\n1 cucumber`);
    await atRest(page);
    await page.reload();
    expect(await haulBox(page).inputValue()).toBe(`${long}\n1 cucumber`);
    await page
      .getByRole("button", { name: /^Undo: / })
      .first()
      .waitFor();
    await close();
  });
});

describe("a tab that is killed", () => {
  it("right after a letter was typed, loses none", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(list);
    await planFor(page, 2);
    await haulBox(page).pressSequentially("\n1 cucumber");
    const session = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent("crash");
    void session.send("Page.crash").catch(() => undefined);
    await crashed;
    const again = await openedAnew(page);
    expect(await haulBox(again).inputValue()).toBe(`${list}\n1 cucumber`);
    await again
      .getByRole("button", { name: /^Undo: / })
      .first()
      .waitFor();
    await planFor(again, 3);
    await close();
  });

  it("in the middle of a plan, plans when it is opened again", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(list);
    await page.getByRole("status").filter({ hasText: "Working it out" }).waitFor();
    const session = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent("crash");
    void session.send("Page.crash").catch(() => undefined);
    await crashed;
    const again = await openedAnew(page);
    await planFor(again, 2);
    await close();
  });
});

describe("a file that is broken", () => {
  it.each([
    ["cut off", Buffer.from('{"format":"keepwright-kept","version":1,"entered":{"text":"2 kg ap')],
    ["no text at all", Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 1, 2, 3])],
    ["empty", Buffer.from("")],
    ["another program's", Buffer.from('{"items":[1,2,3]}')],
  ])("%s is not opened, says so, and leaves all as it was", async (_, buffer) => {
    const { page, faults, close } = await visit(browser());
    await haulBox(page).fill(list);
    await planFor(page, 2);
    await page.getByRole("link", { name: "Settings" }).click();
    await page
      .locator("input[type=file]")
      .setInputFiles({ name: "kept.json", mimeType: "application/json", buffer });
    await page.getByText(/“kept\.json” is not opened: /).waitFor();
    await page.getByRole("link", { name: "Unpack" }).click();
    expect(await haulBox(page).inputValue()).toBe(list);
    expect(faults).toEqual([]);
    await close();
  });
});
