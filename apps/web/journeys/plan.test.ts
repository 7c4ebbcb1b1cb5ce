import { describe, expect, it } from "vitest";
import { picture, useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, sideways, tabTo } from "./support/steps.js";

const browser = useBrowser();
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const haul = "2 kg apples\n3 avocados\n1 head of romaine\nhalf a melon";

describe("what to do now", () => {
  it("is a list ticked off by touch: the count is told, nothing changes its place, and it is kept", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await planFor(page, 17);
    const list = planRegion(page).getByRole("region", { name: "Do now" });
    // In a narrow window what is put away is ticked where the place is drawn.
    const boxes = planRegion(page).locator(".now-and-where").getByRole("checkbox");
    const all = await boxes.count();
    expect(await list.getByRole("checkbox").count()).toBeLessThan(all);
    const left = (count: number) => (count === 1 ? "1 thing left to do." : `${count} things left to do.`);
    await list
      .getByRole("status")
      .filter({ hasText: left(all) })
      .waitFor();
    const order = await list.locator("li").allTextContents();
    await boxes.nth(1).tap();
    await list
      .getByRole("status")
      .filter({ hasText: left(all - 1) })
      .waitFor();
    expect(await list.locator("li").allTextContents()).toEqual(order);
    expect(await boxes.nth(1).isChecked()).toBe(true);
    await page.reload();
    await planFor(page, 17);
    expect(await boxes.nth(1).isChecked()).toBe(true);
    for (const box of await boxes.all()) await box.check();
    await list.getByRole("status").filter({ hasText: "All of it is done." }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it("puts away last, and stays ticked when another plan asks for the same", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(haul);
    await planFor(page, 4);
    const list = planRegion(page).getByRole("region", { name: "Do now" });
    const words = await list.locator("li .what").allTextContents();
    const away = words.map((each) => each.startsWith("Put away: "));
    expect(away.lastIndexOf(false)).toBeLessThan(away.indexOf(true));
    const apples = list.getByRole("checkbox", { name: /apples/i }).last();
    await apples.check();
    const ticked = await list.locator("li.done").allTextContents();
    expect(ticked).toHaveLength(1);
    for (const days of ["9", "10"]) {
      await page.getByLabel("Days to plan").fill(days);
      await planRegion(page).getByRole("status").filter({ hasText: "Working it out" }).waitFor();
      await planFor(page, 4);
    }
    expect(await list.locator("li.done").allTextContents()).toEqual(ticked);
    expect(await list.locator("li .what").allTextContents()).toEqual(words);
    await close();
  });

  it("is ticked by keyboard alone", async () => {
    const { page, close } = await visit(browser());
    await haulBox(page).fill(haul);
    await planFor(page, 4);
    const box = planRegion(page).getByRole("region", { name: "Do now" }).getByRole("checkbox").first();
    await tabTo(page, box);
    await page.keyboard.press("Space");
    expect(await box.isChecked()).toBe(true);
    await page.keyboard.press("Space");
    expect(await box.isChecked()).toBe(false);
    await close();
  });
});

describe("the days", () => {
  it("are headings with lists, today marked for all to know", async () => {
    const { page, close } = await visit(browser());
    await planFor(page, 17);
    const days = planRegion(page).getByRole("region", { name: "Day by day" });
    expect(await days.getByRole("heading", { level: 4 }).first().textContent()).toMatch(
      /^Today, Sat 13 June/,
    );
    expect(await days.locator("[aria-current=date]").count()).toBe(1);
    for (const day of await days.locator(".day").all())
      expect(await day.getByRole("listitem").count()).toBeGreaterThan(0);
    await close();
  });
});

describe("on paper", () => {
  it.each([
    ["A4", "en"],
    ["A4", "es"],
    ["Letter", "en"],
    ["Letter", "es"],
  ] as const)("the worked example is one page of %s in %s, without controls", async (format, locale) => {
    const { page, close } = await visit(browser(), { locale });
    await page.locator(".lives > li").first().waitFor({ timeout: 60_000 });
    await page.emulateMedia({ media: "print" });
    const seen = await page
      .locator("button, select, textarea, nav, .proof")
      .evaluateAll((all) => all.filter((one) => one.getClientRects().length > 0).length);
    expect(seen).toBe(0);
    expect(await page.locator(".cautions.pressing").isVisible()).toBe(true);
    const pdf = await page.pdf({ format });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page(?!s)/g)).toHaveLength(1);
    // What a margin of 8 mm leaves of each.
    await page.setViewportSize(format === "A4" ? { width: 733, height: 1062 } : { width: 755, height: 995 });
    await picture(page, `print-${format}-${locale}`);
    await close();
  });
});

const large = `${haul}
1 bunch of cilantro
6 bananas
1 bunch of basil
500 g cherry tomatoes
1.5 kg potatoes
1 kg onions
2 bulbs of garlic
1 bunch of carrots
2 broccoli
500 g strawberries
4 lemons
1 cucumber
3 sweet peppers
1 kg spinach
1 bunch of kale
400 g mushrooms
1 cauliflower
500 g green beans
1 bunch of parsley
1 eggplant
2 zucchini
4 oranges
1 kg grapes
2 mangoes
300 g raspberries
1 kg beets
500 g asparagus`;

