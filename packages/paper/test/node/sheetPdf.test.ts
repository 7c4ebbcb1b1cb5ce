import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { SheetView } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { PaperError, type SheetOptions, sheetPdf } from "../../src/index.js";
import { typeset } from "../../src/node/nodeTypesetter.js";
import { inventedSheet, longSheet } from "../fixtures/sheet.js";
import { readPdf } from "../support/readPdf.js";

const options: SheetOptions = {
  paper: "a4",
  large: false,
  pageWords: (page, pages) => `Page ${page} of ${pages}`,
};
const pdf = (view: SheetView, more: Partial<SheetOptions> = {}) => sheetPdf(view, { ...options, ...more });
const read = (view: SheetView, more: Partial<SheetOptions> = {}) => readPdf(pdf(view, more).bytes);
const hash = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const latin = (bytes: Uint8Array) => new TextDecoder("latin1").decode(bytes);

describe("the page for the refrigerator door as PDF", () => {
  it("is tagged, says that it is PDF/UA-1, and has its title and language", async () => {
    const { bytes } = pdf(inventedSheet);
    const found = await readPdf(bytes);
    expect(found.marked).toBe(true);
    expect(found.title).toBe("Where it all goes, Sat 13 June to Mon 22 June 2026");
    expect(found.language).toBe("en-GB");
    expect(latin(bytes)).toContain("<pdfuaid:part>1</pdfuaid:part>");
    expect(latin(bytes)).toMatch(/\/DisplayDocTitle true/);
  });

  it("says everything once and in order, to whoever hears it", async () => {
    const { spoken, headings } = await read(inventedSheet);
    expect(headings).toEqual([
      "H1 Read this first",
      "H1 Eat it up by",
      "H1 Move later",
      "H1 Get it ready",
      "H1 Put it here",
      "H2 Left drawer",
      "H1 Take care",
    ]);
    expect(spoken.replace(/ (?=[,:.])/g, "")).toBe(
      "Where it all goes Sat 13 June to Mon 22 June 2026 Read this first Throw away: a cut melon. " +
        "Eat it up by Sat 13 June: Strawberries. Once cut, cover it: cabbage. Left at the end: onions. " +
        "Move later When ripe, about Mon 15 June: Bananas. Move to the door, loose. " +
        "Get it ready Do not wash yet. * Strawberries. " +
        "Put it here Left drawer Vent: half open 4 °C " +
        "Strawberries, about 360 g: loose. Eat them today. From Mon 15 June: bananas. " +
        "Take care Check with your local food-safety authority. Invented for a test.",
    );
  });

  it("is in black and white alone", async () => {
    const { colours } = await read(inventedSheet);
    expect([...new Set(colours)].sort()).toEqual(["#000000", "#ffffff"]);
  });

  it.each([
    ["a4", [595.28, 841.89]],
    ["letter", [612, 792]],
  ] as const)("is on %s", async (paper, [width, height]) => {
    const { size } = await read(inventedSheet, { paper });
    expect(size[0]).toBeCloseTo(width, 1);
    expect(size[1]).toBeCloseTo(height, 1);
  });

  it("is the same to the byte when it is made again, in this process and in another", () => {
    const here = pdf(longSheet(60)).bytes;
    expect(hash(pdf(longSheet(60)).bytes)).toBe(hash(here));
    const built = new URL("../../dist/index.js", import.meta.url);
    if (!existsSync(built)) throw new Error("packages/paper is not built. Run node scripts/build.mjs first.");
    const code = `
      const { sheetPdf } = await import(${JSON.stringify(built.href)});
      const view = JSON.parse(process.argv[1]);
      const { bytes } = sheetPdf(view, { paper: "a4", large: false, pageWords: (page, pages) => "Page " + page + " of " + pages });
      process.stdout.write(bytes);`;
    const elsewhere = execFileSync(
      process.execPath,
      ["--input-type=module", "-e", code, JSON.stringify(longSheet(60))],
      { cwd: "/", env: { ...process.env, TZ: "Pacific/Kiritimati" }, maxBuffer: 1e8 },
    );
    expect(hash(new Uint8Array(elsewhere))).toBe(hash(here));
  });

  it("holds no day and no time of its making", () => {
    expect(latin(pdf(inventedSheet).bytes)).not.toMatch(/CreationDate|ModDate|CreateDate|ModifyDate/);
  });
});

