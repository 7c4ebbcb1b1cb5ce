import { catalogue, figureCatalogue } from "@keepwright/catalogue";
import { englishLanguage, handoutContext, spanishLanguage } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { judgeAnswerer } from "../../src/behaviour/answerJudge.js";
import type { JudgeAnswer } from "../../src/behaviour/judgeMessages.js";
import { afterJudgeAnswer } from "../../src/behaviour/useJudgement.js";
import { problemWords } from "../../src/behaviour/useProblemWords.js";

const context = (language: typeof englishLanguage | typeof spanishLanguage) =>
  handoutContext(catalogue(), { units: { temperature: "metric", mass: "metric" }, language });
const apple = figureCatalogue().commodities.get("apple")!;
const asked = {
  lots: [
    {
      id: "lot-1",
      commodity: apple.id,
      grams: 500,
      form: "whole" as const,
      tops: false,
      washed: false,
      extraDays: 0,
      typed: "apples for later",
      wanted: { when: "by" as const, day: "2026-12-24" },
    },
  ],
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 8 },
  from: "2026-06-13",
};

describe("what went wrong in a judgement", () => {
  const answers: JudgeAnswer[] = [];
  judgeAnswerer()({ ...asked, kind: "improve", number: 1 }, (one) => answers.push(one));
  const [answer] = answers;
  it("is told in either language where it is something that was given", () => {
    if (answer?.kind !== "problem") throw new Error("It was answered although a day is too far ahead.");
    expect(answer.findings?.length).toBeGreaterThan(0);
    const state = afterJudgeAnswer({ made: undefined, problem: undefined, working: true }, answer, {
      ...asked,
      kind: "improve",
    });
    const words = [englishLanguage, spanishLanguage].map((language) =>
      problemWords(state, context(language)),
    );
    expect(words[0]).not.toBe(words[1]);
    expect(words[1]).toContain("se quiere para");
    for (const each of words) expect(each).toContain("24");
  });
});

describe("what only stopped", () => {
  it("has no words of its own: neither the browser's nor English ones are shown", () => {
    const stopped = { problem: "Uncaught RangeError: out of memory" };
    expect(problemWords(stopped, context(spanishLanguage))).toBe("");
    expect(problemWords({ problem: undefined }, context(spanishLanguage))).toBeUndefined();
  });
});
