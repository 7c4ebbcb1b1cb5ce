import { brokenLines } from "@keepwright/handout";
import { afterEach, describe, expect, it, vi } from "vitest";
import { slidesPptx } from "../../src/slides/slidesPptx.js";
import { deck } from "./fixture.js";
import { all, chartsOf, notesOf, opened, parsed, slidesOf, textBoxes } from "./opened.js";

const made = await slidesPptx(deck);
const file = await opened(made.bytes);
const slides = slidesOf(file);
const titles = slides.map((slide) =>
  textBoxes(slide)
    .find(({ title }) => title)
    ?.lines.join(" "),
);

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

describe("slides as a file", () => {
  it("are the same to the last byte on another day and with other luck", async () => {
    vi.useFakeTimers({ now: Date.UTC(2031, 4, 1, 13, 7, 11), toFake: ["Date"] });
    vi.spyOn(Math, "random").mockReturnValue(0.123);
    const again = await slidesPptx(deck);
    expect(Buffer.from(again.bytes).equals(Buffer.from(made.bytes))).toBe(true);
  });

  it("are well-formed XML throughout, workbooks of charts too, with every part that is pointed at", async () => {
    for (const [name, xml] of file.texts) expect(() => parsed(xml), name).not.toThrow();
    const books = file.names.filter((name) => name.endsWith(".xlsx"));
    expect(books.length).toBe(3);
    for (const name of books) {
      const inner = await opened(await file.zip.file(name)!.async("uint8array"));
      for (const [part, xml] of inner.texts) expect(() => parsed(xml), `${name} ${part}`).not.toThrow();
    }
    for (const [name, xml] of file.texts) {
      if (!name.endsWith(".rels")) continue;
      const folder = name.replace(/_rels\/[^/]*$/u, "");
      for (const one of all(parsed(xml), "Relationship")) {
        if (one.getAttribute("TargetMode") === "External") continue;
        const target = one.getAttribute("Target") ?? "";
        const path = target.startsWith("/")
          ? target.slice(1)
          : new URL(target, `http://x/${folder}`).pathname.slice(1);
        expect(file.names, `${name} points at ${target}`).toContain(path);
      }
    }
  });

  it("name no other program, no template and no language but their own", () => {
    const words = [...file.texts.values()].join("\n");
    expect(words).not.toMatch(/Office Theme|PowerPoint"|<Application>Microsoft/u);
    expect(words).not.toContain('lang="en-US"');
    expect(words).toContain('lang="es-419"');
    expect(file.texts.get("docProps/core.xml")).toContain("<dc:language>es-419</dc:language>");
  });
});

describe("sources in another language", () => {
  it("are runs of that language, and what stands around them is in the deck's", async () => {
    const [source, title] = ["Cuánto dura: A book of apples (de memoria).", "A book of apples"];
    const slide = { ...deck.slides[1]!, sources: [source] };
    const passages = new Map([[source, [{ text: title, language: "en" }]]]);
    const [page] = slidesOf(await opened((await slidesPptx({ ...deck, slides: [slide], passages })).bytes));
    const runs = all(page!, "a:r").map((run) => [
      all(run, "a:rPr")[0]?.getAttribute("lang"),
      all(run, "a:t")[0]?.textContent,
    ]);
    expect(runs.filter(([lang]) => lang === "en")).toEqual([["en", title]]);
    expect(runs.filter(([lang]) => lang !== "en").map(([lang]) => lang)).not.toContain(null);
    const told = runs.map(([, text]) => text).join("");
    expect(told).toContain(`Fuentes: ${source}`);
  });
});

describe("every slide", () => {
  it("has a title of its own, which programs know as one", () => {
    expect(slides.length).toBe(made.slides);
    for (const title of titles) expect(title).toMatch(/\p{L}/u);
    expect(new Set(titles).size).toBe(titles.length);
    expect(titles[0]).toBe(deck.title);
  });

  it("goes on to further slides where there is no room, and leaves nothing out", () => {
    expect(titles.filter((title) => title?.startsWith("A title that is so long")).length).toBeGreaterThan(1);
    const words = [...file.texts]
      .filter(([name]) => name.startsWith("ppt/slides/"))
      .map(([, xml]) => parsed(xml));
    const said = words.flatMap((slide) => all(slide, "a:t").map((text) => text.textContent)).join("\n");
    const given = JSON.stringify(deck.slides.map(({ parts, subtitle }) => [parts, subtitle]));
    for (const [, text] of given.matchAll(/"(?:text|name)":"([^"]+)"/gu)) expect(said).toContain(text);
    for (const slide of deck.slides)
      for (const part of slide.parts) {
        if (part.part === "list") for (const item of part.items) expect(said).toContain(item);
        if (part.part === "table")
          for (const row of part.rows) for (const cell of row) expect(said).toContain(cell);
      }
  });

  it("holds its text: by the widths of Arial, no box has more lines than it has room for, and none leaves the slide", () => {
    for (const slide of slides) {
      for (const { box, lines, size, bold, title } of textBoxes(slide)) {
        if (!box || size === undefined || title) continue;
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.w).toBeLessThanOrEqual(13.34);
        expect(box.y + box.h).toBeLessThanOrEqual(7.5);
        const count = lines.reduce(
          (sum, line) => sum + Math.max(1, brokenLines(line, box.w * 72, { size, bold }).length),
          0,
        );
        expect((count * size * 1.15) / 72, lines.join(" ")).toBeLessThanOrEqual(box.h + 0.02);
      }
    }
  });

  it("says nothing to the class in type under 18 points, tables 14, but for sources and numbers", () => {
    for (const slide of slides) {
      const sizes = textBoxes(slide)
        .filter(({ lines }) => !lines.join().startsWith("Fuentes:"))
        .flatMap(({ size, lines }) => (size === undefined || /^\d+$/u.test(lines.join("")) ? [] : [size]));
      for (const size of sizes) expect(size).toBeGreaterThanOrEqual(14);
    }
  });

  it("has what to say in its notes, a paragraph each, with all sources", () => {
    const notes = notesOf(file);
    expect(notes.length).toBe(slides.length);
    const first = all(notes[0]!, "a:p").map((line) => line.textContent);
    expect(first.slice(0, 2)).toEqual(["Say hello.", "Ask who threw something away this week."]);
    const long = notes[titles.findIndex((title) => title?.startsWith("A title"))]!;
    const said = all(long, "a:t").map((text) => text.textContent);
    for (let index = 1; index <= 12; index++) expect(said.join("\n")).toContain(`Source ${index}: `);
  });
});

