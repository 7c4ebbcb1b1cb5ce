import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { haulFromArguments, looksLikePath } from "../../src/options/haulArgument.js";
import { asWords } from "../../src/run.js";
import { UserError } from "../../src/userError.js";
import { fakeDoor } from "../support/fakeDoor.js";

const door = fakeDoor({
  files: { "haul.txt": "2 kg apples", kale: "1 leek" },
  folders: ["examples"],
  input: "3 pears",
});

describe("the haul argument", () => {
  it.each([
    [["-"], "3 pears"],
    [["haul.txt"], "2 kg apples"],
    [["kale"], "1 leek"],
    [["2 lb apples, 1/2 bunch cilantro"], "2 lb apples, 1/2 bunch cilantro"],
    [["2", "lb", "apples"], "2 lb apples"],
    [["½ melon"], "½ melon"],
  ])("%j stands for “%s”", (words, text) => {
    expect(haulFromArguments(door, words).text).toBe(text);
  });
  it.each([["missing.txt"], ["./missing"], ["/nowhere/at/all"], ["examples"]])(
    "%s is a file that cannot be read",
    (name) => {
      expect(() => haulFromArguments(door, [name])).toThrow(UserError);
    },
  );
  it("says where the haul came from", () => {
    expect(haulFromArguments(door, ["haul.txt"]).origin).toEqual({ from: "file", file: "“haul.txt”" });
    expect(haulFromArguments(door, ["5 figs"]).origin).toEqual({ from: "no file", file: "“5 figs”" });
  });
  it("refuses two files", () => {
    expect(() => haulFromArguments(door, ["haul.txt", "kale"])).toThrow(/one file at a time/);
  });
  it("never takes words with a space between them for a path", () => {
    fc.assert(fc.property(fc.string(), fc.string(), (one, other) => !looksLikePath(`a${one} ${other}b`)));
  });
});

describe("an argument that begins with a dash", () => {
  it.each(["- 2 apples", "-3 apples", "• kale", "- kale\n- leek"])("“%s” is words", (text) => {
    expect(asWords(text)).toBe(` ${text}`);
  });
  it.each(["--json", "-k", "-", "--at", "-5", "--kitchen=my kitchen.json"])("“%s” is left alone", (text) => {
    expect(asWords(text)).toBe(text);
  });
});
