import { readdirSync } from "node:fs";
import { describe, expect, inject, it } from "vitest";
import { useBrowser, visit } from "./support/browser.js";
import { amount, haulBox, planFor } from "./support/steps.js";

const browser = useBrowser();
const built = readdirSync(new URL("../dist/", import.meta.url), { recursive: true }) as string[];

describe("nothing leaves the device", () => {
  it("whatever is done, only the page's own files are asked for, and nothing is sent with the asking", async () => {
    const { page, requests, faults, close } = await visit(browser());
    await planFor(page, 17);
    await haulBox(page).fill("2 kg apples\n<img src=http://127.0.0.1:9/x>\nhttp://127.0.0.1:9/y");
    await page.getByLabel("Kitchen most like yours").selectOption("cellar");
    await planFor(page, 1);
    await page.getByRole("button", { name: "Change 2 kg apples" }).click();
    await amount(page).first().fill("9");
    await planFor(page, 1);
    for (const screen of ["kitchen", "mine", "ask", "ask/carrot", "settings", "unpack"]) {
      await page.evaluate((to) => {
        location.hash = `#/${to}`;
      }, screen);
      await page.locator(".masthead [aria-current=page]").waitFor();
      if (screen !== "ask/carrot") continue;
      await page.locator(".ask-ripe").waitFor({ timeout: 60_000 });
      await page.getByText("Where this comes from").click();
      await page.locator(".ask-sources li").first().waitFor();
    }
    const own = new Set(
      ["", ...built.map((path) => path.replaceAll("\\", "/"))].map((path) => inject("address") + path),
    );
    const asked = requests.filter(({ url }) => !url.startsWith("data:"));
    expect(asked.length).toBeGreaterThanOrEqual(3);
    expect(asked.filter(({ url }) => !own.has(url))).toEqual([]);
    expect(asked.filter(({ method, body }) => method !== "GET" || body !== null)).toEqual([]);
    expect(faults).toEqual([]);
    await close();
  });

  it("the page itself forbids scripts, styles and requests from elsewhere", async () => {
    const { page, close } = await visit(browser());
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain("unsafe");
    const refused = await page.evaluate(async () => {
      const ran = await new Promise((resolve) => {
        document.addEventListener("securitypolicyviolation", (event) => resolve(event.effectiveDirective));
        fetch("http://127.0.0.1:9/").catch(() => setTimeout(() => resolve("none"), 1000));
      });
      return ran;
    });
    expect(refused).toBe("connect-src");
    await close();
  });
});