describe("charts", () => {
  const charts = chartsOf(file);
  it("are native ones with the figures of the deck, and told in words to whoever does not see them", () => {
    expect(charts.length).toBe(3);
    const frames = slides
      .flatMap((slide) => all(slide, "p:graphicFrame"))
      .filter((frame) => all(frame, "c:chart").length > 0);
    const told = frames.map((frame) => all(frame, "p:cNvPr")[0]?.getAttribute("descr"));
    expect(told).toEqual(deck.slides.flatMap(({ chart }) => (chart ? [chart.alt] : [])));
    const values = charts.map((chart) =>
      all(chart, "c:ser").map((series) =>
        all(all(series, "c:val")[0]!, "c:v").map((one) => Number(one.textContent)),
      ),
    );
    // Bars run from the bottom up; a place that another series has a bar for has no point here.
    expect(values[0]).toEqual([[13], [1], [0, 4]]);
    expect(values[2]?.[0]).toEqual([0, 0.7, 1.1, 1.3, 1.6]);
  });

  it("have no empty points or cells, yet a nought where there is one, and bars of one line on one line", async () => {
    const chart = file.texts.get("ppt/charts/chart1.xml")!;
    expect(chart).not.toContain("<c:v></c:v>");
    expect(chart).toContain('<c:overlap val="100"/>');
    const book = await opened(
      await file.zip.file("ppt/embeddings/Microsoft_Excel_Worksheet1.xlsx")!.async("uint8array"),
    );
    const cells = all(parsed(book.texts.get("xl/worksheets/sheet1.xml")!), "c");
    const cell = (name: string) => cells.find((one) => one.getAttribute("r") === name)?.textContent;
    expect([cell("B5"), cell("C3"), cell("D2"), cell("B2")]).toEqual(["13", "1", "0", undefined]);
  });

  it("fill bars by what they stand for: full, hatched and with a rim", () => {
    const filled = all(charts[0]!, "c:ser").map((series) => {
      const [own] = all(series, "c:spPr");
      return [
        all(own!, "a:pattFill").length,
        all(all(own!, "a:solidFill")[0]!, "a:srgbClr")[0]?.getAttribute("val"),
      ];
    });
    expect(filled).toEqual([
      [0, "22302B"],
      [1, "22302B"],
      [0, "FFFFFF"],
    ]);
  });

  it("tell their series apart without colour: by hatching and rims, by dashes and points", () => {
    expect(all(charts[1]!, "a:pattFill").length).toBeGreaterThan(0);
    const lines = all(charts[2]!, "c:ser").map((series) => ({
      dash: all(series, "a:prstDash")[0]?.getAttribute("val"),
      point: all(series, "c:symbol")[0]?.getAttribute("val"),
    }));
    expect(lines).toEqual([
      { dash: "solid", point: "circle" },
      { dash: "dash", point: "square" },
    ]);
  });
});
