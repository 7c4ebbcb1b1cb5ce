import { describe, expect, it } from "vitest";
import { disagreements } from "./disagreements.js";
import { ordinaryPlan } from "./ordinaryHaul.js";
import { practices } from "./practices.js";
import { recordPractices } from "./recordPractices.js";

describe("common practice, no source: the plan of an ordinary haul in an ordinary kitchen", () => {
  it("is recorded for docs/accuracy.md, agreements and disagreements alike", () => {
    const rows = practices.map(({ name, follows }) => ({
      name,
      follows: follows(ordinaryPlan()),
      why: disagreements[name] ?? "",
    }));
    recordPractices(rows);
    expect(rows).toHaveLength(practices.length);
  });

  it.each(practices.map((practice) => [practice.name, practice] as const))("%s", (name, { follows }) => {
    const expected = !Object.hasOwn(disagreements, name);
    expect(
      follows(ordinaryPlan()),
      expected ? "the plan stopped agreeing" : "the plan agrees now: take it off the list of disagreements",
    ).toBe(expected);
  });

  it("lists no disagreement with advice that is not checked", () => {
    expect(
      Object.keys(disagreements).filter((name) => !practices.some((practice) => practice.name === name)),
    ).toEqual([]);
  });
});
