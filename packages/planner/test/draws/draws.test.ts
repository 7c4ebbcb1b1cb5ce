import { simulate } from "@keepwright/physics";
import { describe, expect, test } from "vitest";
import { repeated, simulateDraw } from "../../src/draws/simulateDraw.js";
import {
  type BoundLot,
  bindProblem,
  carryOut,
  evaluate,
  mealsOfChoice,
  mealsOfPlan,
  noSpreads,
  type Problem,
  planDraws,
  planHaul,
  simulationOf,
  unsortedChoice,
  usualSpreads,
} from "../../src/index.js";
import { later } from "../carryOn/support.js";
import { request, smallKitchen } from "../support.js";

/** Invented: something of everything that matters. Two lots of one kind, one that ripens, cut produce, leaves, a root with tops. */
const lots = [
  { id: "a", commodity: "strawberry", grams: 500 },
  { id: "b", commodity: "avocado", grams: 600, pieces: 3, ripeness: "turning" },
  { id: "c", commodity: "cantaloupe", grams: 700, form: "cut" },
  { id: "d", commodity: "spinach", grams: 400, washed: true, extraDays: 2 },
  { id: "e", commodity: "carrot", grams: 600, tops: true },
  { id: "f", commodity: "strawberry", grams: 300 },
];
const asked = request(lots, smallKitchen(), { people: 2, days: 6 });
const plan = planHaul(asked);
const problem = bindProblem(asked);
const meals = mealsOfPlan(problem, plan);
const draws = 40;

describe("draws", () => {
  test("of one seed are the same to the last bit, of another not", () => {
    const once = planDraws(problem, plan, draws, 7);
    expect(planDraws(bindProblem(asked), plan, draws, 7)).toEqual(once);
    expect(planDraws(problem, plan, draws, 8)).not.toEqual(once);
  });

  test("do not change when more are made", () => {
    const few = carryOut(problem, meals, 10, 3, usualSpreads).wasted;
    const more = carryOut(problem, meals, 20, 3, usualSpreads).wasted;
    expect([...more.slice(0, 10)]).toEqual([...few]);
  });

  test("are the single simulation itself where nothing scatters", () => {
    const single = simulate(simulationOf(problem, meals.choice)).lots;
    const drawn = simulateDraw(repeated(problem, meals.choice, 1, noSpreads), 5);
    drawn.forEach((outcome, part) => {
      const { endDay, endedBy, ripeDay, stayStarts, beyondHorizon } = single[part]!;
      expect(outcome).toMatchObject({ endDay, endedBy, ripeDay, stayStarts, beyondHorizon });
    });
    const wasted = carryOut(problem, meals, 3, 1, noSpreads).wasted;
    expect(wasted[1]).toBe(wasted[0]);
  });
});

describe("a lot's draws", () => {
  /** Its own spent share and pace in the first draws, whatever it lies beside. */
  const drawnOf = (bound: Problem, id: string): unknown => {
    const lot = bound.lots.find((one: BoundLot) => one.lot.id === id)!;
    const choice = unsortedChoice(bound);
    const alone = { ...choice, parts: choice.parts.filter((part) => part.lot === lot.index) };
    return [0, 1, 2].map((draw) => simulateDraw(repeated(bound, alone, 1, usualSpreads), draw));
  };

  test("are the same in another order and with less beside it", () => {
    const turned = bindProblem(request([...lots].reverse(), smallKitchen(), { people: 2, days: 6 }));
    for (const id of ["a", "b", "d", "f"]) {
      const only = bindProblem(
        request(
          lots.filter((one) => one.id === id),
          smallKitchen(),
          { people: 2, days: 6 },
        ),
      );
      expect(drawnOf(turned, id)).toEqual(drawnOf(problem, id));
      expect(drawnOf(only, id)).toEqual(drawnOf(problem, id));
    }
  });

  test("differ between two lots of one kind, and between two that are alike but for their name", () => {
    expect(drawnOf(problem, "a")).not.toEqual(drawnOf(problem, "f"));
    const twins = [
      { id: "x", commodity: "strawberry", grams: 500 },
      { id: "y", commodity: "strawberry", grams: 500 },
    ];
    const bound = bindProblem(request(twins, smallKitchen()));
    expect(drawnOf(bound, "x")).not.toEqual(drawnOf(bound, "y"));
  });
});

