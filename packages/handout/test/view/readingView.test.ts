import { catalogue } from "@keepwright/catalogue";
import { type NotKept, notKept, readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { handoutContext, questionLine, readingView } from "../../src/index.js";

const context = handoutContext(catalogue());
const view = (text: string) => readingView(context, readHaul(text, catalogue()));

describe("what was understood, in words", () => {
  it("shows back how many days ago it came", () => {
    expect(view("cut cantaloupe from 3 days ago").understood[0]).toContain("from 3 days ago");
    expect(view("carrots from yesterday").understood[0]).toContain("from 1 day ago");
    expect(view("carrots").understood[0]).not.toContain("ago");
  });

  it("says that what is unsafe or other is not planned, with its caution", () => {
    const { understood, questions } = view("mouldy strawberries");
    expect(understood).toEqual(["“mouldy strawberries” → not planned as it is"]);
    expect(questions).toHaveLength(1);
    expect(questions[0]).toContain("throw away every mouldy piece");
  });

  it("has words of its own for every reason", () => {
    const lines = (Object.keys(notKept) as NotKept[]).map((reason) =>
      questionLine(context, { ask: "unsafe or other", reason, word: "word", candidates: [] }),
    );
    for (const line of lines) expect(line).toMatch(/^“word”: .{20,}[.?]$/s);
    expect(new Set(lines).size).toBe(lines.length);
  });

  /** The words carry the numbers of the catalogue's safety data, never others. */
  it.each([
    ["moldy carrots", "mould-on-firm-cut-around", /2\.5 cm/, 2.5],
    ["garlic in oil", "garlic-in-oil-refrigerated-days", /within four days/, 4],
    ["alfalfa sprouts", "sprouts-at-most", /4 °C \(40 °F\)/, 4.4],
  ])("%s: as %s has it", (text, id, words, value) => {
    expect(view(text).questions[0]).toMatch(words);
    expect(catalogue().safety.get(id)).toMatchObject({ value });
  });
});
