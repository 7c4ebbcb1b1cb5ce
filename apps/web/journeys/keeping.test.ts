import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { atRest, fillBoth, putCopy, refuseBoth, refuseDatabase } from "./support/kept.js";
import { amount, haulBox, planFor, planWords, undoButton } from "./support/steps.js";

const browser = useBrowser();
const notKept = /would not keep your list/;

describe("what was entered", () => {
  it("is all there after a reload, corrections and all", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("2 kg apples\n3 avocados");
    await page.getByRole("button", { name: "Change 2 kg apples" }).click();
    await amount(page).fill("1.234");
    await page.getByLabel("Kitchen most like yours").selectOption("small");
    await page.getByLabel("People").fill("3");
    await page.getByLabel("Units").selectOption("us");
    await planFor(page, 2);
    const before = await planWords(page);
    await page.reload();
    await planFor(page, 2);
    expect(await planWords(page)).toBe(before);
    expect(await haulBox(page).inputValue()).toBe("2 kg apples\n3 avocados");
    expect(await page.getByLabel("People").inputValue()).toBe("3");
    expect(await page.getByText("Corrected by you.").count()).toBe(1);
    await close();
  });

  it.each([
    ["not even JSON", "{oops"],
    ["a list", "[1, 2]"],
    ["nothing", "null"],
    ["somebody else's record", '{"name":"x","text":7}'],
  ])("opens the worked example when what was kept is %s, and sets that aside", async (_, kept) => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, 17);
    await putCopy(page, kept);
    await page.reload();
    await planFor(page, 17);
    await page.getByRole("link", { name: "See what was set aside" }).click();
    await page.getByRole("heading", { name: "Set aside", exact: true }).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: /Save the record of/ }).click(),
    ]);
    expect(readFileSync(await download.path(), "utf8")).toBe(kept);
    await page.getByRole("button", { name: /Throw away the record of/ }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Throw away" }).click();
    await page.getByRole("heading", { name: "Set aside", exact: true }).waitFor({ state: "detached" });
    await page.reload();
    await page.getByRole("heading", { name: "What is kept on this device" }).waitFor();
    expect(await page.getByRole("link", { name: "See what was set aside" }).count()).toBe(0);
    expect(faults).toEqual([]);
    await close();
  });

  it("keeps the words when all the rest is broken", async () => {
    const { page, close } = await visit(browser());
    const kept = {
      text: "2 kg apples",
      corrections: 5,
      kitchen: "constructor",
      people: -1,
      days: "x",
      units: {},
    };
    await putCopy(page, JSON.stringify(kept));
    await page.reload();
    await planFor(page, 1);
    expect(await haulBox(page).inputValue()).toBe("2 kg apples");
    await close();
  });

  it("is planned all the same where the device keeps nothing, and the page says so", async () => {
    const { page, close } = await visit(browser(), { before: refuseBoth });
    await page.getByRole("alert").filter({ hasText: notKept }).waitFor();
    await haulBox(page).fill("2 kg apples");
    await planFor(page, 1);
    await close();
  });

  it("stays on the page when the stores are full, and the page says so", async () => {
    const { page, close } = await visit(browser(), { before: fillBoth });
    await haulBox(page).fill("2 kg apples");
    await page.getByRole("alert").filter({ hasText: notKept }).waitFor();
    await planFor(page, 1);
    expect(await haulBox(page).inputValue()).toBe("2 kg apples");
    await undoButton(page).click();
    await planFor(page, 17);
    await close();
  });

  it("is kept without its steps where there is no database, and the page says so", async () => {
    const { page, faults, close } = await visit(browser(), { before: refuseDatabase });
    await page.getByRole("status").filter({ hasText: "but not the steps before it" }).waitFor();
    await haulBox(page).fill("2 kg apples");
    await page.reload();
    await planFor(page, 1);
    expect(await haulBox(page).inputValue()).toBe("2 kg apples");
    expect(faults).toEqual([]);
    await close();
  });

  it("is there after the tab was killed right after the last letter", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    await haulBox(page).fill("");
    await haulBox(page).pressSequentially("2 kg apples, 3 figs");
    const crash = page.waitForEvent("crash");
    const session = await page.context().newCDPSession(page);
    void session.send("Page.crash").catch(() => undefined);
    await crash;
    const again = await page.context().newPage();
    await again.goto(page.url());
    await planFor(again, 2);
    expect(await haulBox(again).inputValue()).toBe("2 kg apples, 3 figs");
    await close();
  });

  it("of a version before is moved, and is there without the copy", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    const kept = {
      version: 2,
      text: "2 kg apples",
      corrections: {},
      kitchen: "small",
      people: 3,
      units: "us",
    };
    await putCopy(page, JSON.stringify(kept));
    await page.reload();
    await planFor(page, 1);
    await atRest(page);
    await page.evaluate(() => localStorage.clear());
    await page.reload();
    await planFor(page, 1);
    expect(await page.getByLabel("People").inputValue()).toBe("3");
    await close();
  });
});
