import { AxeBuilder } from "@axe-core/playwright";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const haul = "2 kg apples\n1 head of romaine\n3 avocados";
/** Judging takes seconds, and more on a machine with other work. */
const judging = { timeout: 90_000 };

const place = (page: Page, name: string): Locator =>
  planRegion(page).getByRole("article", { name, exact: true });
const moveButton = (page: Page, name: string | RegExp): Locator =>
  planRegion(page).getByRole("button", { name, exact: true });
const trial = (page: Page, name: RegExp): Locator => page.getByRole("region", { name });
const keep = (page: Page): Locator => page.getByRole("button", { name: "Keep it so", disabled: false });

async function planned(page: Page): Promise<void> {
  await haulBox(page).fill(haul);
  await planFor(page, 3);
}

/** Where the lot lies now, by the heading of the place. */
const lies = (page: Page, name: RegExp): Promise<string | null> =>
  planRegion(page)
    .getByRole("article")
    .filter({ has: page.getByRole("button", { name }) })
    .getByRole("heading")
    .textContent();

async function middle(locator: Locator): Promise<{ x: number; y: number }> {
  const box = await locator.boundingBox();
  if (!box) throw new Error("It is not drawn.");
  return { x: box.x + box.width / 2, y: box.y + Math.min(box.height / 2, 40) };
}

