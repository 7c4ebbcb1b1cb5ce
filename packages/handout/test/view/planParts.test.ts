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

describe("why something ripens before it is moved", () => {
  const reasonsWith = (place: string, placeKind: "counter" | "crisper drawer") => {
    const lot = handMadePlan.lots[1]!;
    const stays = [
      { ...lot.stays[0]!, place, placeKind },
      { ...lot.stays[1]!, place: "shelf" },
    ];
    return planView(context, { ...handMadePlan, lots: [{ ...lot, stays }] }).lives[0]!.reasons.join("\n");
  };
  it("is warmth only where it is warm", () => {
    expect(reasonsWith("counter", "counter")).toMatch(/Ripening needs warmth: 21 °C until ripe/);
    const cold = reasonsWith("right", "crisper drawer");
    expect(cold).not.toMatch(/needs warmth|the cold slows ageing/);
    expect(cold).toMatch(/goes on ripening in the cold, only slowly: 4 °C until ripe/);
  });
});

describe("the word for how ripe it came", () => {
  const named = (ripeness: number) =>
    planView(context, { ...handMadePlan, lots: [{ ...handMadePlan.lots[1]!, ripeness }] })
      .places.flatMap(({ entries }) => entries)
      .map(({ name }) => name);
  it.each([
    [0.2, "Dawnfruits, unripe"],
    [0.5, "Dawnfruits"],
    [0.9, "Dawnfruits, nearly ripe"],
    [1, "Dawnfruits, ripe"],
    [1.5, "Dawnfruits, very ripe"],
  ])("at %d is: %s; ripe is only what is ready to eat", (ripeness, name) => {
    expect(named(ripeness)).toEqual([name]);
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

describe("kinds that are not to be eaten raw", () => {
  const [lot] = handMadePlan.lots;
  const kind = inventedCatalogue.commodities.get(lot!.commodity)!;
  const mustBeCooked = {
    value: true as const,
    source: "fixture",
    place: "invented",
    kind: "recommended" as const,
    fromMemory: false,
  };
  const commodities = new Map(inventedCatalogue.commodities).set(kind.id, { ...kind, mustBeCooked });
  const cautions = (catalogue: typeof inventedCatalogue) =>
    planView(handoutContext(catalogue), handMadePlan).cautions;
  it("are named, to be cooked through", () => {
    expect(
      cautions({ ...inventedCatalogue, commodities }).filter((line) => /cook all the way/.test(line)),
    ).toHaveLength(1);
    expect(cautions(inventedCatalogue).filter((line) => /cook all the way/.test(line))).toEqual([]);
  });
});

describe("what was assumed", () => {
  it("is one sentence, or nothing", () => {
    expect(assumedLine(context, ["usual size", "whole"])).toBe("Assumed: the usual size and whole.");
    expect(assumedLine(context, [])).toBeUndefined();
  });
});

describe("saying other messages than the handout's", () => {
  const messages = {
    apples: "{count, plural, one {# apple} other {# apples}}",
    price: "{sum} each",
  } as const;
  it("chooses the plural form and writes numbers as the language does", () => {
    const say = sayer<typeof messages>("en-GB", messages);
    expect(say("apples", { count: 1 })).toBe("1 apple");
    expect(say("apples", { count: 1200 })).toBe("1,200 apples");
    expect(sayer<typeof messages>("de", messages)("price", { sum: 1.5 })).toBe("1,5 each");
  });
});
