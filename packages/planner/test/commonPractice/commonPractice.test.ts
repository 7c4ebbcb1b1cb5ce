import { describe, expect, it } from "vitest";
import { disagreements } from "./disagreements.js";
import { ordinaryPlans, settings } from "./ordinaryHaul.js";
import { practices } from "./practices.js";
import { recordPractices } from "./recordPractices.js";
import { ripeningInABag, ripensIn } from "./ripeningInABag.js";

const followed = ({ follows }: (typeof practices)[number]) => ordinaryPlans().filter(follows).length;

describe("common practice, no source: the plans of an ordinary haul for two to five people, without and with a cellar", () => {
  it("is recorded for docs/accuracy.md, agreements and disagreements alike", () => {
    const rows = practices.map((practice) => ({
      name: practice.name,
      followed: followed(practice),
      of: settings.length,
      declared: practice.declared ?? false,
      why: disagreements[practice.name]?.why ?? "",
    }));
    recordPractices([...rows, ripeningInABag()]);
    expect(rows).toHaveLength(practices.length);
  });

  it.each(practices.map((practice) => [practice.name, practice] as const))("%s", (name, practice) => {
    expect(
      followed(practice),
      "the number of settings that follow it has changed: see why, and correct disagreements.ts",
    ).toBe(disagreements[name]?.followed ?? settings.length);
  });

  it("lists no disagreement with advice that is not checked", () => {
    expect(
      Object.keys(disagreements).filter((name) => !practices.some((practice) => practice.name === name)),
    ).toEqual([]);
  });
});

describe("common practice, no source: fruit wanted ripe soon is shut in a paper bag", () => {
  it("is, where paper is the only bag at hand", () => {
    expect(ripensIn(["paper bag"]).every((wrap) => wrap === "paper bag")).toBe(true);
  });

  it("is not, where a bag with holes is at hand too: see why, and correct ripeningInABag.ts when this changes", () => {
    expect(ripeningInABag()).toMatchObject({ followed: 0, of: 6 });
  });
});
