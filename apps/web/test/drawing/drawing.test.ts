import type { Plan } from "@keepwright/planner";
import { placeKinds } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxOf, unitsPerLitre } from "../../src/drawing/kitchenScale.js";
import { letterOf } from "../../src/drawing/letters.js";
import { packBlocks, widthFor } from "../../src/drawing/packBlocks.js";

type Place = Plan["places"][number];
const place: fc.Arbitrary<Place> = fc.record({
  place: fc.string(),
  name: fc.string(),
  placeKind: fc.constantFrom(...placeKinds),
  litres: fc.double({ min: 0.5, max: 2000, noNaN: true }),
  litresTaken: fc.constant(0),
  temperature: fc.constant(4),
  relativeHumidity: fc.constant(90),
  ethylene: fc.constant(0),
});

describe("the scale of a kitchen", () => {
  it("draws areas as the litres stand to one another, and nothing taller than the page can bear", () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 15 }), (places) => {
        const perLitre = unitsPerLitre(places);
        for (const each of places) {
          const { width, height } = boxOf(each, perLitre);
          expect(width * height).toBeCloseTo(each.litres * perLitre, 4);
          expect(height).toBeLessThanOrEqual(300 + 1e-6);
        }
      }),
    );
  });
});

describe("lots in a box", () => {
  it("lie within it, side by side, on its floor", () => {
    const litres = fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { maxLength: 60 });
    fc.assert(
      fc.property(litres, fc.double({ min: 20, max: 300, noNaN: true }), (lots, height) => {
        const box = { width: 280, height };
        const blocks = packBlocks(lots, box, 500);
        expect(blocks).toHaveLength(lots.length);
        blocks.forEach((block, index) => {
          expect(block.x).toBeGreaterThanOrEqual(-1e-9);
          expect(block.x + block.width).toBeLessThanOrEqual(box.width + 1e-6);
          expect(block.y + block.height).toBeLessThanOrEqual(box.height + 1e-6);
          expect(block.y).toBeGreaterThanOrEqual(-1e-6);
          const next = blocks[index + 1];
          // Beside it, or at the beginning of the row above.
          if (next && Math.abs(next.y - block.y) < 1e-6) expect(next.x).toBeCloseTo(block.x + block.width, 6);
          else if (next) expect([next.x, next.y]).toEqual([0, expect.closeTo(block.y - block.height, 6)]);
        });
      }),
    );
  });

  it("stand in rows where their letters would not fit beside one another, and each letter fits", () => {
    const letters = Array.from({ length: 14 }, (_, index) => letterOf(index + 20));
    const least = letters.map(widthFor);
    const box = { width: 136, height: 80 };
    const blocks = packBlocks(
      letters.map(() => 0.3),
      box,
      500,
      least,
    );
    expect(new Set(blocks.map(({ y }) => Math.round(y))).size).toBeGreaterThan(1);
    blocks.forEach(({ width }, index) => {
      expect(width).toBeGreaterThanOrEqual(least[index]! - 1e-9);
    });
  });

  it("that are large enough to see have areas to scale", () => {
    const perLitre = 1000;
    const blocks = packBlocks([10, 5, 2], { width: 280, height: 170 }, perLitre);
    expect(blocks.map(({ width, height }) => width * height)).toEqual(
      [10, 5, 2].map((litres) => expect.closeTo(litres * perLitre, 6)),
    );
  });
});

describe("letters", () => {
  it("go from A to Z, on with AA, and never twice the same", () => {
    expect([0, 25, 26, 27, 51, 52].map(letterOf)).toEqual(["A", "Z", "AA", "AB", "AZ", "BA"]);
    const all = Array.from({ length: 800 }, (_, index) => letterOf(index));
    expect(new Set(all).size).toBe(all.length);
  });
});
