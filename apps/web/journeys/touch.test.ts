import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, proofOf, sideways, undoButton } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const typed =
  "3 tomatoes\n1 head of romaine\n6 bananas\n2 lb potatoes\n3 onions\na bunch of cilantro\n2 lb apples\n1 head of broccoli";
/** Least height and width of what is touched: WCAG 2.2, success criterion 2.5.5, 44 CSS pixels. */
const leastTouch = 44;

describe("by touch on a narrow screen", () => {
  it("a haul is put in, a question answered in one touch and a line left out in two", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await page.getByRole("button", { name: "Put in your own" }).tap();
    await haulBox(page).fill("2 kg apples, half a cut melon, a bunch of cilantro");
    await page.getByRole("status").filter({ hasText: "One needs an answer." }).waitFor();
    await page.locator(".candidates button").nth(1).tap();
    await page.getByText("Corrected by you.").waitFor();
    await page.getByRole("button", { name: "Change 2 kg apples" }).tap();
    await page.getByRole("button", { name: "Leave it out" }).first().tap();
    await planFor(page, 2);
    expect(await planRegion(page).textContent()).not.toMatch(/apples/i);
    await page.getByRole("link", { name: "Go to the plan" }).tap();
    expect(await sideways(page)).toBe(0);
    expect(faults).toEqual([]);
    await picture(page, "touch-360");
    await close();
  });

  it("what is written after one touch on the untouched example takes its place, and can be undone", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    const example = await haulBox(page).inputValue();
    await haulBox(page).tap();
    await page.keyboard.type("3 kg potatoes");
    expect(await haulBox(page).inputValue()).toBe("3 kg potatoes");
    await planFor(page, 1);
    await haulBox(page).tap();
    await page.keyboard.press("End");
    await page.keyboard.type(" and 2 figs");
    expect(await haulBox(page).inputValue()).toBe("3 kg potatoes and 2 figs");
    await planFor(page, 2);
    while ((await haulBox(page).inputValue()) !== example) await undoButton(page).tap();
    expect(faults).toEqual([]);
    await close();
  });

  it("the first touch after typing hits what it was meant for, far down in a plan that was never on the screen", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await page.getByRole("button", { name: "Put in your own" }).tap();
    await haulBox(page).tap();
    await page.keyboard.type(typed, { delay: 10 });
    await planFor(page, typed.split("\n").length);
    await proofOf(page).waitFor({ timeout: 120_000 });
    await page.locator(".unpack:not(.typing)").waitFor();
    const more = page.locator(".life-section > .fold > summary");
    const place = () => more.evaluate((element) => element.getBoundingClientRect().top);
    // By the wheel or the finger, which leave the keys where they are: the box keeps the focus.
    await page.evaluate((top) => scrollBy({ top, behavior: "instant" }), (await place()) - 300);
    await expect.poll(place).toBeCloseTo(300, 0);
    expect(await haulBox(page).evaluate((box) => box === document.activeElement)).toBe(true);
    await page.touchscreen.tap(60, 320);
    await page.locator(".life-section > .fold[open]").waitFor();
    expect(await place()).toBeCloseTo(300, 0);
    expect(faults).toEqual([]);
    await close();
  });

  it("everything that is touched is large enough for a wet thumb", async () => {
    const { page, close } = await visit(browser(), phone);
    await planFor(page, 17);
    await page
      .getByRole("button", { name: /^Change/ })
      .first()
      .tap();
    const small = await page
      .locator("button, select, summary, textarea, label.tick, .understood a")
      .evaluateAll(
        (controls, least) =>
          controls
            .filter((control) => control.getClientRects().length > 0)
            .map((control) => ({
              box: control.getBoundingClientRect(),
              html: control.outerHTML.slice(0, 80),
            }))
            .filter(({ box }) => box.height < least - 0.5 || box.width < least - 0.5)
            .map(({ box, html }) => `${box.width} × ${box.height} ${html}`),
        leastTouch,
      );
    expect(small).toEqual([]);
    await close();
  });
});
