import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { airTree } from "../../src/climate/airTree.js";
import { VapourSolver } from "../../src/climate/vapourField.js";
import type { AirBox, RoomAir } from "../../src/simulate/simulation.js";

const settle = (boxes: readonly AirBox[], room: RoomAir, conductance: number[], supply: number[]) => {
  const tree = airTree(boxes, room);
  const density = new Float64Array(tree.size + 1);
  const condensing = new Float64Array(tree.size);
  new VapourSolver(tree).settle(
    Float64Array.from(conductance),
    Float64Array.from(supply),
    density,
    condensing,
  );
  return { tree, density, condensing };
};

/** Kitchens of up to eight boxes in any tree, some with coils, with produce (or nothing) in each. */
const kitchens = fc
  .record({
    room: fc.record({
      temperature: fc.double({ min: 12, max: 32, noNaN: true }),
      relativeHumidity: fc.double({ min: 0.2, max: 1, noNaN: true }),
      ethylene: fc.constant(0.02),
    }),
    boxes: fc.array(
      fc.record({
        temperature: fc.double({ min: 0, max: 25, noNaN: true }),
        litresPerHour: fc.double({ min: 0.5, max: 500, noNaN: true }),
        parent: fc.nat(),
        coil: fc.option(fc.double({ min: 1, max: 800, noNaN: true })),
        conductance: fc.double({ min: 0, max: 1e-3, noNaN: true }),
        surface: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      { minLength: 1, maxLength: 8 },
    ),
  })
  .map(({ room, boxes }) => ({
    room,
    boxes: boxes.map(
      (box, index): AirBox => ({
        name: `box ${index}`,
        volumeLitres: 20,
        temperature: box.temperature,
        exchange: {
          with: box.parent % (index + 1) === index ? "room" : box.parent % (index + 1),
          litresPerHour: box.litresPerHour,
        },
        ...(box.coil === null ? {} : { coil: { temperature: -8, litresPerHour: box.coil } }),
      }),
    ),
    conductance: boxes.map((box) => box.conductance),
    surface: boxes.map((box) => box.surface),
  }));

describe("settled vapour", () => {
  it("conserves water: what produce and neighbours bring leaves by exchange, coil or condensation", () => {
    fc.assert(
      fc.property(kitchens, ({ room, boxes, conductance, surface }) => {
        const supply = boxes.map((_, box) => conductance[box]! * surface[box]! * 0.01);
        const { tree, density, condensing } = settle(boxes, room, conductance, supply);
        for (let box = 0; box < tree.size; box++) {
          const gains = [tree.exchange[box]! * (density[tree.neighbour[box]!]! - density[box]!)];
          for (let child = box + 1; child < tree.size; child++) {
            if (tree.neighbour[child] === box)
              gains.push(tree.exchange[child]! * (density[child]! - density[box]!));
          }
          gains.push(supply[box]! - conductance[box]! * density[box]!);
          gains.push(-tree.coilExchange[box]! * Math.max(0, density[box]! - tree.coilDensity[box]!));
          gains.push(-condensing[box]!);
          const turnover = gains.reduce((sum, gain) => sum + Math.abs(gain), 1e-15);
          expect(Math.abs(gains.reduce((sum, gain) => sum + gain, 0)) / turnover).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("never holds more than saturation, and condenses only there", () => {
    fc.assert(
      fc.property(kitchens, ({ room, boxes, conductance, surface }) => {
        const supply = boxes.map((_, box) => conductance[box]! * surface[box]! * 0.03);
        const { tree, density, condensing } = settle(boxes, room, conductance, supply);
        for (let box = 0; box < tree.size; box++) {
          const full = tree.saturationDensity[box]!;
          expect(density[box]!).toBeLessThanOrEqual(full * (1 + 1e-9));
          expect(condensing[box]!).toBeGreaterThanOrEqual(-1e-9 * tree.exchange[box]! * full);
          if (condensing[box]! > 1e-9 * tree.exchange[box]! * full)
            expect(density[box]!).toBeCloseTo(full, 12);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("leaves an empty place the air around it, unless that is over saturation there", () => {
    fc.assert(
      fc.property(kitchens, ({ room, boxes }) => {
        const empty = boxes.map(({ coil: _, ...box }): AirBox => box);
        const nothing = boxes.map(() => 0);
        const { tree, density } = settle(empty, room, nothing, nothing);
        for (let box = 0; box < tree.size; box++) {
          if (boxes.some((_, child) => tree.neighbour[child] === box)) continue;
          const around = density[tree.neighbour[box]!]!;
          expect(density[box]! / Math.min(around, tree.saturationDensity[box]!)).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 200 },
    );
  });

  it("dries a refrigerator by its coil: an empty one is drier than the room's air at saturation would be", () => {
    const room = { temperature: 20, relativeHumidity: 0.5, ethylene: 0.02 };
    const box: AirBox = {
      name: "refrigerator",
      volumeLitres: 200,
      temperature: 4,
      exchange: { with: "room", litresPerHour: 80 },
    };
    const coil = { temperature: -8, litresPerHour: 400 };
    const plain = settle([box], room, [0], [0]);
    const dried = settle([{ ...box, coil }], room, [0], [0]);
    expect(plain.density[0]).toBeCloseTo(plain.tree.saturationDensity[0]!, 12);
    expect(plain.condensing[0]!).toBeGreaterThan(0);
    // By hand: (80 · c_room + 400 · c_coil) / 480, nothing else exchanging.
    const byHand = (80 * dried.tree.roomDensity + 400 * dried.tree.coilDensity[0]!) / 480;
    expect(dried.density[0]! / byHand).toBeCloseTo(1, 12);
    expect(dried.condensing[0]).toBe(0);
  });
});
