import { type LabelRow, usualSheets } from "@keepwright/handout";
import { beforeAll, describe, expect, it } from "vitest";
import { PaperError, setLabels, type Typesetter } from "../../src/browser/index.js";
import { nodeTypesetter } from "../../src/node/nodeTypesetter.js";
import { inBrowser } from "../support/inBrowser.js";
import { readPdf } from "../support/readPdf.js";

let browser: Typesetter;
beforeAll(async () => {
  browser = await inBrowser();
});

const rows = (count: number, name = "Strawberries"): LabelRow[] =>
  Array.from({ length: count }, (_, index) => ({
    lot: `lot-${index + 1}`,
    name: `${name} ${index + 1}, about 360\u00a0g`,
    why: "quality",
    date: "2026-06-15",
    until: "Good until about Mon 15\u00a0June",
    putAway: "Put away Sat 13\u00a0June",
    places: ["Left drawer: loose"],
    how: "Do not wash yet",
  }));
const options = {
  grid: usualSheets["a4-3x7-63.5x38.1"],
  start: 1,
  outlines: false,
  title: "Labels",
  language: "en-GB",
};

describe("labels as PDF", () => {
  it.each(Object.entries(usualSheets))(
    "lie on %s, every line within its label, read label by label",
    async (_, grid) => {
      const { bytes, pages, labels } = setLabels(nodeTypesetter(), rows(34), { ...options, grid, start: 2 });
      const found = await readPdf(bytes);
      expect(found.size[0]).toBeCloseTo((grid.pageWidth / 25.4) * 72, 1);
      expect(found.size[1]).toBeCloseTo((grid.pageHeight / 25.4) * 72, 1);
      expect([found.pages, found.marked, found.title]).toEqual([pages, true, "Labels"]);
      expect(pages).toBe(Math.ceil(35 / (grid.columns * grid.rows)));
      const lines = labels.flatMap((label) => label.lines.map((line) => ({ ...line, label })));
      expect(found.spoken.replace(/\s/g, "")).toBe(lines.map(({ text }) => text.replace(/\s/g, "")).join(""));
      const heights = found.textSizes.map((size) => (size * 25.4) / 72);
      for (const { size, x, y, width, label } of lines) {
        expect(x + width).toBeLessThanOrEqual(label.x + label.width - 1.99);
        expect(y).toBeLessThanOrEqual(label.y + label.height - 2);
        expect(Math.min(...heights.map((height) => Math.abs(height - size)))).toBeLessThan(0.01);
      }
    },
  );

  it("are measured as wide as they are printed", async () => {
    const { bytes, labels } = setLabels(nodeTypesetter(), rows(3), options);
    const { farthest } = await readPdf(bytes);
    const reach = Math.max(...labels.flatMap(({ lines }) => lines.map(({ x, width }) => x + width))) / 210;
    expect(farthest).toBeCloseTo(reach, 2);
  });

  it("have the same bytes from a browser and from Node, with edges and without", () => {
    for (const outlines of [false, true]) {
      const all = { ...options, outlines };
      const [here, there] = [setLabels(browser, rows(30), all), setLabels(nodeTypesetter(), rows(30), all)];
      expect(Buffer.from(here.bytes).equals(Buffer.from(there.bytes))).toBe(true);
      expect(new TextDecoder("latin1").decode(here.bytes)).toContain("<pdfuaid:part>1</pdfuaid:part>");
    }
  });

  it("name what there are no letters for", () => {
    expect(() => setLabels(nodeTypesetter(), rows(1, "冰"), options)).toThrow(PaperError);
  });
});
