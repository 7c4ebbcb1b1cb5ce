import { jsonText } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("JSON text", () => {
  it("reads back as the same value, without characters that steer a terminal", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = jsonText(value);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
        // biome-ignore lint/suspicious/noControlCharactersInRegex: looking for them is the test
        expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
      }),
    );
  });
});
