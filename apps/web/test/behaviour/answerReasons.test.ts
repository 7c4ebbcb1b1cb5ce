import { figureCatalogue } from "@keepwright/catalogue";
import { explainNamed, judgeArrangement, ordinaryKitchens, planHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { judgeAnswerer } from "../../src/behaviour/answerJudge.js";
import { isLast, type JudgeAnswer, type JudgeAsked } from "../../src/behaviour/judgeMessages.js";
import { withChosen } from "../../src/state/chosenArrangement.js";
import { readLines } from "../../src/state/readLines.js";
import { lotsToPlan } from "../../src/state/readLots.js";

const kitchen = { ...ordinaryKitchens.ordinary, wraps: [] };
const asked = {
  lots: lotsToPlan(readLines("2 kg apples\n1 broccoli", {}, figureCatalogue())),
  kitchen,
  household: { people: 1, portionsPerPersonPerDay: 2, daysAway: [], days: 5 },
  from: "2026-06-13",
};
const request = { ...asked, haul: { lots: [...asked.lots] }, seed: 1, catalogue: figureCatalogue() };
const plan = planHaul(request);
const counter = kitchen.places.find(({ kind }) => kind === "counter")!.id;
const arrangement = withChosen(plan, new Map([["lot-2", { place: counter, wrap: "none" }]]));

function answersTo(question: JudgeAsked): JudgeAnswer[] {
  const answers: JudgeAnswer[] = [];
  judgeAnswerer()({ ...question, number: 1 }, (one) => answers.push(one));
  return answers;
}

describe("a lot put elsewhere", () => {
  it("is judged alone where nothing else is wanted, by the same figures", () => {
    const answers = answersTo({ ...asked, kind: "judge", arrangement, plan, alone: true });
    expect(answers.map(({ kind }) => kind)).toEqual(["judgement", "enough"]);
    expect(answers.map(isLast)).toEqual([false, true]);
    const [first] = answers;
    if (first?.kind !== "judgement") throw new Error("Another answer came.");
    expect(first.judgement).toEqual(judgeArrangement({ ...request, arrangement }));
    const moved = first.judgement.yours.lots.find(({ lot }) => lot === "lot-2");
    expect(moved?.stays.map(({ place }) => place)).toEqual([counter]);
  });

  it("has its reasons told of the plan with it, beside every other place", () => {
    const [judged] = answersTo({ ...asked, kind: "judge", arrangement, plan, alone: true });
    if (judged?.kind !== "judgement") throw new Error("Another answer came.");
    const { yours } = judged.judgement;
    const [answer, ...more] = answersTo({ ...asked, kind: "reasons", plan: yours, lot: "lot-2" });
    expect(more).toEqual([]);
    if (answer?.kind !== "reasons") throw new Error("Another answer came.");
    expect(isLast(answer)).toBe(true);
    expect(answer.reasons).toEqual(explainNamed({ ...request, plan: yours, lot: "lot-2" }));
    expect(answer.reasons[0]?.here.place).toBe(counter);
  });
});