describe("how much fits", () => {
  it("sets a short page large, a longer one smaller, and goes on to a second before type gets tiny", async () => {
    const [short, middle, long] = [pdf(inventedSheet), pdf(longSheet(45)), pdf(longSheet(150))];
    expect([short.pages, middle.pages, long.pages]).toEqual([1, 1, 2]);
    expect(short.textSize).toBe(15);
    expect(middle.textSize).toBeLessThan(short.textSize);
    for (const { textSize } of [middle, long]) expect(textSize).toBeGreaterThanOrEqual(9);
    const { drawn } = await readPdf(long.bytes);
    expect(drawn).toMatch(/Page 1 of 2.*Page 2 of 2/);
    expect((await readPdf(short.bytes)).drawn).not.toMatch(/Page 1/);
  });

  it("says the place again where it goes on in the next column, for the eye alone", async () => {
    const { spoken, drawn } = await read(longSheet(45));
    expect(drawn.match(/Left drawer/g)!.length).toBeGreaterThan(1);
    expect(spoken.match(/Left drawer/g)).toHaveLength(1);
  });

  it("is never below 18 pt in large print", async () => {
    const { textSizes, pages } = await read(longSheet(20), { large: true });
    expect(pages).toBeGreaterThan(1);
    // The foot with the number of the page, and nothing else, is smaller.
    expect(textSizes.filter((size) => size < 18)).toHaveLength(pages);
  });

  it("keeps names that are too long for a line on the page", async () => {
    const endless = "W".repeat(120);
    const places = inventedSheet.places.map((place) => ({
      ...place,
      name: endless,
      rows: [{ ...place.rows[0]!, name: endless }],
    }));
    for (const large of [false, true]) {
      const { farthest, spoken } = await read({ ...inventedSheet, places }, { large });
      expect(farthest).toBeLessThan(0.99);
      expect(spoken.match(/W/g)!.length).toBeGreaterThanOrEqual(240);
    }
  });
});

describe("what comes in is data", () => {
  const hostile = `#panic("no") = *x* $y$ \`z\` <a> @b \\ "quoted" // not this /* nor this */ [c] {d} ~ -- é ñ ¿`;

  it("prints markup as the characters it is", async () => {
    const places = inventedSheet.places.map((place) => ({ ...place, name: hostile }));
    const { spoken } = await read({ ...inventedSheet, places, note: hostile });
    expect(spoken.split(hostile)).toHaveLength(3);
  });

  it("refuses a character that it has no letter for, and names it", () => {
    const places = inventedSheet.places.map((place) => ({ ...place, name: "冰箱 shelf" }));
    expect(() => pdf({ ...inventedSheet, places })).toThrow(PaperError);
    try {
      pdf({ ...inventedSheet, places });
    } catch (error) {
      expect((error as PaperError).characters).toEqual(["冰", "箱"]);
    }
  });

  it("takes letters of other tongues that it has", async () => {
    const places = inventedSheet.places.map((place) => ({ ...place, name: "Холодильник, Ņevēžis, Ðiện" }));
    expect((await read({ ...inventedSheet, places })).spoken).toContain("Холодильник, Ņevēžis, Ðiện");
  });
});

describe("the fonts", () => {
  const folder = fileURLToPath(new URL("../../fonts/", import.meta.url));
  const told = [...readFileSync(`${folder}README.md`, "utf8").matchAll(/([0-9a-f]{64}) {2}(\S+)/g)];

  it("are the files their page tells of, with their licence", () => {
    expect(told.map(([, , name]) => name)).toEqual(["Andika-Regular.ttf", "Andika-Bold.ttf"]);
    for (const [, sum, name] of told) expect(hash(readFileSync(folder + name))).toBe(sum);
    expect(readFileSync(`${folder}OFL.txt`, "utf8")).toMatch(/SIL OPEN FONT LICENSE Version 1\.1/);
  });

  it("are embedded, both of them and no other", () => {
    const names = [...latin(pdf(inventedSheet).bytes).matchAll(/\/FontName \/[A-Z]{6}\+(\S+)/g)];
    expect([...new Set(names.map(([, name]) => name))].sort()).toEqual(["Andika", "Andika-Bold"]);
  });

  it("that are not there are an error: the typesetter itself only warns, and prints nothing", () => {
    expect(() => typeset("test/fixtures/unknownFont.typ", {})).toThrow(/unknown font family/);
  });
});
