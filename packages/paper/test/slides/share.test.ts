import { describe, expect, it } from "vitest";
import type { Piece } from "../../src/slides/pieces.js";
import { shares } from "../../src/slides/share.js";

const box = { x: 0, y: 0, w: 6, h: 3 };
const heading = (text: string): Piece => ({ piece: "heading", text });
const items = (count: number, name: string): Piece[] =>
  Array.from({ length: count }, (_, index) => ({ piece: "item", mark: "–", text: `${name} ${index + 1}` }));
const textsOf = (pieces: readonly Piece[]) => pieces.map((piece) => ("text" in piece ? piece.text : ""));

describe("pieces shared out over slides", () => {
  it("say the heading again where its part goes on", () => {
    const shared = shares(
      [heading("Shelf"), ...items(3, "a"), heading("Drawer"), ...items(20, "b")],
      box,
      box,
    );
    expect(shared.length).toBeGreaterThan(2);
    for (const { pieces } of shared) {
      expect(pieces[0]?.piece).toBe("heading");
      expect(pieces.at(-1)?.piece).toBe("item");
    }
    for (const { pieces } of shared.slice(2)) expect(textsOf(pieces)[0]).toBe("Drawer");
    const all = shared.flatMap(({ pieces }) => pieces).filter(({ piece }) => piece === "item");
    expect(textsOf(all)).toEqual(textsOf([...items(3, "a"), ...items(20, "b")]));
  });

  it("keep each heading with what stands below it, wherever the slide ends, and say none twice on one", () => {
    for (let before = 1; before < 14; before++) {
      const shared = shares(
        [heading("Shelf"), ...items(before, "a"), heading("Drawer"), ...items(9, "b")],
        box,
        box,
      );
      for (const { pieces } of shared) {
        expect(pieces.at(-1)?.piece, `${before}`).toBe("item");
        const headings = textsOf(pieces.filter(({ piece }) => piece === "heading"));
        expect(new Set(headings).size, `${before}`).toBe(headings.length);
        const first = textsOf(pieces).find((text) => /^[ab] /.test(text))!;
        expect(headings[0]).toBe(first.startsWith("a") ? "Shelf" : "Drawer");
      }
    }
  });

  it("have no heading where there is none", () => {
    const shared = shares(items(20, "a"), box, box);
    expect(shared.flatMap(({ pieces }) => pieces)).toHaveLength(20);
  });
});
