import { describe, expect, it } from "vitest";
import { explainLot } from "../../src/explain/explain.js";
import { addsUp, LeavingOut } from "../../src/explain/leavingOut.js";
import type { Neighbourhood } from "../../src/explain/neighbourhood.js";
import { bindProblem } from "../../src/problem/problem.js";
import type { Choice } from "../../src/problem/programme.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { planOf } from "../../src/search/planOf.js";
import { prepare } from "../../src/search/prepare.js";
import { lot, request } from "../support.js";

/** Everything in the left drawer, its vent closed, whatever a plan would do. */
function together(...lots: readonly object[]) {
  const problem = bindProblem(request(lots, undefined, { people: 2 }));
  const place = problem.places.findIndex((one) => one.place.id === "left-drawer");
  const stays = [{ place, wrap: "none", until: "never" }] as const;
  const parts = problem.lots.map(({ index, portions }) => ({
    lot: index,
    portions,
    programme: { leavesOff: false, dried: false, stays },
  }));
  const choice: Choice = { parts, vents: problem.vents.map(() => "closed") };
  return { problem, choice, trial: new LeavingOut(prepare(problem), choice) };
}

const total = ({ neighbours, helpers, lostToRest }: Neighbourhood): number =>
  [...neighbours, ...helpers].reduce((sum, { daysLost }) => sum + daysLost.value, lostToRest.value);

describe("what neighbours do to a life", () => {
  it("is the difference to the same kitchen simulated without them", () => {
    const { problem, choice, trial } = together(lot("apple", 1500), lot("broccoli", 500), lot("carrot", 500));
    const found = trial.neighbourhood([1]);
    const without = (lots: readonly number[]): number => {
      const parts = choice.parts.filter((part) => !lots.includes(part.lot));
      const { outcomes } = evaluate(problem, { ...choice, parts });
      return outcomes[parts.findIndex((part) => part.lot === 1)]!.endDay;
    };
    expect(found.lifeAlone.value).toBeCloseTo(without([0, 2]), 9);
    expect(found.lostToNeighbours.value).toBeCloseTo(without([0, 2]) - without([]), 9);
    const apple = found.neighbours.find((one) => one.lot === "apple")!;
    expect(apple.lifeWithout.value).toBeCloseTo(without([0]), 9);
    expect(apple.daysLost.value).toBeCloseTo(without([0]) - without([]), 9);
  });

  it("tells the apples' ripening gas from their damp", () => {
    const { trial } = together(lot("apple", 1500), lot("broccoli", 500));
    const [apple] = trial.neighbourhood([1]).neighbours;
    expect(apple!.byEthylene.value).toBeGreaterThan(0.9 * apple!.daysLost.value);
    expect(apple!.byVapour.value).toBeLessThan(0.1 * apple!.daysLost.value);
  });

  it("blames damp and no gas where leaves lie beside what rots in the damp", () => {
    const { trial } = together(lot("spinach", 1500), lot("onion", 500));
    const { neighbours } = trial.neighbourhood([1]);
    const [spinach] = neighbours;
    expect(spinach?.lot).toBe("spinach");
    expect(spinach!.byVapour.value).toBeGreaterThan(0.9 * spinach!.daysLost.value);
    expect(Math.abs(spinach!.byEthylene.value)).toBeLessThan(0.1 * spinach!.daysLost.value);
  });

  it("names who keeps it from drying out", () => {
    const { trial } = together(lot("spinach", 1500), lot("carrot", 200));
    const carrots = trial.neighbourhood([1]);
    expect(carrots.helpers.map((one) => one.lot)).toEqual(["spinach"]);
    expect(carrots.helpers[0]!.byVapour.value).toBeLessThan(0);
    expect(carrots.lostToNeighbours.value).toBeLessThan(0);
  });

  it("with nobody left out is the life as it is; alone in the kitchen nothing is lost", () => {
    const { problem, choice, trial } = together(lot("apple", 1500), lot("broccoli", 500));
    evaluate(problem, choice).outcomes.forEach(({ endDay }, part) => {
      expect(trial.life([part])).toBeCloseTo(endDay, 9);
    });
    const alone = together(lot("broccoli", 500)).trial.neighbourhood([0]);
    expect(alone).toMatchObject({ neighbours: [], helpers: [], joint: false });
    for (const days of [alone.lostToNeighbours, alone.lostByEthylene, alone.lostByVapour, alone.lostToRest])
      expect(days.value).toBe(0);
  });

  it("says that two who give off the same gas act together, and then does not add up", () => {
    const { trial } = together(
      lot("apple", 1500),
      lot("pear", 1500, { ripeness: "ripe" }),
      lot("broccoli", 500),
    );
    const found = trial.neighbourhood([2]);
    const { joint, lostToNeighbours } = found;
    expect(joint).toBe(true);
    const apart = Math.abs(lostToNeighbours.value - total(found));
    expect(apart).toBeGreaterThan(Math.max(addsUp.days, addsUp.share * lostToNeighbours.value));
  });

  it("counts the rest of a lot in another part as its neighbour", () => {
    const { problem, choice } = together(lot("apple", 1500), lot("broccoli", 500));
    const [apples, broccoli] = choice.parts;
    const parts = [{ ...apples!, portions: 2 }, { ...apples!, portions: apples!.portions - 2 }, broccoli!];
    const plan = planOf(prepare(problem), evaluate(problem, { ...choice, parts }));
    const { here } = explainLot(problem, plan, "apple");
    const named = [...here.neighbourhood.neighbours, ...here.neighbourhood.helpers];
    for (const one of named) expect(["apple", "broccoli"]).toContain(one.lot);
    const { neighbours } = new LeavingOut(prepare(problem), { ...choice, parts }).neighbourhood([2]);
    expect(neighbours.map((one) => one.lot)).toEqual(["apple"]);
  });
});
