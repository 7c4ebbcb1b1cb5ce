import { figureCatalogue } from "@keepwright/catalogue";
import {
  type Arrangement,
  arrangementOfPlan,
  improve,
  judgeArrangement,
  ordinaryKitchens,
  planHaul,
} from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { judgeAnswerer } from "../../src/behaviour/answerJudge.js";
import { carriedPlan } from "../../src/behaviour/carriedPlan.js";
import type { JudgeAnswer, JudgeAsked } from "../../src/behaviour/judgeMessages.js";
import { readLines } from "../../src/state/readLines.js";
import { lotsToPlan } from "../../src/state/readLots.js";

const kitchen = { ...ordinaryKitchens.ordinary, wraps: [] };
const asked = {
  lots: lotsToPlan(readLines("2 kg apples\n1 broccoli\n600 g spinach", {}, figureCatalogue())),
  kitchen,
  household: { people: 1, portionsPerPersonPerDay: 2, daysAway: [], days: 8 },
  from: "2026-06-13",
};
const request = {
  haul: { lots: [...asked.lots] },
  kitchen,
  household: asked.household,
  from: asked.from,
  seed: 1,
  catalogue: figureCatalogue(),
};
const plan = planHaul(request);
const planned = arrangementOfPlan(plan);
const counter = kitchen.places.find(({ kind }) => kind === "counter")!.id;

/** The plan, with the broccoli left on the counter. */
const worse: Arrangement = {
  ...planned,
  lots: planned.lots.map((lot) =>
    lot.lot === "lot-2" ? { lot: lot.lot, place: counter, wrap: "none", done: [] } : lot,
  ),
};

function answersTo(questions: readonly JudgeAsked[]): JudgeAnswer[] {
  const answers: JudgeAnswer[] = [];
  const answer = judgeAnswerer();
  questions.forEach((question, index) => {
    answer({ ...question, number: index + 1 }, (one) => answers.push(one));
  });
  return answers;
}

describe("the answers to how things lie", () => {
  it("are the judgement that the planner makes, the move that helps most, and how far the waste may go", () => {
    const [judgement, move, range] = answersTo([{ ...asked, kind: "judge", arrangement: worse, plan }]);
    if (judgement?.kind !== "judgement" || move?.kind !== "one move") throw new Error("Other answers came.");
    expect(judgement.judgement).toEqual(judgeArrangement({ ...request, arrangement: worse }));
    expect(move.oneMove).toMatchObject({ move: "lot", lot: "lot-2" });
    // With nothing else amiss the one move takes away all that it is worse by.
    expect(move.oneMove?.saved.total).toBeCloseTo(judgement.judgement.difference.total, 6);
    if (range?.kind !== "draws") throw new Error("The last answer is another.");
    const { yours, plan: drawnPlan, lost, savedByMove } = range.draws;
    expect(lost.mean).toBeCloseTo(yours.mean - drawnPlan.mean, 6);
    expect(savedByMove).toEqual(lost);
    expect(yours.low).toBeLessThanOrEqual(yours.high);
  });
  it("are the same whether the plan is given, made anew or remembered, whatever was judged before", () => {
    const given = answersTo([{ ...asked, kind: "judge", arrangement: worse, plan }]);
    const between = [worse, planned, worse].map((arrangement) => ({
      ...asked,
      kind: "judge" as const,
      arrangement,
    }));
    const kept = answersTo(between);
    const bare = (answers: readonly JudgeAnswer[]) => answers.map(({ number: _, ...rest }) => rest);
    expect(bare(kept.slice(0, 3))).toEqual(bare(given));
    expect(bare(kept.slice(6))).toEqual(bare(given));
  });
  it("tell of no move where it lies as planned", () => {
    const answers = answersTo([{ ...asked, kind: "judge", arrangement: planned, plan }]);
    expect(answers[1]).toEqual({ number: 1, kind: "one move", oneMove: undefined });
  });
  it("are the problem alone where a place is not there, and the next question is answered all the same", () => {
    const lots = [{ lot: "lot-1", place: "nowhere", wrap: "none" as const, done: [] }];
    const answers = answersTo([
      { ...asked, kind: "judge", arrangement: { version: 1, lots, vents: [] }, plan },
      { ...asked, kind: "judge", arrangement: planned, plan },
    ]);
    expect(answers.map(({ kind }) => kind)).toEqual(["problem", "judgement", "one move", "draws"]);
    expect(answers[0]).toMatchObject({ message: expect.stringContaining("nowhere") });
  });
});

describe("the answers to how things lie days later", () => {
  const carried = carriedPlan(asked, plan, { on: "2026-06-15", cameHome: [], uneaten: [], unmoved: [] })!;
  const lots = carried.asked.lots.map(({ id }) => ({
    lot: id,
    place: counter,
    wrap: "none" as const,
    done: [],
  }));
  const arrangement: Arrangement = { version: 1, lots, vents: [] };

  it("are the judgement and the move without ranges, since what is carried over cannot be drawn", () => {
    const question = { ...carried.asked, kind: "judge" as const, arrangement, plan: carried.plan };
    const answers = answersTo([question]);
    expect(answers.map(({ kind }) => kind)).toEqual(["judgement", "one move", "enough"]);
    const [judgement, move] = answers;
    if (judgement?.kind !== "judgement" || move?.kind !== "one move") throw new Error("Other answers came.");
    expect(judgement.judgement.difference.total).toBeGreaterThan(0);
    expect(move.oneMove).toBeDefined();
  });
});

describe("the answers to what would help", () => {
  const answers = answersTo([{ ...asked, kind: "improve" }]).flatMap((answer) =>
    answer.kind === "improving" ? [answer.improving] : [],
  );
  it("come one change after another and end as the planner's own", () => {
    const counts = answers.map(({ step }) => step.improvements.changes.length);
    expect(counts[0]).toBe(0);
    expect(counts).toEqual([...counts].sort((one, other) => one - other));
    expect(answers.length).toBe(answers[0]!.step.of + 1);
    expect(answers.at(-1)!.step.improvements).toEqual(improve(request));
  });
  it("bring the kitchen that each change to the kitchen makes, and none for other changes", () => {
    const { step, kitchens } = answers.at(-1)!;
    const made = new Map(
      step.improvements.changes.map(({ change }, index) => [change.name, kitchens[index]]),
    );
    expect(made.get("lidded boxes at hand")?.wraps).toEqual(["lidded box"]);
    const [colder] = made.get("refrigerator colder")?.refrigerators ?? [];
    expect(colder?.temperature).toBeCloseTo(kitchen.refrigerators[0]!.temperature - 1, 9);
    expect(made.has("portion more a day")).toBe(true);
    expect(made.get("portion more a day")).toBeUndefined();
  });
});
