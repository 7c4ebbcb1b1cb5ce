import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readJsonFile, readTextFile, textOf } from "../../src/door/readText.js";
import { UserError } from "../../src/userError.js";
import { controlCharacters, fakeDoor } from "../support/fakeDoor.js";

describe("text from files", () => {
  const door = fakeDoor({
    files: {
      "zero.bin": new Uint8Array([65, 0, 66]),
      "latin.txt": new Uint8Array([0x66, 0xfc, 0x6e, 0x66]),
      "mark.txt": new Uint8Array([0xef, 0xbb, 0xbf, 0x61]),
      "huge.txt": new Uint8Array(2_000_001).fill(97),
      "broken.json": "{ nope",
    },
    folders: ["folder"],
  });
  it.each([
    ["zero.bin", /not a text file/],
    ["latin.txt", /not text in UTF-8/],
    ["huge.txt", /2000001 bytes/],
    ["folder", /this is a folder/],
    ["gone.txt", /no such file/],
  ])("%s is refused", (path, why) => {
    expect(() => readTextFile(door, path, "haul file")).toThrow(why);
  });
  it("loses a byte-order mark", () => {
    expect(readTextFile(door, "mark.txt", "haul file")).toBe("a");
  });
  it("that is no JSON is refused with the reason", () => {
    expect(() => readJsonFile(door, "broken.json", "kitchen file")).toThrow(/not valid JSON/);
  });
  it("any bytes are text or an error for the person, and a path is never echoed raw", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), fc.string({ unit: "binary" }), (bytes, path) => {
        try {
          expect(textOf(bytes, "haul")).toBeTypeOf("string");
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
        }
        expect(() => readTextFile(fakeDoor(), path, "haul file")).toThrow(UserError);
        try {
          readTextFile(fakeDoor(), path, "haul file");
        } catch (error) {
          expect((error as Error).message).not.toMatch(controlCharacters);
        }
      }),
    );
  });
});
