import type { ClassDocument } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { type DocumentOptions, documentPdf, PaperError } from "../../src/index.js";
import { everyBlock as all } from "../fixtures/document.js";
import { readPdf } from "../support/readPdf.js";
import { spokenIn } from "../support/spokenIn.js";

const options: DocumentOptions = {
  paper: "a4",
  print: "ordinary",
  language: "en-GB",
  sourcesHeading: "Where this comes from",
  kit: "Invented kit.",
  pageWords: (page, pages) => `Page ${page} of ${pages}`,
};

describe("a document of a class kit as PDF", () => {
  it("is tagged, has its title and language, and says every block once and in order", async () => {
    const { bytes, pages, textSize } = documentPdf(all, options);
    const found = await readPdf(bytes);
    expect([found.marked, found.title, found.language]).toEqual([true, "Everything", "en-GB"]);
    expect(new TextDecoder("latin1").decode(bytes)).toContain("<pdfuaid:part>1</pdfuaid:part>");
    expect([pages, found.pages, textSize]).toEqual([2, 2, 12]);
    expect(found.headings).toEqual([
      "H1 First part",
      "H2 Kale",
      "H2 1. Asked?",
      "H2 2. Told?",
      "H1 Second part",
      "H1 Where this comes from",
    ]);
    const order =
      /Everything.*Below it.*First part.*5 kg.*dotted.*ticked.*numbered.*Where.*Drawer.*Food.*Room.*Kale.*3 L.*Careful.*Kale.*Where\?.*Cold.*Bag.*1\. Asked\?.*A\. yes.*B\. no.*2\. Told\?.*A\. left.*Right: B\. right.*Because.*A book.*Second part.*A paper.*Invented kit/;
    expect(found.spoken).toMatch(order);
    expect(found.farthest).toBeLessThan(0.99);
    expect([...new Set(found.colours)].sort()).toEqual(["#000000", "#ffffff"]);
    expect(found.drawn).toMatch(/Page 1 of 2.*Page 2 of 2/);
  });

  it("has its questions at the first level where it has no other headings", async () => {
    const blocks = all.blocks.filter(({ block }) => block === "choice" || block === "cards");
    const { headings } = await readPdf(documentPdf({ ...all, blocks, sources: [] }, options).bytes);
    expect(headings).toEqual(["H1 Kale", "H1 1. Asked?", "H1 2. Told?"]);
  });

  it("is never below 18 pt in large print, the number of the page aside", async () => {
    const { bytes, pages } = documentPdf(all, { ...options, print: "large", paper: "letter" });
    const { textSizes, size } = await readPdf(bytes);
    expect(size[0]).toBeCloseTo(612, 1);
    expect(textSizes.filter((one) => one < 17.99)).toHaveLength(pages);
  });

  it.each(["caution", "text", "list", "sources", "brief"] as const)(
    "has no page with the credit alone, whatever it ends with: %s",
    async (end) => {
      const lines = ["Careful with this.", "And with that."];
      const ends: Partial<Record<typeof end, ClassDocument["blocks"][number]>> = {
        caution: { block: "caution", lines },
        text: { block: "text", text: lines.join(" ") },
        list: { block: "list", mark: "dot", items: lines },
      };
      const last = ends[end];
      const told = lines.map((text) => ({ text, standing: "read" as const }));
      let parted = 0;
      for (let count = 28; count < 52; count++) {
        const { bytes, pages } = documentPdf(
          {
            ...all,
            blocks: [
              ...Array.from({ length: count }, (_, at) => ({ block: "text" as const, text: `Line ${at}.` })),
              ...(last ? [last] : []),
            ],
            sources: end === "sources" ? told : [],
            brief: end === "brief" ? told : undefined,
          },
          options,
        );
        if (pages === 1) continue;
        parted += 1;
        const { drawn } = await readPdf(bytes);
        expect(drawn.split("Page 1 of 2")[1], `${count} lines`).toMatch(/that\. .*Invented kit/);
      }
      expect(parted).toBeGreaterThan(3);
    },
  );

  it("sets what is to hang up as one page as large as it allows", () => {
    const places = (count: number): ClassDocument => ({
      ...all,
      sort: "places",
      blocks: Array.from({ length: count }, (_, index) => ({ block: "text", text: `Line ${index}.` })),
    });
    const [short, long] = [documentPdf(places(4), options), documentPdf(places(32), options)];
    expect([short.pages, long.pages]).toEqual([1, 1]);
    expect(long.textSize).toBeLessThan(short.textSize);
  });

  it("is set a little smaller where that spares a page, and only there", () => {
    const sized = (count: number) =>
      documentPdf(
        {
          ...all,
          blocks: Array.from({ length: count }, (_, index) => ({ block: "text", text: `Line ${index}.` })),
          sources: [],
        },
        options,
      );
    const sizes = Array.from({ length: 40 }, (_, index) => sized(index + 20));
    const pages = (size: number) =>
      new Set(sizes.filter((one) => one.textSize === size).map((one) => one.pages));
    expect([...pages(12)]).toEqual([1, 2]);
    expect([...pages(11.5)]).toEqual([1]);
    expect([...pages(11)]).toEqual([1]);
  });

  it("never has the credit alone on a page after a list, in large print", async () => {
    for (let count = 14; count <= 40; count += 1) {
      const items = Array.from({ length: count }, (_, index) => `Line ${index + 1}.`);
      const blocks = [{ block: "list" as const, mark: "dot" as const, items }];
      const document: ClassDocument = { ...all, sort: "places", blocks, sources: [] };
      const { drawn } = await readPdf(documentPdf(document, { ...options, print: "large" }).bytes);
      // The foot of a page comes last on it; a single page has none.
      const last = drawn.split(/Page \d+ of \d+/).findLast((text) => text.trim() !== "");
      expect(last, `${count} lines`).toContain(`Line ${count}.`);
      expect(last, `${count} lines`).toContain("Invented kit.");
    }
  });

  it("has titles in another language tagged with it, and nothing else", async () => {
    const line = {
      text: "Cuánto dura: A book of apples, all in one (page 3; de memoria).",
      passages: [
        { text: "A book of apples, all in one", language: "en" },
        { text: "page 3", language: "en" },
      ],
    };
    const spanish = { ...options, language: "es-419", kit: "Inventado." };
    const sources = [{ ...line, standing: "memory" as const }];
    const within = { block: "sources" as const, sources };
    for (const page of [
      { ...all, blocks: [{ block: "text" as const, text: "Hola." }], sources },
      { ...all, blocks: [within], sources: [] },
      { ...all, blocks: [{ block: "text" as const, text: "Hola." }], brief: [line] },
    ]) {
      const { bytes, pages } = documentPdf(page, spanish);
      expect(pages).toBe(1);
      expect(await spokenIn(bytes, "en")).toEqual(["A book of apples, all in one", "page 3"]);
      const found = await readPdf(bytes);
      expect(found.language).toBe("es");
      // Between pieces of two languages the reader puts a space.
      const bare = (text: string) => text.replace(/\s+/g, "");
      expect(bare(found.spoken)).toContain(bare(line.text));
    }
  });

  it("has on the page the few lines that are for it, and not the sources that another paper has", async () => {
    const brief = [{ text: "(1) A title." }];
    const blocks = [
      { block: "sources" as const, sources: [{ text: "In full.", standing: "read" as const }], brief },
    ];
    const { spoken } = await readPdf(documentPdf({ ...all, blocks, brief }, options).bytes);
    expect(spoken.match(/\(1\) A title\./g)).toHaveLength(2);
    expect(spoken).not.toMatch(/In full|A paper/);
  });

  it("is the same to the byte when it is made again", () => {
    const [one, other] = [documentPdf(all, options).bytes, documentPdf(all, options).bytes];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  });

  it("prints markup as the characters it is, and names what it has no letter for", async () => {
    const hostile = `#panic("no") *x* $y$ [c] {d} <a> @b \\ // not`;
    const blocks = [{ block: "text" as const, text: hostile }];
    expect((await readPdf(documentPdf({ ...all, blocks }, options).bytes)).spoken).toContain(hostile);
    expect(() => documentPdf({ ...all, title: "冰" }, options)).toThrow(PaperError);
  });
});
