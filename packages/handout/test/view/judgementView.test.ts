import { catalogue } from "@keepwright/catalogue";
import {
  englishLanguage,
  handoutContext,
  judgementText,
  judgementView,
  type Message,
} from "@keepwright/handout";
import { type Judgement, judgeArrangement, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const lot = (commodity: string, grams: number, more: object = {}) => ({
  id: commodity,
  commodity,
  grams,
  ...more,
});
const judged = (lots: readonly object[], said: object): Judgement =>
  judgeArrangement({
    haul: { lots },
    kitchen: ordinaryKitchens.ordinary,
    household: { people: 2 },
    from: "2026-06-13",
    catalogue: catalogue(),
    arrangement: { version: 1, ...said },
  });

/** Invented: much of what can go wrong at once. */
const crowded = judged(
  [
    lot("apple", 2000),
    lot("pear", 1500, { ripeness: "ripe" }),
    lot("broccoli", 700),
    lot("banana", 900, { ripeness: "unripe" }),
    lot("cantaloupe", 600, { form: "cut" }),
    lot("potato", 1500),
    lot("watermelon", 9000),
    lot("lemon", 400),
  ],
  {
    lots: [
      ...["apple", "pear", "broccoli", "watermelon"].map((id) => ({ lot: id, place: "left-drawer" })),
      { lot: "banana", place: "shelf", later: { moveWhen: "ripe", place: "counter" } },
      { lot: "cantaloupe", place: "counter" },
      { lot: "potato", place: "counter", wrap: "closed film bag" },
    ],
    vents: [{ place: "left-drawer", setting: "closed" }],
  },
);
const context = handoutContext(catalogue());
const view = judgementView(context, crowded);

describe("a judgement in words", () => {
  it("tells first what is unsafe", () => {
    expect(view.unsafe.map((line) => line.split(":")[0])).toEqual([
      "Cantaloupe, cut",
      "Cantaloupe, cut",
      "Potatoes",
    ]);
    const text = judgementText(context, view);
    expect(text.indexOf("PUT THIS RIGHT FIRST")).toBeGreaterThan(0);
    expect(text.indexOf("PUT THIS RIGHT FIRST")).toBeLessThan(text.indexOf("WHAT IT COSTS"));
  });

  it("says what was not told and where it was put", () => {
    expect(view.notTold[0]).toMatch(/^Put where a plan would put them beside the rest: lemons\.$/);
    expect(view.notTold[1]).toMatch(/taken as if nobody had touched them: “Right drawer” half open\./);
  });

  it("names waste in mass and portions, room, wraps and moves in vain", () => {
    expect(view.cost[0]).toMatch(
      /^Expected waste as you have it: .*kg \(about \d+ portions\)\. With the plan: /,
    );
    expect(view.alsoSeen.join("\n")).toMatch(/Left drawer: over-full by about/);
    expect(view.alsoSeen.join("\n")).toMatch(/Potatoes: in a closed plastic bag does not suit it/);
    expect(view.alsoSeen.join("\n")).toMatch(/Bananas: to be moved when ripe, but no ripening there/);
    expect(view.cautions.join("\n")).not.toMatch(/over-full/);
  });

  it("has a line for every lot and at most three that go worst, each with what the plan does", () => {
    expect(view.lots).toHaveLength(8);
    expect(view.conflicts).toHaveLength(3);
    for (const { why } of view.conflicts) expect(why.at(-1)).toMatch(/^In the plan/);
    expect(view.conflicts[0]!.line).toMatch(/no ripening there|instead of/);
  });

  it("tells how each vent is, and tells nobody to set one", () => {
    expect(view.places.map(({ line }) => line).join("\n")).toMatch(/The vent is closed\./);
    expect(judgementText(context, view)).not.toMatch(/Set the vent/);
  });

  it("names the neighbour to blame, and that effects are joint", () => {
    const said = {
      lots: ["apple", "pear", "broccoli"].map((id) => ({ lot: id, place: "left-drawer" })),
      vents: [{ place: "left-drawer", setting: "closed" }],
    };
    const lots = [lot("apple", 1500), lot("pear", 1500, { ripeness: "ripe" }), lot("broccoli", 500)];
    const { why } = judgementView(context, judged(lots, said)).conflicts.find(
      (one) => one.lot === "broccoli",
    )!;
    expect(why.join("\n")).toMatch(/with no neighbour at all /);
    expect(why.join("\n")).toMatch(/With (apples|pears) as the only neighbour: /);
    expect(why.join("\n")).toMatch(/act together/);
    const one = judgementView(
      context,
      judged([lots[0]!, lots[2]!], { ...said, lots: said.lots.filter((each) => each.lot !== "pear") }),
    );
    expect(one.conflicts[0]!.why.join("\n")).toMatch(
      /without apples in the kitchen .* instead of .*ripening gas/,
    );
    expect(one.conflicts[0]!.why.join("\n")).not.toMatch(/act together/);
  });

  it("says so where all is as good as the plan", () => {
    const { cost, conflicts } = judgementView(
      context,
      judged([lot("onion", 500)], { lots: [], vents: [{ place: "left-drawer", setting: "half" }] }),
    );
    expect(cost.at(-1)).toMatch(/as good as the plan/);
    expect(conflicts).toEqual([]);
  });

  it("holds no word that does not come from the language's own messages", () => {
    const mark = (message: Message): Message =>
      typeof message === "string"
        ? `⟦${message}⟧`
        : (Object.fromEntries(Object.entries(message).map(([form, text]) => [form, `⟦${text}⟧`])) as Message);
    const messages = Object.fromEntries(
      Object.entries(englishLanguage.messages).map(([key, message]) => [key, mark(message)]),
    ) as typeof englishLanguage.messages;
    const marked = judgementView(
      handoutContext(catalogue(), { language: { tag: "en-GB", messages } }),
      crowded,
    );
    const lines = [...marked.cost, ...marked.alsoSeen, ...marked.unsafe, ...marked.notTold, ...marked.lots];
    for (const line of [...lines, ...marked.conflicts.flatMap(({ line: head, why }) => [head, ...why])])
      expect(line).toMatch(/^⟦.*⟧$/su);
  });
});
