import { figureCatalogue } from "@keepwright/catalogue";
import { ordinaryKitchens, planHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { planAnswerer } from "../../src/behaviour/answerPlan.js";
import { quickAnswers } from "../../src/behaviour/answerQuickly.js";
import { isCorrected } from "../../src/behaviour/corrected.js";
import type { PlanAnswer, PlanAsked, QuickAnswer } from "../../src/behaviour/planMessages.js";
import { plannerRequest } from "../../src/behaviour/plannerRequest.js";
import { readLines } from "../../src/state/readLines.js";
import { lotsToPlan } from "../../src/state/readLots.js";

const asked = (text: string): PlanAsked => ({
  lots: lotsToPlan(readLines(text, {}, figureCatalogue())),
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 10 },
  from: "2026-06-13",
});
const first = asked("2 kg apples\n3 avocados\n1 broccoli");
const corrected = asked("1 kg apples\n3 avocados\n1 broccoli");

function withPlanInHand() {
  const answers: QuickAnswer[] = [];
  const tell = quickAnswers((answer) => answers.push(answer));
  const plan = planHaul(plannerRequest(first));
  tell({ quick: "take in hand", asked: first, plan: structuredClone(plan) });
  return { tell, answers, plan };
}

describe("quick answers", () => {
  const { tell, answers, plan } = withPlanInHand();
  const given = (of: PlanAsked, number: number) => {
    answers.length = 0;
    tell({ quick: "ask", asked: of, number });
    return [...answers];
  };
  it("are without a plan while none is in hand", () => {
    const none: QuickAnswer[] = [];
    quickAnswers((answer) => none.push(answer))({ quick: "ask", asked: first, number: 1 });
    expect(none).toEqual([{ quick: "answer", number: 1, plan: undefined }]);
  });
  it("are a plan of all that is asked now", () => {
    const [answer] = given(corrected, 2);
    if (!answer?.plan) throw new Error("There was no plan meanwhile.");
    const portions = answer.plan.lots.flatMap(({ lot, eatOn, leftPortions }) => [
      [lot, eatOn.reduce((sum, meal) => sum + meal.portions, leftPortions)],
    ]);
    expect(new Set(portions.map(([lot]) => lot))).toEqual(new Set(corrected.lots.map(({ id }) => id)));
    expect(answer.number).toBe(2);
  });
  it("go back to the plan they came from when the correction is taken back", () => {
    given(corrected, 3);
    const [answer] = given(first, 4);
    if (!answer?.plan) throw new Error("There was no plan meanwhile.");
    expect(answer.plan.objective.total).toBeLessThan(plan.objective.total * 1.01);
  });
  it("are left to the other worker for another kitchen, for much that is new, and for what cannot be planned", () => {
    const more = asked(
      "2 kg apples\n3 avocados\n1 broccoli\n1 kg carrots\n2 leeks\n500 g tomatoes\n1 kg pears",
    );
    const wrong = { ...first, lots: [{ ...first.lots[0]!, grams: -1 }, ...first.lots.slice(1)] };
    for (const other of [more, { ...first, kitchen: ordinaryKitchens.cellar }, wrong])
      expect(given(other, 5)).toEqual([{ quick: "answer", number: 5, plan: undefined }]);
  });
});

describe("quick answers to a list of days ago", () => {
  const since = { on: "2026-06-15", cameHome: [], uneaten: [], unmoved: [] };
  const planned = planAnswerer();
  const fromNothing = (of: PlanAsked) => {
    let given: PlanAnswer | undefined;
    planned({ ...of, number: 1 }, (answer) => {
      given = answer;
    });
    if (given?.kind !== "plan") throw new Error("There was no plan.");
    return given;
  };
  const then = fromNothing({ ...first, since });
  const answers: QuickAnswer[] = [];
  const tell = quickAnswers((answer) => answers.push(answer));
  const given = (of: PlanAsked) => {
    tell({ quick: "ask", asked: of, number: 2 });
    return answers.at(-1)!;
  };
  tell({
    quick: "take in hand",
    asked: { ...first, since },
    ...structuredClone({ plan: then.plan, carried: then.carried! }),
  });

  it.each([
    ["an amount of the first day", { ...corrected, since }],
    [
      "something more that came home",
      {
        ...first,
        since: { ...since, cameHome: asked("1 mango").lots.map((lot) => ({ ...lot, id: "lot-4" })) },
      },
    ],
    [
      "a meal that was not eaten",
      { ...first, since: { ...since, uneaten: [{ lot: "lot-1", date: "2026-06-13" }] } },
    ],
  ])("carry on from the plan in hand: %s", (_, now) => {
    const { plan, carried } = given(now);
    if (!plan || !carried) throw new Error("There was no plan meanwhile.");
    const slow = fromNothing(now);
    expect(plan.from).toBe("2026-06-15");
    expect(carried.asked.lots.map(({ commodity }) => commodity)).toEqual(
      slow.carried!.asked.lots.map(({ commodity }) => commodity),
    );
    expect(plan.objective.total).toBeLessThan(slow.plan.objective.total * 1.05 + 1);
  });
  it("are left to the other worker on another day", () => {
    expect(given({ ...first, since: { ...since, on: "2026-06-16" } }).plan).toBeUndefined();
  });
});

describe("a corrected question", () => {
  it("has the same kitchen, household and day, and at most three other lots", () => {
    expect(isCorrected(first, corrected)).toBe(true);
    expect(isCorrected(first, { ...first, lots: [] })).toBe(true);
    expect(isCorrected(first, { ...first, household: { ...first.household, people: 3 } })).toBe(false);
    expect(isCorrected(first, { ...first, from: "2026-06-14" })).toBe(false);
  });
});
