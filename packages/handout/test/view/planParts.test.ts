import { assumedLine, handoutContext, type PreparationView, planView, sayer } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const view = planView(context, handMadePlan);

describe("the parts of a plan's sentences", () => {
  it("say of a task what to do and why, and hold every word of the line", () => {
    expect(view.preparation.length).toBeGreaterThan(0);
    // On paper and in the terminal a star stands for “Common practice, no source”, said once below.
    const bare = (text: string) =>
      text.replace("Common practice, no source", "*").replace(/[().]/g, "").replace(/\s+/g, " ").trim();
    for (const { line, what, why } of view.preparation) expect(bare(`${what} ${why}`)).toBe(bare(line));
  });

  it("tell work to be done now from what is left as it is", () => {
    const lot = { ...handMadePlan.lots[0]!, preparation: ["trim stem ends", "keep dry and unwashed"] };
    const tasks = planView(context, { ...handMadePlan, lots: [lot] }).preparation;
    const now = Object.fromEntries(tasks.map(({ task, now }: PreparationView) => [task, now]));
    expect(now).toEqual({ "trim stem ends": true, "keep dry and unwashed": false });
  });

  it("lead with one reason for each life and keep the others, none lost and none twice", () => {
    for (const { reasons, lead, more } of view.lives) {
      expect(reasons).toContain(lead);
      expect([lead, ...more].sort()).toEqual([...new Set(reasons)].sort());
    }
  });

  it("give every eating day its date and entries, all of them in its line", () => {
    for (const { line, dateWords, entries } of view.eating.days)
      for (const part of [dateWords, ...entries]) expect(line).toContain(part);
  });
});

describe("pressing cautions", () => {
  const pressing = (...cautions: string[]) => planView(context, { ...handMadePlan, cautions });
  it("are those that can harm today, and stand among the cautions too", () => {
    const { pressing: first, cautions } = pressing("mould-soft", "cut-produce", "refrigerator-too-warm");
    expect(first).toHaveLength(2);
    for (const line of first) expect(cautions).toContain(line);
  });
  it("are none where nothing is unsafe now", () => {
    expect(pressing("mould-soft", "green-potatoes").pressing).toEqual([]);
  });
});

describe("what was taken for granted", () => {
  it("is one sentence, or nothing", () => {
    expect(assumedLine(context, ["usual size", "whole"])).toBe(
      "Taken for granted: the usual size and whole.",
    );
    expect(assumedLine(context, [])).toBeUndefined();
  });
});

describe("saying other messages than the handout's", () => {
  const messages = {
    apples: { one: "{count} apple", other: "{count} apples" },
    price: "{sum} each",
  } as const;
  it("chooses the plural form and writes numbers as the language does", () => {
    const say = sayer<typeof messages>("en-GB", messages);
    expect(say("apples", { count: 1 })).toBe("1 apple");
    expect(say("apples", { count: 1200 })).toBe("1,200 apples");
    expect(sayer<typeof messages>("de", messages)("price", { sum: 1.5 })).toBe("1,5 each");
  });
});
