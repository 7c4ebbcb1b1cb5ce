import { describe, expect, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { grams, haulBox, planFor, planWords } from "./support/steps.js";

const browser = useBrowser();
const store = "keepwright.haul";
const notKept = /would not keep your list/;

describe("what was entered", () => {
  it("is all there after a reload, corrections and all", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("2 kg apples\n3 avocados");
    await page.getByRole("button", { name: "Change 2 kg apples" }).click();
    await grams(page).fill("1234");
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
    // The page has written its own state by then.
    await planFor(page, 17);
    await page.evaluate(([key, value]) => localStorage.setItem(key ?? "", value ?? ""), [store, kept]);
    await page.reload();
    await planFor(page, 17);
    expect(await page.evaluate((key) => localStorage.getItem(`${key}.unreadable`), store)).toBe(kept);
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
    await page.evaluate(
      ([key, value]) => localStorage.setItem(key ?? "", value ?? ""),
      [store, JSON.stringify(kept)],
    );
    await page.reload();
    await planFor(page, 1);
    expect(await haulBox(page).inputValue()).toBe("2 kg apples");
    await close();
  });

  it("is planned all the same where the device keeps nothing, and the page says so", async () => {
    const { page, close } = await visit(browser(), {
      before: () =>
        Object.defineProperty(window, "localStorage", {
          get: () => {
            throw new DOMException("refused", "SecurityError");
          },
        }),
    });
    await page.getByRole("alert").filter({ hasText: notKept }).waitFor();
    await haulBox(page).fill("2 kg apples");
    await planFor(page, 1);
    await close();
  });

  it("stays on the page when the store is full, and the page says so", async () => {
    const { page, close } = await visit(browser(), {
      before: () => {
        Storage.prototype.setItem = () => {
          throw new DOMException("full", "QuotaExceededError");
        };
      },
    });
    await page.getByRole("alert").filter({ hasText: notKept }).waitFor();
    await haulBox(page).fill("2 kg apples");
    await planFor(page, 1);
    expect(await haulBox(page).inputValue()).toBe("2 kg apples");
    await close();
  });
});
