import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { picture, useBrowser, type Visit, visit } from "./support/browser.js";
import { sideways } from "./support/steps.js";
import { violations } from "./support/violations.js";

const browser = useBrowser();
const at = (path: string) => `${inject("address")}#/${path}`;
const open = (path: string, options: Parameters<typeof visit>[1] = {}): Promise<Visit> =>
  visit(browser(), { address: at(path), ...options });

const field = (page: Page) => page.getByRole("combobox");
const title = (page: Page, name: string) => page.getByRole("heading", { level: 2, name, exact: true });
/** Waits until the whole answer is there: its facts and what is told of the kind. */
async function answered(page: Page): Promise<void> {
  await page.locator(".ask-facts[aria-busy=false]").waitFor({ timeout: 60_000 });
  await page.locator(".ask-ripe").waitFor();
}

describe("asking by keyboard from the back of the room", () => {
  it("a letter typed anywhere begins a question; arrows, Enter and Escape do the rest; the answer is announced", async () => {
    const { page, faults, close } = await open("kitchen");
    await page.getByRole("heading", { level: 2 }).first().waitFor();
    let come = () => {};
    const held = new Promise<void>((resolve) => {
      come = resolve;
    });
    await page.route(/AskPage/, async (route) => {
      await held;
      await route.continue();
    });
    await page.evaluate(() => {
      location.hash = "#/ask";
    });
    await page.locator("main > [role=status]", { hasText: "Opening" }).waitFor();
    // What is typed while the screen is on its way is there when it comes, and typing goes on.
    await page.keyboard.type("brc");
    await page.keyboard.press("Backspace");
    await page.keyboard.type("oc");
    come();
    await page.getByRole("heading", { name: "All kinds" }).waitFor();
    await page.keyboard.type("c");
    expect(await field(page).inputValue()).toBe("brocc");
    expect(await field(page).getAttribute("aria-expanded")).toBe("true");
    const marked = async () => {
      const id = await field(page).getAttribute("aria-activedescendant");
      return page.locator(`[id="${id}"]`).textContent();
    };
    const first = await marked();
    expect(first).toMatch(/^broccoli/);
    await page.keyboard.press("ArrowDown");
    expect(await marked()).not.toBe(first);
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Escape");
    expect(await field(page).getAttribute("aria-expanded")).toBe("false");
    expect(await field(page).inputValue()).toBe("brocc");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await title(page, "Broccoli").waitFor();
    await answered(page);
    expect(page.url()).toBe(at("ask/broccoli"));
    expect(
      await page
        .getByRole("status")
        .filter({ hasText: /^Broccoli\. .+\. .+\. .+\.$/ })
        .count(),
    ).toBe(1);
    await page.keyboard.type("zanaoria");
    await page.keyboard.press("Enter");
    await title(page, "Carrots").waitFor();
    await page.goBack();
    await title(page, "Broccoli").waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it("Page Down and Page Up, as a remote control sends them, go to the next answer and back", async () => {
    const { page, close } = await open("ask/carrot", { viewport: { width: 1920, height: 1080 } });
    await answered(page);
    const next = await page.getByRole("link", { name: /^Next: / }).getAttribute("href");
    await page.keyboard.press("PageDown");
    await page.waitForURL((url) => url.hash === next);
    await page.keyboard.press("PageUp");
    await page.waitForURL((url) => url.hash === "#/ask/carrot");
    await close();
  });

  it("letters begin no question once that is switched off, nor where there is another field", async () => {
    const { page, close } = await open("ask");
    const anywhere = page.getByRole("checkbox", { name: /A letter typed anywhere/ });
    await anywhere.uncheck();
    await page.keyboard.type("abc");
    expect(await field(page).inputValue()).toBe("");
    await close();
  });

  it("a name that is none is said to be none, with what to do", async () => {
    const { page, close } = await open("ask/zorbulon");
    await page.getByText("There is no kind “zorbulon”.").waitFor();
    await field(page).fill("qqqq");
    await page.getByRole("status").filter({ hasText: "No kind is known by the name “qqqq”." }).waitFor();
    await close();
  });
});

describe("asking by touch", () => {
  it("finds by a Spanish name, answers for cut and for ripe, and names its sources", async () => {
    const { page, faults, close } = await open("ask", {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    });
    await field(page).tap();
    await field(page).fill("aguacate");
    await page.getByRole("option", { name: /avocados “aguacate/ }).tap();
    await title(page, "Avocados").waitFor();
    await answered(page);
    const facts = page.locator(".ask-facts");
    const unripe = await facts.textContent();
    expect(unripe).toContain("until ripe, then");
    await page.getByRole("radio", { name: "ripe", exact: true }).tap();
    await page.waitForFunction(
      (before) => document.querySelector(".ask-facts")?.textContent !== before,
      unripe,
    );
    await answered(page);
    expect(await facts.textContent()).toContain("Ready to eat now.");
    await page.getByRole("radio", { name: "cut", exact: true }).tap();
    await answered(page);
    expect(await facts.textContent()).toMatch(/Refrigerator/);
    expect(await page.getByRole("group", { name: "Ripeness" }).count()).toBe(0);
    await page.getByText("Where this comes from").tap();
    await page
      .getByText(/common practice, no source/)
      .first()
      .waitFor();
    expect(await page.locator(".ask-sources li").count()).toBeGreaterThan(5);
    expect(faults).toEqual([]);
    await close();
  });

  it("is answered for the kitchen that was chosen, and for an ordinary one at a touch", async () => {
    const { page, close } = await visit(browser());
    await page.evaluate(() => {
      location.hash = "#/kitchen";
    });
    await page.getByLabel("Kitchen most like yours").selectOption("cellar");
    await page.evaluate(() => {
      location.hash = "#/ask/potato";
    });
    await answered(page);
    expect(await page.locator(".ask-facts").textContent()).toContain("Cellar");
    await page.getByRole("radio", { name: "an ordinary one" }).check();
    await page.waitForFunction(() => !document.querySelector(".ask-facts")?.textContent?.includes("Cellar"));
    await close();
  });
});

/** For `before`: counts what moved by itself, and holds every answer of a worker back until it is let through. */
function watchMoving(): void {
  const seen = { moved: [] as string[], held: [] as (() => void)[], holding: true };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { sources?: { node?: Node }[] })[])
      for (const { node } of entry.sources ?? [])
        seen.moved.push((node as Element | undefined)?.className ?? node?.nodeName ?? "");
  }).observe({ type: "layout-shift", buffered: true });
  const { set, get } = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage")!;
  Object.defineProperty(Worker.prototype, "onmessage", {
    get,
    set(hear: (event: MessageEvent) => void) {
      set!.call(this, (event: MessageEvent) => {
        if (seen.holding) seen.held.push(() => hear(event));
        else hear(event);
      });
    },
  });
}
type Watching = { seen: { moved: string[]; held: (() => void)[]; holding: boolean } };

