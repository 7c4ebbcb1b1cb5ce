import { bundledGuidance, catalogue, loadSourced } from "@keepwright/catalogue";
import { askedAnswer, askedSources, askNames, askView, handoutContext, kindName } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const kitchen = ordinaryKitchens.ordinary;
const context = handoutContext(catalogue());
const guidance = bundledGuidance("en");
const ask = (id: string, state: Parameters<typeof askedAnswer>[3] = { form: "whole" }) =>
  askedAnswer(catalogue(), id, kitchen, state);
const view = (...asked: Parameters<typeof ask>) => askView(context, ask(...asked), guidance.get(asked[0]));

describe("a kind asked about", () => {
  it("says where, how and until when, then what it may not lie beside, its signs and its cautions", () => {
    const { where, how, until, sections, note } = view("broccoli");
    expect(where).toMatch(/^Refrigerator/);
    expect(how).not.toBe("");
    expect(until).toMatch(/\d/);
    expect(sections.map(({ part }) => part)).toEqual([
      "apart",
      "ripe",
      "going",
      "discard",
      "save",
      "cautions",
      "season",
    ]);
    for (const { lines } of sections) expect(lines.length).toBeGreaterThan(0);
    expect(note).toBe("* Common practice, no source.");
  });

  it("ripens first and then lies elsewhere where it came unripe; not where it is ripe already", () => {
    expect(ask("avocado", { form: "whole", ripeness: "unripe" }).belongs.stays).toHaveLength(2);
    expect(ask("avocado", { form: "whole", ripeness: "ripe" }).belongs.stays).toHaveLength(1);
    const { where, ends } = view("avocado", { form: "whole", ripeness: "unripe" });
    expect(where).toMatch(/until ripe, then/);
    expect(ends.join(" ")).toMatch(/Ready to eat in about \d+ days/);
  });

  it("is kept in the refrigerator once it is cut, for no longer than is safe, with those cautions first", () => {
    const answer = ask("cantaloupe", { form: "cut" });
    expect(answer.belongs.stays.every(({ placeKind }) => /refrigerator|crisper/.test(placeKind))).toBe(true);
    const limit = catalogue().safety.get("cut-ready-to-eat-days")?.value ?? Number.NaN;
    expect(answer.belongs.life.late).toBeLessThanOrEqual(limit);
    expect(answer.cautions.slice(0, 2)).toEqual(["cut-produce", "cut-ready-to-eat"]);
    expect(answer.preparation).toEqual([]);
    expect(answer.cautions).not.toContain("mould-firm");
  });

  it("is warned of a kitchen without a refrigerator when it is cut, and of a refrigerator that is too warm", () => {
    const without = {
      ...kitchen,
      refrigerators: [],
      places: kitchen.places.filter(({ refrigerator }) => refrigerator === undefined),
    };
    const cut = askedAnswer(catalogue(), "cantaloupe", without, { form: "cut" });
    expect(cut.cautions[0]).toBe("no-refrigerator-for-cut-produce");
    const warm = {
      ...kitchen,
      refrigerators: kitchen.refrigerators.map((each) => ({ ...each, temperature: 9 })),
    };
    expect(askedAnswer(catalogue(), "carrot", warm, { form: "whole" }).cautions[0]).toBe(
      "refrigerator-too-warm",
    );
  });

  it("is told apart from what gives it gas or smells, never from itself, with names most homes know", () => {
    const because = Object.fromEntries(ask("carrot").apart.map((each) => [each.because, each.kinds]));
    expect(because["gas from"]).toContain("apple");
    expect(because["smell from"]).toContain("apple");
    expect(
      Object.fromEntries(ask("apple").apart.map((each) => [each.because, each.kinds]))["gas to"],
    ).toContain("broccoli");
    const lines = view("carrot").sections[0]!.lines.join(" ");
    expect(lines.toLowerCase()).toContain(kindName(context, "apple"));
  });

  it("says what must be cooked before anything else to take care of", () => {
    const [id] = [...catalogue().commodities.values()]
      .filter((each) => each.mustBeCooked)
      .map((each) => each.id);
    const cautions = view(id!).sections.find(({ part }) => part === "cautions");
    expect(cautions?.lines[0]).toMatch(/cook all the way through/);
  });

  it("names its sources, common practice as such, for figures and for advice", async () => {
    const lines = askedSources(context, await loadSourced(), "avocado", guidance.get("avocado")).map(
      ({ text }) => text,
    );
    expect(lines.some((line) => /storage life.*: .+\(.+\)\.$/i.test(line))).toBe(true);
    expect(lines.some((line) => /signs.*: common practice, no source\.$/i.test(line))).toBe(true);
    expect(lines.join(" ")).not.toMatch(/undefined/);
  });

  it("refuses a kind that the catalogue does not have, by name", () => {
    expect(() => ask("zorbulon")).toThrow(/zorbulon/);
    expect(askNames(context, "carrot").title).toBe("Carrots");
  });
});
