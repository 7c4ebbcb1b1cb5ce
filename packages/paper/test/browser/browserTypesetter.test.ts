import type { PrintSize } from "@keepwright/handout";
import { beforeAll, describe, expect, it } from "vitest";
import {
  type DocumentOptions,
  PaperError,
  setDocument,
  setSheet,
  type Typesetter,
} from "../../src/browser/index.js";
import { nodeTypesetter } from "../../src/node/nodeTypesetter.js";
import { everyBlock } from "../fixtures/document.js";
import { inventedSheet, longSheet } from "../fixtures/sheet.js";
import { inBrowser } from "../support/inBrowser.js";
import { readPdf } from "../support/readPdf.js";

let browser: Typesetter;
beforeAll(async () => {
  browser = await inBrowser();
});
const node = nodeTypesetter();
const pageWords = (page: number, pages: number) => `Page ${page} of ${pages}`;
const same = (one: Uint8Array, other: Uint8Array) => Buffer.from(one).equals(Buffer.from(other));

describe("the same page set for a browser and in Node", () => {
  it.each([
    ["short", inventedSheet, "a4", false],
    ["of one page", longSheet(45), "letter", false],
    ["of two pages", longSheet(150), "a4", false],
    ["in large print", longSheet(20), "letter", true],
    [
      "with letters of other tongues",
      { ...inventedSheet, title: "Ņevēžis, Холодильник, ¿dónde?" },
      "a4",
      false,
    ],
  ] as const)("has the same bytes: a sheet %s", (_, view, paper, large) => {
    const options = { paper, large, pageWords };
    const [here, there] = [setSheet(browser, view, options), setSheet(node, view, options)];
    expect([here.pages, here.textSize]).toEqual([there.pages, there.textSize]);
    expect(same(here.bytes, there.bytes)).toBe(true);
  });

  const blocks = everyBlock.blocks.filter(({ block }) => block !== "table");
  const options = (print: PrintSize): DocumentOptions => ({
    ...({ paper: "letter", print, language: "es-419", sourcesHeading: "Sources", kit: "Kit" } as const),
    pageWords,
  });

  it.each([
    ["ordinary", everyBlock],
    ["large", everyBlock],
    ["ordinary", { ...everyBlock, sort: "places" }],
  ] as const)("has the same bytes: a document of every block without tables, in %s print", (print, all) => {
    const document = { ...all, blocks };
    const [here, there] = [
      setDocument(browser, document, options(print)),
      setDocument(node, document, options(print)),
    ];
    expect([here.pages, here.textSize]).toEqual([there.pages, there.textSize]);
    expect(same(here.bytes, there.bytes)).toBe(true);
  });

  it("is the same to a reader where there is a table, and not declared as PDF/UA-1", async () => {
    const [here, there] = [
      setDocument(browser, everyBlock, options("ordinary")),
      setDocument(node, everyBlock, options("ordinary")),
    ];
    const [found, wanted] = [await readPdf(here.bytes), await readPdf(there.bytes)];
    expect(found).toEqual(wanted);
    expect(found.marked).toBe(true);
    const latin = ({ bytes }: { bytes: Uint8Array }) => new TextDecoder("latin1").decode(bytes);
    expect(latin(here)).not.toContain("pdfuaid");
    expect(latin(here)).toMatch(/\/DisplayDocTitle true/);
    expect(latin(there)).toContain("<pdfuaid:part>1</pdfuaid:part>");
  });

  it("is a whole PDF to a reader of another make, tagged and declared as PDF/UA-1", async () => {
    const { bytes } = setSheet(browser, longSheet(150), { paper: "a4", large: false, pageWords });
    const found = await readPdf(bytes);
    expect([found.marked, found.pages, found.language]).toEqual([true, 2, "en-GB"]);
    expect(found.headings).toContain("H2 Left drawer");
    const text = new TextDecoder("latin1").decode(bytes);
    expect(text).toContain("<pdfuaid:part>1</pdfuaid:part>");
    expect(text).toMatch(/\/DisplayDocTitle true/);
    const table = Number(/startxref\n(\d+)/.exec(text)?.[1]);
    expect(text.slice(table, table + 5)).toBe("xref\n");
  });
});

describe("what cannot be set", () => {
  it.each([
    ["Node", () => node],
    ["a browser", () => browser],
  ] as const)("names the same characters in %s", (_, typesetter) => {
    const view = { ...inventedSheet, note: "冰箱, 冰" };
    let error: unknown;
    try {
      setSheet(typesetter(), view, { paper: "a4", large: false, pageWords });
    } catch (caught) {
      error = caught;
    }
    expect(error).toBeInstanceOf(PaperError);
    expect((error as PaperError).characters).toEqual(["冰", "箱"]);
  });

  it("is an error in both where a page would have to be set with a warning or not at all", () => {
    const spoilt = { sheet: "{", paper: "a4", size: "9", columns: "2", feet: "[]" };
    for (const typesetter of [node, browser])
      expect(() => typesetter.set("sheet.typ", spoilt)).toThrow(/The page cannot be set: .*JSON/);
  });
});