describe("what is known at once", () => {
  it.each([
    [360, 740, "en-GB"],
    [360, 740, "es-MX"],
    [1920, 1080, "en-GB"],
  ] as const)(
    "at %i × %i in %s: stands there before anything is worked out, and nothing moves when the rest comes",
    async (width, height, locale) => {
      const { page, faults, close } = await open("ask", {
        viewport: { width, height },
        locale,
        before: watchMoving,
      });
      for (const id of ["avocado", "carrot", "wild-mushroom", "sweetsop", "basil", "rhubarb"]) {
        await page.evaluate((kind) => {
          (window as unknown as Watching).seen.holding = true;
          location.hash = `#/ask/${kind}`;
        }, id);
        await page.waitForFunction((kind) => location.hash.endsWith(kind), id);
        for (const part of ["ripe", "going", "discard", "save", "cautions"])
          await page.locator(`.ask-${part} li`).first().waitFor();
        expect(await page.locator(".ask-facts").getAttribute("aria-busy"), id).toBe("true");
        await page.waitForFunction(() => (window as unknown as Watching).seen.held.length > 0);
        await page.evaluate(() => {
          const { seen } = window as unknown as Watching;
          seen.moved.length = 0;
          seen.holding = false;
          for (const letThrough of seen.held.splice(0)) letThrough();
        });
        await answered(page);
        await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn, 60))));
        expect(await page.evaluate(() => (window as unknown as Watching).seen.moved), id).toEqual([]);
      }
      expect(faults).toEqual([]);
      await close();
    },
  );

  it("what can do harm comes before where it goes, and is not said twice", async () => {
    const { page, close } = await open("ask/wild-mushroom");
    await answered(page);
    const pressing = page.getByRole("region", { name: "Before anything else" });
    const words = await pressing.getByRole("listitem").allTextContents();
    expect(words.length).toBeGreaterThan(0);
    const [above, facts] = [await pressing.boundingBox(), await page.locator(".ask-facts").boundingBox()];
    expect(above!.y + above!.height).toBeLessThanOrEqual(facts!.y);
    for (const line of words) expect(await page.getByText(line, { exact: true }).count(), line).toBe(1);
    await close();
  });
});

