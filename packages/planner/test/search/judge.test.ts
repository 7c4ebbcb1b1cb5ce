import { describe, expect, it } from "vitest";
import { construct } from "../../src/search/construct.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { Judge } from "../../src/search/judge.js";
import { withProgramme } from "../../src/search/moves.js";
import { prepare } from "../../src/search/prepare.js";
import { bound, lot } from "../support.js";

const prepared = prepare(
  bound(
    [
      lot("apple", 1500),
      lot("spinach", 400),
      lot("carrot", 900),
      lot("broccoli", 600),
      lot("banana", 800, { ripeness: "turning" }),
      lot("kiwifruit", 600, { ripeness: "unripe" }),
      lot("cucumber", 500),
      lot("head-lettuce", 500),
    ],
    undefined,
    { people: 3 },
  ),
);
const judge = new Judge(prepared);
const current = evaluatePrepared(prepared, construct(prepared));

/** Every option of every part, with its estimated and its exact change [g]. */
const compared = current.choice.parts.flatMap((part, index) =>
  prepared.options(part.lot).map(({ programme }) => {
    const { cost, overflow } = judge.estimate(current, [
      { part: index, like: index, to: { ...part, programme } },
    ]);
    const exact = evaluatePrepared(prepared, withProgramme(current.choice, index, programme));
    return { estimated: cost + overflow, exact: exact.objective.total - current.objective.total };
  }),
);

describe("Judge", () => {
  it("estimates no change for no change", () => {
    const part = current.choice.parts[0]!;
    const { cost, overflow } = judge.estimate(current, [{ part: 0, like: 0, to: part }]);
    expect(Math.abs(cost + overflow)).toBeLessThan(0.5);
  });

  it("ranks changes as the exact judgement does", () => {
    // Prices of the table hold for small changes: estimates are for ranking, the exact judgement decides.
    const ranks = (values: readonly number[]): number[] => {
      const order = [...values.keys()].sort((a, b) => values[a]! - values[b]!);
      return values.map((_, index) => order.indexOf(index));
    };
    const [estimated, exact] = [
      ranks(compared.map((one) => one.estimated)),
      ranks(compared.map((one) => one.exact)),
    ];
    const n = compared.length;
    const apart = estimated.reduce((sum, rank, index) => sum + (rank - exact[index]!) ** 2, 0);
    const spearman = 1 - (6 * apart) / (n * (n * n - 1));
    expect(spearman).toBeGreaterThan(0.95);
  });

  it("never overlooks the best change of the first arrangement", () => {
    const best = [...compared].sort((a, b) => a.exact - b.exact)[0]!;
    const better = compared.filter(({ estimated }) => estimated < best.estimated).length;
    expect(better).toBeLessThan(5);
  });
});
