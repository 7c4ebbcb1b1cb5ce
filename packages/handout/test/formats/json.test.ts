import { jsonText } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("JSON text", () => {
  it("reads back as the same value, without characters that steer a terminal", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = jsonText(value);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        expect(text).not.toMatch(/(?!\n)\p{Cc}|[\u202a-\u202e]/u);
      }),
    );
  });
});