describe("putting a lot elsewhere", () => {
  it("by dragging its block: the place is named on the way, its cost told, and it can be put back", async () => {
    const { page, faults, close } = await visit(browser(), { viewport: { width: 1280, height: 2600 } });
    await planned(page);
    const before = await lies(page, /^Move Apples/);
    const block = planRegion(page).locator(".lot-block", { hasText: "Apples" });
    const from = await middle(block);
    const to = await middle(place(page, "Counter"));
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 20, from.y + 20, { steps: 4 });
    await page.mouse.move(to.x, to.y, { steps: 8 });
    await page
      .getByRole("status")
      .filter({ hasText: /In your hand: apples, over “Counter”/ })
      .waitFor();
    await page.mouse.up();
    const told = trial(page, /^Apples: “Counter” instead/);
    await keep(page).waitFor(judging);
    expect(await told.getByRole("status").textContent()).toMatch(/Apples: .*in the plan\..*waste/s);
    expect(await lies(page, /^Move Apples/)).toBe("Counter");
    await told.getByRole("button", { name: "Put it back" }).click();
    await told.waitFor({ state: "detached" });
    expect(await lies(page, /^Move Apples/)).toBe(before);
    expect(await page.getByRole("dialog").count()).toBe(0);
    expect(faults).toEqual([]);
    await close();
  });

  it("by keyboard alone: picked up, carried, put back by Escape; then dropped, kept, and given back to the plan", async () => {
    const { page, faults, close } = await visit(browser());
    await planned(page);
    const { keyboard } = page;
    const before = await lies(page, /^Move Apples/);
    await tabTo(page, moveButton(page, "Move Apples"));
    await keyboard.press("Space");
    await keyboard.press("ArrowDown");
    await page
      .getByRole("status")
      .filter({ hasText: /In your hand: apples, over “/ })
      .waitFor();
    await keyboard.press("Escape");
    expect(await page.getByRole("status").filter({ hasText: "In your hand" }).count()).toBe(0);
    expect(await lies(page, /^Move Apples/)).toBe(before);

    await keyboard.press("Space");
    const over = () => page.getByRole("status").filter({ hasText: "over “Counter”" }).count();
    for (let step = 0; step < 8 && (await over()) === 0; step++) await keyboard.press("ArrowDown");
    await keyboard.press("Space");
    await keep(page).waitFor(judging);
    await tabTo(page, keep(page));
    await keyboard.press("Enter");
    const kept = page.getByRole("region", { name: "This plan is changed by you" });
    await kept.waitFor();
    expect(await lies(page, /^Move Apples/)).toBe("Counter");
    await page.waitForFunction(() => document.activeElement?.getAttribute("aria-label") === "Move Apples");

    await page.reload();
    await planFor(page, 3);
    await kept
      .getByText(/in the plan/)
      .first()
      .waitFor(judging);
    expect(await lies(page, /^Move Apples/)).toBe("Counter");
    await tabTo(page, kept.getByRole("button", { name: /^Let the plan decide again: apples/ }));
    await keyboard.press("Enter");
    await kept.waitFor({ state: "detached" });
    expect(await lies(page, /^Move Apples/)).toBe(before);
    expect(faults).toEqual([]);
    await close();
  });

  it("by touch from lists of places and wraps; why it lies there is told of the changed plan", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await planned(page);
    await moveButton(page, "Move Romaine lettuce").tap();
    const menu = page.getByRole("dialog", { name: /^Where else\?/ });
    await menu.getByLabel("Place").selectOption({ label: "Counter" });
    await menu.getByLabel("Wrapped").selectOption({ label: "Loose, no wrap" });
    await menu.getByRole("button", { name: "See what it costs" }).tap();
    await keep(page).waitFor(judging);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`)).toEqual([]);
    expect(await sideways(page)).toBe(0);
    await page.screenshot({ path: "test-artefacts/screenshots/moving-trial-360.png" });
    await keep(page).tap();
    await place(page, "Counter")
      .getByRole("link", { name: /^Romaine/ })
      .tap();
    const why = page.getByRole("dialog", { name: /^Why\? Romaine/ });
    await why.getByText(/^Romaine lettuce: “Counter” \(loose, no wrap\)/).waitFor(judging);
    expect(faults).toEqual([]);
    await close();
  });

  it("by finger on the button, or resting on the block, neither of which scrolls the page meanwhile", async () => {
    const { page, faults, close } = await visit(browser(), {
      ...phone,
      viewport: { width: 360, height: 3000 },
    });
    await planned(page);
    const button = moveButton(page, "Move Apples");
    // Both far from the edges, where the page would run along.
    await place(page, "Counter").evaluate((own) =>
      own.scrollIntoView({ block: "center", behavior: "instant" }),
    );
    const [from, to] = [await middle(button), await middle(place(page, "Counter"))];
    const touch = await page.context().newCDPSession(page);
    const at = (type: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
      touch.send("Input.dispatchTouchEvent", { type, touchPoints: points });
    const top = await page.evaluate(() => scrollY);
    await at("touchStart", [from]);
    await at("touchMove", [{ x: from.x, y: from.y + 20 }]);
    await at("touchMove", [{ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }]);
    await at("touchMove", [to]);
    await page
      .getByRole("status")
      .filter({ hasText: /over “Counter”/ })
      .waitFor();
    expect(await page.evaluate(() => scrollY)).toBe(top);
    await at("touchEnd", []);
    await keep(page).waitFor(judging);
    await page.getByRole("button", { name: "Put it back" }).tap();
    const block = await middle(planRegion(page).locator(".refrigerator .lot-block").first());
    const over = page.getByRole("status").filter({ hasText: /In your hand/ });
    await at("touchStart", [block]);
    await over.waitFor();
    await at("touchMove", [{ x: block.x, y: block.y + 30 }]);
    await at("touchMove", [await middle(place(page, "Counter"))]);
    await over.filter({ hasText: /over “Counter”/ }).waitFor();
    expect(await page.evaluate(() => scrollY)).toBe(top);
    await at("touchEnd", []);
    await keep(page).waitFor(judging);
    expect(faults).toEqual([]);
    await close();
  });

  it("one part of a lot that the plan parts, by keyboard; it stays there while another plan is made, and after a reload", async () => {
    const { page, faults, close } = await visit(browser());
    await haulBox(page).fill("9 kg carrots\n3 kg kale");
    await planFor(page, 2);
    const { keyboard } = page;
    const second = () => planRegion(page).getByRole("button", { name: "Move Carrots (part 2 of 2)" });
    const first = await lies(page, /^Move Carrots \(part 1 of 2\)/);
    await tabTo(page, second());
    await keyboard.press("Space");
    const over = () => page.getByRole("status").filter({ hasText: "over “Counter”" }).count();
    for (let step = 0; step < 8 && (await over()) === 0; step++) await keyboard.press("ArrowDown");
    await keyboard.press("Space");
    await trial(page, /^Carrots \(part 2 of 2\): “Counter” instead/).waitFor();
    await keep(page).waitFor(judging);
    await tabTo(page, keep(page));
    await keyboard.press("Enter");
    const kept = page.getByRole("region", { name: "This plan is changed by you" });
    await kept.getByRole("button", { name: /part 2 of 2/ }).waitFor();
    expect(await lies(page, /^Move Carrots \(part 2 of 2\)/)).toBe("Counter");
    expect(await lies(page, /^Move Carrots \(part 1 of 2\)/)).toBe(first);

    // Wherever it is drawn from now on, it is on the counter.
    await page.evaluate(() => {
      const seen = new Set<string>();
      Object.assign(window, { seen });
      new MutationObserver(() => {
        const button = document.querySelector('[aria-label="Move Carrots (part 2 of 2)"]');
        const place = button?.closest("article")?.querySelector("h5")?.textContent;
        if (place) seen.add(place);
      }).observe(document.body, { childList: true, subtree: true, attributes: true });
    });
    await page.getByLabel("Days to plan").fill("9");
    await planRegion(page).getByRole("status").filter({ hasText: "Working it out" }).waitFor();
    await planFor(page, 2);
    await kept
      .getByText(/in the plan/)
      .first()
      .waitFor(judging);
    const seen = await page.evaluate(() => [...(window as unknown as { seen: Set<string> }).seen]);
    expect(seen.filter((where) => where !== "Counter")).toEqual([]);
    await page.reload();
    await kept.getByRole("button", { name: /part 2 of 2/ }).click({ timeout: 90_000 });
    await kept.waitFor({ state: "detached" });
    expect(faults).toEqual([]);
    await close();
  });

  it("from the lists by Enter has the focus where its cost is told; and the box has it when all was taken off", async () => {
    const { page, faults, close } = await visit(browser());
    await page.locator(".move-button").nth(2).waitFor({ timeout: 60_000 });
    await page.locator(".move-button").nth(2).focus();
    await page.keyboard.press("Enter");
    const place = page.getByRole("dialog").getByRole("combobox").first();
    await place.focus();
    await page.keyboard.press("End");
    await page.getByRole("button", { name: "See what it costs" }).focus();
    await page.keyboard.press("Enter");
    await page.locator(".trial:focus").waitFor({ timeout: 10_000 });
    await page.getByRole("button", { name: "Put in your own" }).click();
    await haulBox(page).fill("2 kg apples");
    await planFor(page, 1);
    await page.getByRole("button", { name: "Start again" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Take it all off" }).focus();
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement?.matches("textarea"));
    expect(await haulBox(page).inputValue()).toBe("");
    expect(faults).toEqual([]);
    await close();
  });

  it.each([
    [768, "es", "light"],
    [1920, "en", "dark"],
  ] as const)("is pictured at %i px in %s, %s", async (width, locale, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.locator(".move-button").first().waitFor({ timeout: 60_000 });
    await page.locator(".move-button").nth(2).focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Space");
    await page.locator(".trial .main-button:enabled").waitFor(judging);
    await page.screenshot({ path: `test-artefacts/screenshots/moving-trial-${width}-${locale}.png` });
    await page.locator(".trial .main-button").click();
    await picture(page, `moving-kept-${width}-${locale}-${colorScheme}`);
    await close();
  });
});
