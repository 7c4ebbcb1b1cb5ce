import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, planWords, segment, tabTo } from "./support/steps.js";

const browser = useBrowser();

describe("by keyboard alone", () => {
  it("a haul is typed, a line corrected, a question answered, a kitchen chosen and the plan read", async () => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, 17);
    const { keyboard } = page;
    const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true });

    await tabTo(page, button("Put in your own"));
    await keyboard.press("Enter");
    expect(await haulBox(page).evaluate((box) => box === document.activeElement)).toBe(true);
    await keyboard.type("3 avocados\n2 kg apples\na bag of greens");
    await page.getByRole("status").filter({ hasText: "3 things. One needs an answer." }).waitFor();

    // The first line is corrected: the avocados are ripe.
    await tabTo(page, button("Change 3 avocados"));
    await keyboard.press("Enter");
    await tabTo(page, segment(page, "Ripeness", "unripe"));
    await keyboard.press("ArrowDown");
    await keyboard.press("ArrowDown");
    expect(await segment(page, "Ripeness", "ripe").isChecked()).toBe(true);
    await tabTo(page, button("Done with 3 avocados"), "Shift+Tab");
    await keyboard.press("Space");
    expect(await page.getByText("Corrected by you.").count()).toBe(1);

    // The question is answered by the first of the likely kinds; the amount is read from the words.
    const asked = page.locator(".asked");
    await tabTo(page, asked.locator(".candidates button").first());
    await keyboard.press("Space");
    await page
      .getByRole("status")
      .filter({ hasText: /^3 things\.\s*$/ })
      .waitFor();

    await tabTo(page, page.getByLabel("Kitchen most like yours"));
    await keyboard.press("ArrowDown");
    await tabTo(page, page.getByLabel("People"));
    await keyboard.press("Control+A");
    await keyboard.type("2");
    await planFor(page, 3);
    expect(await planRegion(page).getByRole("article").count()).toBe(4);

    await tabTo(
      page,
      planRegion(page)
        .getByRole("link", { name: /^Why\?/ })
        .first(),
    );
    await keyboard.press("Enter");
    await page.getByRole("dialog", { name: /^Why\?/ }).waitFor();
    await keyboard.press("Escape");
    expect(await planWords(page)).toContain("vocado");
    expect(faults).toEqual([]);
    await picture(page, "keyboard");
    await close();
  });

  it("a correction is undone, and everything cleared is asked about first and can be brought back", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill("2 kg apples\n3 avocados");
    await planFor(page, 2);
    const { keyboard } = page;
    const button = (name: string) => page.getByRole("button", { name, exact: true });
    await tabTo(page, button("Change 3 avocados"));
    await keyboard.press("Enter");
    await tabTo(page, button("Leave it out"));
    await keyboard.press("Enter");
    await planFor(page, 1);
    await page.getByText("Left out of the plan.").waitFor();
    await tabTo(page, button("Undo the change to 3 avocados"));
    await keyboard.press("Enter");
    await planFor(page, 2);

    await tabTo(page, button("Start again"), "Shift+Tab");
    await keyboard.press("Enter");
    await page.getByRole("dialog", { name: "Take everything off the list?" }).waitFor();
    await keyboard.press("Escape");
    expect(await haulBox(page).inputValue()).toBe("2 kg apples\n3 avocados");
    await keyboard.press("Enter");
    await tabTo(page, button("Take it all off"));
    await keyboard.press("Enter");
    expect(await haulBox(page).inputValue()).toBe("");
    await tabTo(page, button("Bring back what was here"));
    await keyboard.press("Enter");
    expect(await haulBox(page).inputValue()).toBe("2 kg apples\n3 avocados");
    await planFor(page, 2);
    await close();
  });
});
