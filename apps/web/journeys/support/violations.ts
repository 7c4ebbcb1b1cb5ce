import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { withAllDrawn } from "./browser.js";

/** What axe finds wrong, each with the first place where it was found. */
export async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await withAllDrawn(page, () => new AxeBuilder({ page }).analyze());
  return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)} ${nodes[0]?.failureSummary}`);
}
