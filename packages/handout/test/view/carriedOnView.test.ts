import { carriedOnText, carriedOnView, englishLanguage, handoutContext } from "@keepwright/handout";
import { type CarriedOn, type ChangeReason, reasonSchema } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const [first] = handMadePlan.lots;
const [place] = handMadePlan.places;
const lies = { place: first!.stays[0]!.place, wrap: first!.stays[0]!.wrap };

/** One reason of each kind, with everything any of them may tell. */
const everyReason = reasonSchema.options.map(
  (option) =>
    option.parse({
      because: option.shape.because.value,
      ...("days" in option.shape && { days: 2.4 }),
      ...("portions" in option.shape && { portions: 1 }),
      ...("lots" in option.shape && { lots: [first!.lot] }),
      ...("place" in option.shape && { place: place!.place }),
      ...("gain" in option.shape && { gain: { value: 40, unit: "g" } }),
    }) as ChangeReason,
);

function told(change: CarriedOn["changes"][number]["change"], reasons: ChangeReason[]): CarriedOn {
  const meals = { before: [{ day: 1, portions: 2 }], now: [] };
  const to = change === "gone" ? [] : [{ ...lies, place: place!.place }];
  return {
    version: 1,
    plan: handMadePlan,
    haul: { lots: [] },
    elapsed: 2,
    changes: [
      {
        lot: first!.lot,
        part: first!.id,
        commodity: first!.commodity,
        change,
        from: lies,
        to,
        meals,
        reasons,
      },
    ],
    vents: [{ place: place!.place, from: "open", to: "closed" }],
    begun: [first!.lot],
    takenAsCut: [{ lot: first!.lot, date: "2026-06-13" }],
  };
}

describe("a plan carried on, in words", () => {
  it.each(everyReason.map((reason) => [reason.because, reason] as const))("says why: %s", (_, reason) => {
    const { changes } = carriedOnView(context, told("moves", [reason]));
    expect(changes[0]).not.toMatch(/undefined|NaN|\{|\}|carryOn\./);
    expect(changes[0]!.length).toBeGreaterThan(30);
  });

  it("puts what changes first, then what stays and what is gone, then the plan", () => {
    const text = carriedOnText(
      context,
      carriedOnView(context, told("other days", [{ because: "others gone" }])),
    );
    expect(text).toMatch(
      /^The plan carried on[\s\S]*BEGUN, AND SO CUT[\s\S]*WHAT CHANGES, AND WHY[\s\S]*on no day instead of/,
    );
    expect(text.indexOf("WHAT CHANGES")).toBeLessThan(text.indexOf("WHERE EACH THING GOES"));
    expect(carriedOnText(context, carriedOnView(context, told("stays", [])))).toContain("STAYS AS IT WAS");
    expect(carriedOnText(context, carriedOnView(context, told("gone", [{ because: "eaten" }])))).toContain(
      "eaten up",
    );
  });

  it("holds no word that does not come from the language's own messages", () => {
    const messages = Object.fromEntries(
      Object.entries(englishLanguage.messages).map(([key, message]) => [
        key,
        typeof message === "string"
          ? `⟦${message}⟧`
          : Object.fromEntries(Object.entries(message).map(([form, text]) => [form, `⟦${text}⟧`])),
      ]),
    ) as typeof englishLanguage.messages;
    const marked = handoutContext(inventedCatalogue, { language: { tag: "en-GB", messages } });
    for (const line of carriedOnView(marked, told("moves", everyReason)).changes)
      expect(line).toMatch(/^⟦[\s\S]*⟧$/u);
  });
});
