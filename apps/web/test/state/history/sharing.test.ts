import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sharing } from "../../../src/state/history/sharing.js";

describe("what is shared with what was before", () => {
  it("says what it said, whatever was before", () => {
    const plain = fc.jsonValue();
    fc.assert(
      fc.property(plain, plain, (before, after) => {
        expect(JSON.stringify(sharing(before, after))).toBe(JSON.stringify(after));
      }),
    );
  });
  it("is the very same where it says the same", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (before) => {
        expect(sharing(before, structuredClone(before))).toBe(before);
      }),
    );
  });
  it("is the very same in every part that did not change", () => {
    const before = { text: "3 figs", kitchens: [{ key: "a" }], away: ["2026-06-13"] };
    const after = sharing(before, structuredClone({ ...before, text: "4 figs" }));
    expect(after).not.toBe(before);
    expect(after.kitchens).toBe(before.kitchens);
    expect(after.away).toBe(before.away);
  });
});