describe("how an answer looks", () => {
  it("fits a projector's window without scrolling, and the longest answers too", async () => {
    const { page, close } = await open("ask/avocado", { viewport: { width: 1920, height: 1080 } });
    for (const id of ["avocado", "cantaloupe", "garlic", "bamboo-shoot", "potato"]) {
      await page.evaluate((kind) => {
        location.hash = `#/ask/${kind}`;
      }, id);
      await page.waitForFunction((kind) => location.hash.endsWith(kind), id);
      await answered(page);
      const [over, size] = await page.evaluate(() => [
        document.documentElement.scrollHeight - innerHeight,
        Number.parseFloat(getComputedStyle(document.querySelector(".ask-facts dd")!).fontSize),
      ]);
      expect(over, id).toBeLessThanOrEqual(0);
      expect(size, id).toBeGreaterThanOrEqual(34);
    }
    await close();
  });

  it("says where, how and until when in a telephone's first screenful", async () => {
    const { page, close } = await open("ask/avocado", { viewport: { width: 360, height: 640 } });
    await answered(page);
    for (const fact of await page.locator(".ask-facts dd:not(.less)").all()) {
      const box = await fact.boundingBox();
      expect(box!.y + box!.height).toBeLessThanOrEqual(640);
    }
    await close();
  });

  it.each([
    [360, "en-GB", "light"],
    [360, "es-MX", "dark"],
    [768, "es-MX", "light"],
    [1920, "en-GB", "dark"],
    [1920, "es-MX", "light"],
  ] as const)(
    "axe finds nothing wrong at %i px in %s, %s, with the list open too",
    async (width, locale, colorScheme) => {
      const { page, close } = await open("ask/broccoli", {
        viewport: { width, height: width === 1920 ? 1080 : 740 },
        locale,
        colorScheme,
      });
      await answered(page);
      expect(await sideways(page)).toBe(0);
      expect(await violations(page)).toEqual([]);
      await picture(page, `ask-${width}-${locale.slice(0, 2)}-${colorScheme}`);
      await field(page).fill("lech");
      await page.getByRole("option").first().waitFor();
      expect(await violations(page)).toEqual([]);
      await picture(page, `ask-list-${width}-${locale.slice(0, 2)}-${colorScheme}`);
      await close();
    },
  );

  it.each([320, 640])("needs no sideways scrolling at %i px with text twice as large", async (width) => {
    const { page, close } = await open("ask/garlic", { viewport: { width, height: 740 } });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    await answered(page);
    expect(await sideways(page)).toBe(0);
    await picture(page, `ask-text-200-${width}`);
    await close();
  });
});
