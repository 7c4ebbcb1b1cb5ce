import { describe, expect, it } from "vitest";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem } from "../../src/problem/problem.js";
import type { Choice } from "../../src/problem/programme.js";
import { allProgrammes, evaluate } from "../../src/search/evaluateChoice.js";
import { planHaul } from "../../src/search/planHaul.js";
import { lot, request, smallKitchen } from "../support.js";

/** Every choice of unsplit lots: all programmes of all lots at all settings of all vents. */
function* everyChoice(problem: ReturnType<typeof bindProblem>): Generator<Choice> {
  const programmes = allProgrammes(problem);
  const settings = problem.vents.reduce<Choice["vents"][]>(
    (lists) => lists.flatMap((list) => ventSettings.map((setting) => [...list, setting])),
    [[]],
  );
  const parts = problem.lots.reduce<Choice["parts"][]>(
    (lists, { index, portions }) =>
      lists.flatMap((list) =>
        programmes[index]!.map((programme) => [...list, { lot: index, portions, programme }]),
      ),
    [[]],
  );
  for (const vents of settings) for (const list of parts) yield { parts: list, vents };
}

const cases: [string, object[]][] = [
  ["apples and spinach", [lot("apple", 1500), lot("spinach", 400)]],
  ["bananas still green, and cucumber", [lot("banana", 900, { ripeness: "unripe" }), lot("cucumber", 500)]],
  [
    "tomato, lettuce and pear",
    [lot("tomato", 500), lot("romaine", 400), lot("pear", 800, { ripeness: "unripe" })],
  ],
];

describe("small cases", () => {
  it.each(cases)("%s: as good as every unsplit choice tried", (_, lots) => {
    const asked = request(lots, smallKitchen({ wraps: ["paper bag"] }), { people: 2 });
    const problem = bindProblem(asked);
    let least = Number.POSITIVE_INFINITY;
    for (const choice of everyChoice(problem))
      least = Math.min(least, evaluate(problem, choice).objective.total);
    expect(planHaul(asked).objective.total).toBeLessThanOrEqual(least + 1e-6);
  });
});
