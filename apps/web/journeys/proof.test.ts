import { describe, expect, inject, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { haulBox, planFor, planRegion, proofOf } from "./support/steps.js";

const browser = useBrowser();
const things = 17;
const limit = /By the model no (other )?plan for this haul in this kitchen/;
const solver = /\/highs-[^/]*\.(js|wasm)$/;
/** Proving takes seconds, and more on a machine with other work. */
const proving = { timeout: 120_000 };

describe("how much better the plan could be", () => {
  it("is told below what goes to waste, without a fault and from the page's own files", async () => {
    const { page, requests, faults, close } = await visit(browser());
    await proofOf(page).waitFor(proving);
    expect(await proofOf(page).textContent()).toMatch(limit);
    expect(await page.locator(".worth > .waste + .proof").count()).toBe(1);
    const asked = requests.filter(({ url }) => solver.test(url)).map(({ url }) => url);
    expect(asked).toHaveLength(2);
    for (const url of requests.map((each) => each.url).filter((each) => !each.startsWith("data:")))
      expect(url.startsWith(inject("address")), url).toBe(true);
    expect(faults).toEqual([]);
    await close();
  });

  it("costs the first screen nothing: the solver is fetched once the plan and its reasons are there", async () => {
    const { page, close } = await visit(browser());
    const there: boolean[] = [];
    await page.context().route(solver, async (route) => {
      await planFor(page, things);
      there.push((await planRegion(page).locator(".lives > li").count()) >= things);
      await route.continue();
    });
    await page.reload();
    await proofOf(page).waitFor(proving);
    expect(there).toEqual([true, true]);
    await close();
  });

  it.each([360, 1280])(
    "is announced to nobody and moves nothing when it comes at %i px: it is the last of all",
    async (width) => {
      const { page, close } = await visit(browser(), { viewport: { width, height: 900 } });
      await planFor(page, things);
      const last = planRegion(page).locator(".waste");
      const top = () => last.evaluate((line) => line.getBoundingClientRect().top + scrollY);
      const before = await top();
      await proofOf(page).waitFor(proving);
      expect(await top()).toBe(before);
      const announced = "[role=status] .proof, [role=alert] .proof, [aria-live] .proof";
      expect(await page.locator(announced).count()).toBe(0);
      await close();
    },
  );

  it("keeps no question waiting, and is then told of the new plan", async () => {
    const { page, faults, close } = await visit(browser());
    await planFor(page, things);
    await page.waitForRequest(solver);
    await haulBox(page).fill("2 kg apples");
    await planFor(page, 1);
    expect(await proofOf(page).count()).toBe(0);
    await proofOf(page).waitFor(proving);
    expect(faults).toEqual([]);
    await close();
  });

  it("is passed over where the solver does not come: the plan stands, and no room stays empty", async () => {
    const { page, close } = await visit(browser());
    await page.context().route(solver, (route) => route.abort());
    const refused = page
      .context()
      .waitForEvent("requestfailed", { predicate: (one) => solver.test(one.url()) });
    await page.reload();
    await planFor(page, things);
    await refused;
    expect(await page.locator(".proof").count()).toBe(0);
    expect(await page.getByRole("alert").count()).toBe(0);
    expect(await planRegion(page).locator(".lives > li").count()).toBeGreaterThanOrEqual(things);
    await close();
  });
});
