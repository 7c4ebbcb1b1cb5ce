import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { haulBox, paste, planFor } from "./support/steps.js";

const browser = useBrowser();

/** The page is alive when it still reads and plans an ordinary haul. */
async function alive(page: Page): Promise<void> {
  await haulBox(page).fill("2 kg apples\n3 avocados");
  await planFor(page, 2);
}

describe("bad input", () => {
  it("nothing at all gives no plan and says what to do", async () => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, 17);
    await haulBox(page).fill(" \n\n ");
    await page.getByText("Type what came home, and the plan appears here.").waitFor();
    expect(await page.getByRole("article").count()).toBe(0);
    await alive(page);
    expect(faults).toEqual([]);
    await close();
  });

  it("unknown kinds and amounts that cannot be come back as questions, beside a plan for the rest", async () => {
    const { page, faults, close } = await visit(browser());
    const lines = ["1 kg carrots", "3 zorbles", "0 lemons", "-3 onions", "1e9 kg apples", "1000000000 pears"];
    await haulBox(page).fill(lines.join("\n"));
    await page
      .getByRole("status")
      .filter({ hasText: `${lines.length - 1} need an answer.` })
      .waitFor();
    await planFor(page, 1);
    const understood = page.getByRole("region", { name: "What was understood" });
    for (const line of lines) expect(await understood.textContent()).toContain(line);
    await alive(page);
    expect(faults).toEqual([]);
    await close();
  });

  it("mark-up is shown as the characters it is, and does nothing", async () => {
    const { page, faults, close } = await visit(browser());
    const markup = ["<img src=x onerror=alert(1)>", "2 kg <b>apples</b>", "<script>alert(2)</script>"];
    let asked = false;
    page.on("dialog", (dialog) => {
      asked = true;
      return dialog.dismiss();
    });
    await haulBox(page).fill(markup.join("\n"));
    const understood = page.getByRole("region", { name: "What was understood" });
    await understood.getByText("<img src=x onerror=alert(1)>").first().waitFor();
    expect(await page.locator("main img, main script, main b").count()).toBe(0);
    await alive(page);
    expect(asked).toBe(false);
    expect(faults).toEqual([]);
    await close();
  });

  it("control characters and turned text neither break the page nor get lost", async () => {
    const { page, faults, close } = await visit(browser());
    const text =
      "2 kg apples\u0000\u0007\n3 \u202eavocados\n\ufeff1 kg onions\u2028 4 lemons\n\ud83e\udd66\ud83e\udd66";
    await haulBox(page).fill(text);
    await page
      .getByRole("status")
      .filter({ hasText: /Worked out for \d+ things?\./ })
      .waitFor();
    const shown = await page.getByRole("region", { name: "What was understood" }).textContent();
    expect(shown).not.toMatch(/\u202e|(?![\n\t])\p{Cc}/u);
    const kept = await haulBox(page).inputValue();
    await page.reload();
    expect(await haulBox(page).inputValue()).toBe(kept);
    await alive(page);
    expect(faults).toEqual([]);
    await close();
  });

  it("ten thousand lines are read as far as a plan can hold, the rest asked about, and every line kept", async () => {
    const { page, faults, close } = await visit(browser());
    const text = Array.from({ length: 10_000 }, (_, index) => `${(index % 7) + 1} apples`).join("\n");
    await paste(page, text);
    await page.getByText(/this is more than one plan can hold/).waitFor({ timeout: 60_000 });
    await planFor(page, 60);
    await page.reload();
    expect(await haulBox(page).inputValue()).toBe(text);
    await alive(page);
    expect(faults).toEqual([]);
    await close();
  });

  it("a single endless word stays within the page", async () => {
    const { page, faults, close } = await visit(browser(), { viewport: { width: 360, height: 740 } });
    await haulBox(page).fill("z".repeat(20_000));
    await page
      .getByRole("status")
      .filter({ hasText: /needs? an answer/ })
      .waitFor();
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBe(0);
    await alive(page);
    expect(faults).toEqual([]);
    await close();
  });
});

describe("when the planner breaks", () => {
  it("says so, keeps the words, and plans when asked again", async () => {
    const { page, close } = await visit(browser(), {
      before: () => {
        const Real = window.Worker;
        let broken = true;
        Object.assign(window, {
          Worker: function stop(address: URL, options: WorkerOptions) {
            const worker = new Real(
              broken ? "data:text/javascript,throw new Error('stopped')" : address,
              options,
            );
            broken = false;
            return worker;
          },
        });
      },
    });
    await page.getByRole("alert").filter({ hasText: "No plan could be made" }).waitFor();
    expect((await haulBox(page).inputValue()).length).toBeGreaterThan(0);
    await page.getByRole("button", { name: "Try again" }).click();
    await planFor(page, 17);
    expect(await page.getByRole("alert").count()).toBe(0);
    await close();
  });
});
