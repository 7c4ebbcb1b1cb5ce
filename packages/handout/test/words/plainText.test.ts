import { plainText, shortText } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("text from outside", () => {
  it("keeps mark-up as the characters it is", () => {
    expect(plainText("<script>alert(1)</script> & co")).toBe("<script>alert(1)</script> & co");
  });
  it("shows control characters instead of sending them", () => {
    expect(plainText("red\u001b[31m\u0007\u0000")).toBe("red\ufffd[31m\ufffd\ufffd");
    expect(plainText("one\r\ntwo\tthree")).toBe("one two three");
  });
  it("never holds a control character or a mark that turns the direction of text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(plainText(text)).not.toMatch(/\p{Cc}|[\u202a-\u202e\u2066-\u2069]/u);
      }),
    );
  });
  it("is cut with an ellipsis, never inside a character", () => {
    expect(shortText("🥕🥕🥕🥕", 3)).toBe("🥕🥕…");
    expect(shortText("abc", 3)).toBe("abc");
  });
});
