import { englishLanguage, handoutContext, type Message, planText, planView } from "@keepwright/handout";
import type { Plan, PlanDraws } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const figure = (mean: number, low: number, high: number) => ({
  mean,
  standardError: 4,
  median: mean,
  low,
  high,
  unit: "g" as const,
});

/** Invented draws: the first lot doubtful, the second doubtful and unripe, the rest sure. */
const draws: PlanDraws = {
  count: 1000,
  seed: 12345,
  waste: figure(120, 0, 300),
  unsorted: { waste: figure(400, 100, 900), saved: figure(280, 40, 700), planBetter: 0.91, planWorse: 0.04 },
  lots: handMadePlan.lots.map(({ id }, index) => ({
    id,
    inTime: index === 0 ? 0.83 : index === 1 ? 0.62 : 0.995,
    claimed: index === 0 ? 0.85 : 0.9,
    unripe: index === 1 ? 0.4 : 0,
    waste: figure(10, 0, 20),
    occasions: [],
  })),
};
const withDraws = (more: Partial<PlanDraws> = {}): Plan => ({
  ...handMadePlan,
  draws: { ...draws, ...more },
});
const saved = (one: ReturnType<typeof figure>): string[] => [
  ...planView(context, withDraws({ unsorted: { ...draws.unsorted, saved: one } })).draws!.waste,
];

describe("a plan carried out many times, in words", () => {
  it("is not spoken of where it was not", () => {
    expect(planView(context, handMadePlan).draws).toBeUndefined();
    expect(planText(context, planView(context, handMadePlan))).not.toMatch(/HOW SURE/);
  });

  it("tells how, with the seed as it was given", () => {
    expect(planView(context, withDraws()).draws!.how).toMatch(/1,000 times.*\(seed 12345\)/);
    expect(planView(context, withDraws({ count: 1 })).draws!.how).toMatch(/1 time,/);
  });

  it("puts what is least sure first, what is sure together, and says what is not yet ripe", () => {
    const { lots } = planView(context, withDraws()).draws!;
    expect(lots[0]).toMatch(/62\s?%.*90\s?%/);
    expect(lots[1]).toMatch(/83\s?%.*85\s?%/);
    expect(lots[2]).toMatch(/99\s?%.* and /);
    expect(lots[3]).toMatch(/not yet ripe.*40\s?%/);
    expect(lots).toHaveLength(4);
  });

  it("never tells less than nothing: a loss is told as one", () => {
    expect(saved(figure(280, 40, 700))[2]).toMatch(/saved 280 g.*between 40 g and 700 g/);
    expect(saved(figure(280, -60, 700))[2]).toMatch(/saved 280 g.*60 g more waste and 700 g less/);
    expect(saved(figure(-50, -200, 10))[2]).toMatch(/wasted 50 g more/);
  });

  it("leaves unsorted out where there is no refrigerator", () => {
    const plan = withDraws();
    const warm = plan.places.filter(({ placeKind }) => placeKind === "counter");
    expect(
      planView(context, { ...plan, places: warm, lots: [], draws: { ...draws, lots: [] } }).draws!.waste,
    ).toHaveLength(1);
  });

  it("says that these are chances in the model", () => {
    expect(planText(context, planView(context, withDraws()))).toMatch(/not counts from\s+real kitchens/);
  });

  it("holds no word that does not come from the language's own messages", () => {
    const marked = (message: Message): Message =>
      typeof message === "string"
        ? `⟦${message}⟧`
        : (Object.fromEntries(Object.entries(message).map(([form, text]) => [form, `⟦${text}⟧`])) as Message);
    const messages = Object.fromEntries(
      Object.entries(englishLanguage.messages).map(([key, message]) => [key, marked(message)]),
    ) as typeof englishLanguage.messages;
    const other = handoutContext(inventedCatalogue, { language: { tag: "en-GB", messages } });
    const { how, waste, lots, note } = planView(other, withDraws()).draws!;
    for (const line of [how, ...waste, ...lots, note]) expect(line).toMatch(/^⟦.*⟧$/su);
  });
});
