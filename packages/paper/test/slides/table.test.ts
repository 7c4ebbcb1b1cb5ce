import { textWidth } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { tableShares } from "../../src/slides/table.js";

const box = { x: 0, y: 0, w: 11.8, h: 4.6 };
const long = "all eaten, and some of it lost since it was eaten late on the second evening";

/** Words of each column that are wider than it, less the space at its sides. */
function tooWide(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const [{ widths, size }] = tableShares({ part: "table", head, rows }, box, [20, 16, 14]) as [
    ReturnType<typeof tableShares>[number],
  ];
  expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(box.w, 9);
  const broken = (text: string, column: number) =>
    text.split(" ").filter((word) => textWidth(word, size, true) / 72 > widths[column]! - 2 * 0.08);
  return [head, ...rows].flatMap((row) => row.flatMap(broken));
}

describe("columns of a table on a slide", () => {
  it("have room for their longest word, whatever stands in the others", () => {
    expect(tooWide(["Cosa", "Sin orden", "Con plan"], [["Zanahorias", long, long]])).toEqual([]);
    expect(tooWide(["Thing", "One", "Other"], [["Jerusalem artichokes", long, "eaten"]])).toEqual([]);
  });

  it("share the slide by their texts where no words are that long", () => {
    const [{ widths }] = tableShares(
      { part: "table", head: ["A", "B"], rows: [["eaten now", "eaten now"]] },
      box,
      [20],
    ) as [ReturnType<typeof tableShares>[number]];
    expect(widths[0]).toBeCloseTo(widths[1]!, 9);
  });
});
