import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { at, endingProgress, endings, furthestEnding, stateNames } from "../../src/index.js";
import { leaf, ripener } from "../fixtures/kinds.js";

const progressOf = (produce: typeof leaf, changes: Partial<Record<(typeof stateNames)[number], number>>) => {
  const state = new Float64Array(stateNames.length);
  for (const [name, value] of Object.entries(changes)) state[at[name as keyof typeof changes]] = value;
  const out = new Float64Array(endings.length);
  endingProgress(produce, state, out);
  return out;
};

describe("senescence and chilling", () => {
  const dose = () => fc.double({ min: 0, max: 1.5, noNaN: true });
  test("end a lot together, where their doses add up to 1", () => {
    fc.assert(
      fc.property(dose(), dose(), (senescence, chilling) => {
        const progress = progressOf(leaf, { senescence, chilling });
        expect(Math.max(progress[0]!, progress[2]!)).toBeCloseTo(senescence + chilling, 12);
      }),
    );
  });
  test("are named after the larger", () => {
    expect(furthestEnding(progressOf(leaf, { senescence: 0.3, chilling: 0.7 }))).toBe("chilling");
    expect(furthestEnding(progressOf(leaf, { senescence: 0.7, chilling: 0.3 }))).toBe("senescence");
    expect(furthestEnding(progressOf(leaf, { senescence: 0.5, chilling: 0.5 }))).toBe("senescence");
  });
  test("each rise with either dose, so that an end can be found between steps", () => {
    fc.assert(
      fc.property(
        dose(),
        dose(),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (senescence, chilling, more) => {
          const before = progressOf(leaf, { senescence, chilling });
          const after = progressOf(leaf, { senescence: senescence + more, chilling });
          return after[0]! >= before[0]! && after[2]! >= before[2]!;
        },
      ),
    );
  });
});

test.each([
  ["water", { waterLost: 0.05 }],
  ["decay", { decay: 1 }],
  ["sprouting", { sprouting: 1 }],
  ["ethylene injury", { ethyleneInjury: 1 }],
  ["safety", { safety: 1 }],
] as const)("%s ends a lot at its own limit", (ending, state) => {
  const progress = progressOf(leaf, state);
  expect(progress[endings.indexOf(ending)]).toBeCloseTo(1, 12);
  expect(furthestEnding(progress)).toBe(ending);
});

test("over-ripeness ends what ripens and leaves the rest alone", () => {
  expect(furthestEnding(progressOf(ripener, { ripeness: 2 }))).toBe("over-ripeness");
  expect(progressOf(leaf, { ripeness: 2 })[endings.indexOf("over-ripeness")]).toBe(0);
});
