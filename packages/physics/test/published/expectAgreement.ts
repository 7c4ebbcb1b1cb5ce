import { expect } from "vitest";
import type { RecordedComparison } from "./record.js";

/**
 * Expects a recorded comparison to agree within its tolerance or, where it is a known misfit, to miss by the factor on record ("from-to"), so that a misfit that
 * grows or goes away is noticed.
 */
export function expectAgreement(recorded: RecordedComparison | undefined, misfit = ""): void {
  const { what, ratio, within } = recorded!;
  if (misfit === "") {
    expect(within, `${what}: ${ratio.toFixed(2)} times the published`).toBe(true);
    return;
  }
  const [from, to] = misfit.split("-").map(Number);
  expect(ratio, what).toBeGreaterThanOrEqual(from!);
  expect(ratio, what).toBeLessThanOrEqual(to!);
}