test("the order of the haul does not change what is wasted, but for rounding of sums", () => {
  const turnedProblem = bindProblem(request([...lots].reverse(), smallKitchen(), { people: 2, days: 6 }));
  const inOrder = mealsOfChoice(problem, unsortedChoiceOnShelf(problem));
  const inverse = mealsOfChoice(turnedProblem, unsortedChoiceOnShelf(turnedProblem));
  const lotOf = (bound: Problem, part: number) => bound.lots[part]!.lot.id;
  const wasted = (bound: Problem, carried: typeof inOrder) => {
    const fixed = { ...carried, occasions: carried.choice.parts.map(() => [meal(2), meal(5)]) };
    const { wastedByPart } = carryOut(bound, fixed, draws, 1, usualSpreads);
    return Object.fromEntries(wastedByPart.map((grams, part) => [lotOf(bound, part), [...grams]]));
  };
  const meal = (day: number) => ({ day, left: false, portions: 1, claimed: 0 });
  expect(wasted(turnedProblem, inverse)).toEqual(wasted(problem, inOrder));
});

/** Everything on the shelf in one part each, so that the order of the haul decides nothing. */
function unsortedChoiceOnShelf(bound: Problem) {
  const { vents, parts } = unsortedChoice(bound);
  const lies = (lot: BoundLot) => parts.find((part) => part.lot === lot.index)!.programme;
  return {
    vents,
    parts: bound.lots.map((lot) => ({
      lot: lot.index,
      portions: lot.portions,
      programme: { ...lies(lot), stays: lies(lot).stays.map((stay) => ({ ...stay, place: 0 })) },
    })),
  };
}

describe("what is counted", () => {
  const out = planDraws(problem, plan, draws, 1);

  test("is every portion once, and waste is what was not eaten in time", () => {
    for (const [index, lot] of out.lots.entries()) {
      const planned = plan.lots[index]!;
      expect(lot.id).toBe(planned.id);
      const portions = planned.eatOn.reduce((sum, one) => sum + one.portions, planned.leftPortions);
      expect(lot.occasions.reduce((sum, one) => sum + one.portions, 0)).toBe(portions);
      expect(lot.waste.mean).toBeCloseTo((1 - lot.inTime) * planned.grams, 6);
    }
    const all = out.lots.reduce((sum, { waste }) => sum + waste.mean, 0);
    expect(out.waste.mean).toBeCloseTo(all, 6);
    expect(out.unsorted.saved.mean).toBeCloseTo(out.unsorted.waste.mean - out.waste.mean, 6);
  });

  test("claims what the plan claims", () => {
    const grams = plan.lots.reduce((sum, lot, index) => sum + (1 - out.lots[index]!.claimed) * lot.grams, 0);
    expect(grams).toBeCloseTo(plan.expectedWaste.value, 6);
  });

  test("sets two choices against each other more surely than two runs of other chance would", () => {
    const other = planDraws(problem, plan, draws, 2);
    const apart = Math.hypot(out.waste.standardError, other.unsorted.waste.standardError);
    expect(out.unsorted.saved.standardError).toBeLessThan(apart);
  });

  test("is nothing saved by a choice against itself", () => {
    const choice = unsortedChoice(problem);
    const same = evaluate(problem, choice).choice;
    const [one, two] = [choice, same].map((each) =>
      carryOut(problem, mealsOfChoice(problem, each), 5, 1, usualSpreads),
    );
    expect([...one!.wasted]).toEqual([...two!.wasted]);
  });
});

test("a plan that is carried on is refused, naming the lot: what has been seen of it since would have to count", () => {
  const { haul } = later({ request: asked, plan }, 1);
  const carriedOn = bindProblem({ ...asked, haul });
  const { id } = carriedOn.lots[0]!.lot;
  expect(() =>
    carryOut(carriedOn, mealsOfChoice(carriedOn, unsortedChoice(carriedOn)), 1, 1, usualSpreads),
  ).toThrow(`“${id}” is carried over from an earlier plan`);
});

test("a part on a day it is no longer safe is thrown away in every draw", () => {
  const cut = meals.choice.parts.findIndex(({ lot }) => problem.lots[lot]!.lot.id === "c");
  const late = [{ day: 9, left: true, portions: 1, claimed: 1 }];
  const occasions = meals.occasions.map((own, part) => (part === cut ? late : own));
  const out = carryOut(problem, { ...meals, occasions }, draws, 1, usualSpreads);
  expect(out.occasions[cut]![0]!.inTime).toBe(0);
});