describe("a haul of 31 lots", () => {
  it.each([
    [360, "en"],
    [1280, "es"],
  ] as const)(
    "at %i px in %s: is one page of A4 and of Letter; how long each lasts is one touch away",
    async (width, locale) => {
      const { page, faults, close } = await visit(browser(), { viewport: { width, height: 900 }, locale });
      await page.getByRole("textbox").first().fill(large);
      await page.waitForFunction(() => document.querySelectorAll(".lives > li").length >= 31, undefined, {
        timeout: 120_000,
      });
      const narrow = width === 360;
      // While the haul is typed, what was never on the screen has no height of its own.
      await page.getByRole("textbox").first().blur();
      if (narrow) {
        // The two that last shortest stand open with their reasons.
        expect(await page.locator(".short-lives > li").count()).toBe(29);
        await page.locator(".life-section > .fold > summary").click();
        await page.locator(".lives summary").first().scrollIntoViewIfNeeded();
      }
      const folded = page.locator(".lives summary");
      expect(await folded.count()).toBeGreaterThan(20);
      for (const summary of (await folded.all()).slice(0, 5))
        expect((await summary.boundingBox())!.height).toBeGreaterThanOrEqual(44);
      // What has a last safe day says it without a touch.
      const limited = narrow
        ? ".lives > .limited .life-foot, .short-lives .below"
        : ".lives > .limited .life-foot";
      expect(await page.locator(limited).first().isVisible()).toBe(true);
      await folded.first().focus();
      await page.keyboard.press("Enter");
      expect(await page.locator(".lives details[open] .why-link").first().isVisible()).toBe(true);
      expect(await sideways(page)).toBe(0);
      if (narrow) await page.locator(".life-section > .fold > summary").click();
      await picture(page, `large-${width}-${locale}`);
      await page.emulateMedia({ media: "print" });
      // What is to be done on no one day is on paper too.
      const beside = page.locator(".beside-days ul:not(.ready) > li");
      expect(await beside.count()).toBeGreaterThan(0);
      for (const line of await beside.all()) expect(await line.isVisible()).toBe(true);
      for (const format of ["A4", "Letter"]) {
        const pdf = await page.pdf({ format });
        expect(pdf.toString("latin1").match(/\/Type\s*\/Page(?!s)/g), format).toHaveLength(1);
      }
      expect(faults).toEqual([]);
      await close();
    },
  );
});

describe("a haul of 31 lots on a telephone", () => {
  it("tells each once at its place, with the tick for putting away; all else is one touch away, and stays under the finger", async () => {
    const { page, faults, close } = await visit(browser(), phone);
    await haulBox(page).fill(large);
    await planFor(page, 31);
    const run = page.locator(".understood .run-on");
    // The first four stand by themselves, half a melon that is asked about among them.
    expect(await run.locator("span").count()).toBe(27);
    const doNow = planRegion(page).getByRole("region", { name: "Do now" });
    expect(await doNow.getByText(/^Put away/).count()).toBe(0);
    const told = doNow.getByRole("status");
    const before = Number.parseInt((await told.textContent())!, 10);
    const place = planRegion(page).getByRole("article", { name: "Refrigerator shelves" });
    await place.getByRole("checkbox", { name: "Put away: Refrigerator shelves" }).tap();
    await told.filter({ hasText: `${before - 1} things left to do.` }).waitFor();
    const fold = place.getByText("Why there, and moving");
    const top = async () => (await fold.boundingBox())!.y;
    await fold.scrollIntoViewIfNeeded();
    const at = await top();
    await fold.tap();
    expect(await top()).toBeCloseTo(at, 0);
    const move = place.getByRole("button", { name: /^Move / }).first();
    expect((await move.boundingBox())!.height).toBeGreaterThanOrEqual(44);
    await move.tap();
    await page.getByRole("dialog", { name: /^Where else\?/ }).waitFor();
    await page.keyboard.press("Escape");
    // A line that is changed stays under the finger when it is put back as it was read.
    await page.getByText("One below the other, to change").tap();
    await page.getByRole("button", { name: "Change 1 kg beets" }).tap();
    const beets = page.locator(".line", { hasText: "1 kg beets" });
    await beets.getByRole("button", { name: "Leave it out" }).tap();
    const undo = page.getByRole("button", { name: "Undo the change to 1 kg beets" });
    await undo.tap();
    expect(await run.getByText(/^beetroots/).count()).toBe(0);
    expect(await page.locator(".understood > .lines .typed", { hasText: "1 kg beets" }).isVisible()).toBe(
      true,
    );
    expect(faults).toEqual([]);
    await close();
  });

  it("runs on again as it was read when a line that waited is answered, and that line stays", async () => {
    const { page, close } = await visit(browser(), phone);
    await haulBox(page).fill(large);
    const asked = page.locator(".understood > .lines .line.asked");
    await asked.waitFor();
    await asked.getByRole("button", { name: "It is right" }).tap();
    await page.locator(".understood > .lines .typed", { hasText: "half a melon" }).waitFor();
    await asked.waitFor({ state: "detached" });
    await close();
  });
});

describe("the plan is pictured", () => {
  it.each([
    [360, "en", "light"],
    [360, "es", "dark"],
    [768, "en", "dark"],
    [768, "es", "light"],
    [1920, "en", "light"],
    [1920, "es", "dark"],
  ] as const)("at %i px in %s, %s", async (width, locale, colorScheme) => {
    const { page, close } = await visit(browser(), { viewport: { width, height: 900 }, locale, colorScheme });
    await page.locator(".lives > li").first().waitFor({ timeout: 60_000 });
    await page.locator(".ticks input").nth(1).check();
    expect(await sideways(page)).toBe(0);
    await picture(page, `plan-${width}-${locale}-${colorScheme}`);
    await close();
  });
});
