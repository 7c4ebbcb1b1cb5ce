import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readKeptFile } from "../../src/storage/keptFile.js";
import { keptFileText } from "../../src/storage/keptFileText.js";
import { anyState, how, otherwise } from "../support/states.js";

const schema = JSON.parse(
  readFileSync(new URL("../../../../schemas/kept-file.schema.json", import.meta.url), "utf8"),
);
const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, validateFormats: false });
const validate = ajv.compile(schema);
const written = new Date(Date.UTC(2026, 5, 13, 10));

describe("the file to take along", () => {
  it("keeps to its schema and is read back as it was, whatever was entered", () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const text = keptFileText(state, written);
        const entered = JSON.parse(JSON.stringify(state));
        expect(validate(JSON.parse(text)) ? [] : validate.errors).toEqual([]);
        expect(readKeptFile(text, how)).toEqual({ ok: true, state: entered, unused: [] });
      }),
    );
  });

  it("may be an older record, or one that was set aside", () => {
    const record = { ...otherwise, text: "2 kg apples", kept: { by: "x", number: 1 } };
    const read = readKeptFile(JSON.stringify(record), how);
    expect(read).toEqual({ ok: true, state: { ...otherwise, text: "2 kg apples" }, unused: [] });
  });

  it.each([
    ["", "notJson"],
    ['{"entered": {"te', "notJson"],
    ["[]", "notOurs"],
    ["7", "notOurs"],
    ['{"entered": null}', "notOurs"],
    ['{"version": 1, "places": []}', "notOurs"],
  ])("%s is no such file: %s", (text, fault) => {
    expect(readKeptFile(text, how)).toEqual({ ok: false, fault });
  });

  it("tells what it could not use, of the file too", () => {
    const text = JSON.stringify({ version: 2, colour: "green", entered: { text: "x", days: 0 } });
    const read = readKeptFile(text, how);
    expect(read.ok && read.unused.map(({ field, value }) => [field, value])).toEqual([
      ["version", "2"],
      ["colour", '"green"'],
      ["days", "0"],
    ]);
  });

  it("never throws, whatever is in it", () => {
    fc.assert(fc.property(fc.anything(), (value) => void readKeptFile(String(JSON.stringify(value)), how)));
    fc.assert(fc.property(fc.string(), (text) => void readKeptFile(text, how)));
  });
});
