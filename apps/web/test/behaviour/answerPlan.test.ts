import { figureCatalogue } from "@keepwright/catalogue";
import { loadSolver, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { answerAfterPlan, planAnswerer } from "../../src/behaviour/answerPlan.js";
import type { PlanAnswer, PlanRequest } from "../../src/behaviour/planMessages.js";
import { readLines } from "../../src/state/readLines.js";
import { lotsToPlan } from "../../src/state/readLots.js";

const request: PlanRequest = {
  number: 7,
  lots: lotsToPlan(readLines("2 kg apples\n3 avocados\n1 broccoli", {}, figureCatalogue())),
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 10 },
  from: "2026-06-13",
};

/** The answers to a question, and how many of them were out when the solver was asked for. */
async function answersTo(asked: PlanRequest, load = loadSolver) {
  const answers: PlanAnswer[] = [];
  const beforeSolver: number[] = [];
  planAnswerer()(asked, (answer) => answers.push(answer));
  const [first] = answers;
  if (first?.kind !== "plan") return { answers, beforeSolver };
  await answerAfterPlan(
    { ...asked, plan: first.plan },
    (answer) => answers.push(answer),
    () => {
      beforeSolver.push(answers.length);
      return load();
    },
  );
  return { answers, beforeSolver };
}

describe("the answers to a question and to what follows from its plan", () => {
  it("are the plan, the reasons, and only then, with the solver, how much better it could be", async () => {
    const { answers, beforeSolver } = await answersTo(request);
    expect(answers.map(({ kind, number }) => [kind, number])).toEqual([
      ["plan", 7],
      ["reasons", 7],
      ["proof", 7],
    ]);
    expect(beforeSolver).toEqual([2]);
    const [first, , last] = answers;
    if (first?.kind !== "plan" || last?.kind !== "proof") throw new Error("The answers are of other kinds.");
    expect(first.plan.proof).toBeUndefined();
    expect(last.proof?.value).toBe(first.plan.objective.total);
    expect(last.proof?.bound).toBeGreaterThan(0);
    expect(last.proof?.bound).toBeLessThanOrEqual(first.plan.objective.total);
    // A branch is split into up to three, so that the last split may go two beyond.
    expect(last.proof?.relaxations).toBeLessThanOrEqual(6);
  });
  it("end without a proof and without a problem where the solver does not come", async () => {
    const { answers } = await answersTo(request, () => Promise.reject(new Error("The solver is away.")));
    expect(answers.map(({ kind }) => kind)).toEqual(["plan", "reasons", "proof"]);
    expect(answers.at(-1)).toEqual({ number: 7, kind: "proof", proof: undefined });
  });
  it("end without a proof where the plan cannot be proved", async () => {
    const { answers } = await answersTo(request, async () => {
      const solver = await loadSolver();
      return new Proxy(solver, {
        get: () => {
          throw new RangeError("The solver has broken down.");
        },
      });
    });
    expect(answers.at(-1)).toEqual({ number: 7, kind: "proof", proof: undefined });
  });
  it("are the problem alone, and no solver is asked for, where there can be no plan", async () => {
    const [lot] = request.lots;
    const { answers, beforeSolver } = await answersTo({ ...request, lots: [{ ...lot!, grams: -1 }] });
    expect(answers.map(({ kind }) => kind)).toEqual(["problem"]);
    expect(beforeSolver).toEqual([]);
  });

  it("are what is wrong as data where no plan can be made, so that the page can tell it in its language", async () => {
    const [pears] = lotsToPlan(readLines("3 pears", {}, figureCatalogue()));
    const wanted = { when: "by", day: "2026-12-24" } as const;
    const { answers } = await answersTo({ ...request, lots: [{ ...pears!, wanted }] });
    expect(answers).toMatchObject([
      { kind: "problem", number: 7, findings: [{ told: { code: "wanted too far ahead" } }] },
    ]);
  });
});
