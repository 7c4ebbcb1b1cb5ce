import {
  carriedOnText,
  carriedOnView,
  englishLanguage,
  handoutContext,
  spanishLanguage,
} from "@keepwright/handout";
import { type CarriedOn, type ChangeReason, changeKinds, reasonSchema } from "@keepwright/planner";
import fc from "fast-check";
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
      ...("word" in option.shape && { word: "zorbs", kinds: [first!.commodity] }),
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
    begun: [],
    takenAsCut: [],
  };
}

describe("a plan carried on, in words", () => {
  it("says that what was begun lies in the refrigerator only where there is one", () => {
    const [first] = everyReason;
    const base = told("stays", [first!]);
    const id = base.changes[0]!.lot!;
    const cut = { ...base, takenAsCut: [{ lot: id, date: "2026-06-13", because: "begun" as const }] };
    const without = {
      ...cut,
      plan: {
        ...cut.plan,
        places: cut.plan.places.map((place) => ({ ...place, placeKind: "counter" as const })),
      },
    };
    const words = (one: typeof cut) => JSON.stringify(carriedOnView(context, one));
    expect(words(cut)).toContain("kept covered in the refrigerator since");
    expect(words(without)).toContain("this kitchen has no refrigerator for it");
    expect(words(without)).not.toContain("kept covered in the refrigerator since");
  });

  it.each(everyReason.map((reason) => [reason.because, reason] as const))("says why: %s", (_, reason) => {
    const { changes } = carriedOnView(context, told("moves", [reason]));
    expect(changes[0]).not.toMatch(/undefined|NaN|\{|\}|carryOn\./);
    expect(changes[0]!.length).toBeGreaterThan(30);
  });

  it("says of what may no longer be eaten that it was cut or opened: leaves in a bag are not cut at home", () => {
    expect(carriedOnView(context, told("throw away", [])).throwAway[0]).toMatch(
      /cut or opened too long ago/i,
    );
  });

  it("puts what changes first, then what stays and what is gone, then the plan", () => {
    const changed = told("other days", [{ because: "others gone" }]);
    const text = carriedOnText(context, carriedOnView(context, changed));
    expect(text).toMatch(/^The plan carried on[\s\S]*WHAT CHANGES, AND WHY[\s\S]*on no day instead of/);
    const begun = carriedOnText(context, carriedOnView(context, { ...changed, begun: [first!.lot] }));
    expect(begun).toMatch(
      /^The plan carried on[\s\S]*BEGUN, AND SO CUT[\s\S]*on no day instead of[\s\S]*WHAT CHANGES, AND WHY/,
    );
    expect(text.indexOf("WHAT CHANGES")).toBeLessThan(text.indexOf("WHERE EACH THING GOES"));
    expect(carriedOnText(context, carriedOnView(context, told("stays", [])))).toContain("STAYS AS IT WAS");
    expect(carriedOnText(context, carriedOnView(context, told("gone", [{ because: "eaten" }])))).toContain(
      "eaten up",
    );
  });

  const spoken = handoutContext(inventedCatalogue, { language: spanishLanguage });
  const grams = (value: number) => ({ value, unit: "g" as const });

  it.each([
    ["English", context, /: 150 g frozen and 80 g thrown out\.$/],
    ["Spanish", spoken, /: 150 g al congelador y 80 g a la basura\.$/],
  ] as const)(
    "says under what is gone how much was frozen or thrown out of what is left, in %s",
    (_, of, line) => {
      const all = told("other days", []);
      const taken = [
        { way: "frozen" as const, grams: grams(100) },
        { way: "thrown out" as const, grams: grams(80) },
      ];
      const more = [{ way: "frozen" as const, grams: grams(50) }];
      const [change] = all.changes;
      const view = carriedOnView(of, {
        ...all,
        changes: [
          { ...change!, taken },
          { ...change!, taken: more },
        ],
      });
      expect(view.gone).toHaveLength(1);
      expect(view.gone[0]).toMatch(line);
      expect(carriedOnView(of, told("gone", [{ because: "frozen" }])).gone[0]).toMatch(
        /frozen|al congelador/,
      );
    },
  );

  it.each([
    ["lay warm", context, /not told\. It is taken as left at “.+”/],
    ["lay warm", spoken, /se hubiera quedado en “.+”/],
    ["cut today", context, /in the refrigerator at once, not left at “.+”/],
    ["cut today", spoken, /de inmediato, sin quedarse en “.+”/],
  ] as const)("says where what was cut is taken to have lain: %s", (because, of, line) => {
    const cut = { lot: first!.lot, date: "2026-06-12", because, place: place!.place };
    for (const change of ["stays", "throw away"] as const) {
      const { begun, throwAway } = carriedOnView(of, { ...told(change, []), takenAsCut: [cut] });
      expect([...begun, ...throwAway].join("\n")).toMatch(line);
    }
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

  const anyLot = fc.record({
    change: fc.constantFrom(...changeKinds),
    cut: fc.constantFrom("begun", "taken as cut", "no"),
  });

  it("names each lot in one list only, whatever became of it", () => {
    fc.assert(
      fc.property(fc.array(anyLot, { minLength: 1, maxLength: 5 }), (drawn) => {
        const lots = drawn.map((_, index) => ({ ...first!, id: `x${index}x`, lot: `x${index}x` }));
        const named = lots.map((one) => ({ ...one, commodity: one.id }));
        const ids = (cut: string) =>
          named.flatMap(({ id }, index) => (drawn[index]!.cut === cut ? [id] : []));
        const all: CarriedOn = {
          ...told("stays", []),
          plan: { ...handMadePlan, lots: named },
          changes: named.map(({ id, commodity }, index) => ({
            ...told(drawn[index]!.change, []).changes[0]!,
            ...(drawn[index]!.change === "throw away" && { to: [] }),
            lot: id,
            commodity,
          })),
          begun: ids("begun"),
          takenAsCut: ids("taken as cut").map((id) => ({ lot: id, date: "2026-06-13", because: "begun" })),
        };
        const { throwAway, begun, changes, staying, gone } = carriedOnView(context, all);
        const lists = [throwAway, begun, changes, staying, gone].map((lines) =>
          lines.join("\n").toLowerCase(),
        );
        for (const { id } of named) expect(lists.filter((list) => list.includes(id))).toHaveLength(1);
      }),
    );
  });

  it("tells first what may no longer be eaten, once, and never that nothing changes", () => {
    const away = { ...told("throw away", []), vents: [] };
    const past = { ...away, plan: { ...handMadePlan, lots: [{ ...first!, safeUntil: "past" as const }] } };
    const text = carriedOnText(context, carriedOnView(context, past));
    expect(text).not.toContain("Nothing changes");
    expect(text.match(/^THROW AWAY/gm)).toHaveLength(1);
    expect(text.indexOf("THROW AWAY")).toBeLessThan(text.indexOf("TAKE CARE"));
  });

  it("says which is to be thrown away where some of the same kind, cut later, is kept", () => {
    const cut = { form: "cut" as const, grams: 200, tops: false, washed: false, extraDays: 0 };
    const two = ["first", "second"].map((id) => ({ ...first!, id, lot: id, form: "cut" as const }));
    const changes = (["throw away", "stays"] as const).map((change, index) => ({
      ...told(change, []).changes[0]!,
      lot: two[index]!.id,
    }));
    const lots = two.map(({ id, commodity }) => ({ ...cut, id, commodity }));
    const both = { ...told("stays", []), plan: { ...handMadePlan, lots: two }, haul: { lots }, changes };
    expect(carriedOnView(context, both).throwAway.join(" ")).toContain("what was cut first is meant");
    const one = { ...both, changes: changes.slice(0, 1) };
    expect(carriedOnView(context, one).throwAway.join(" ")).not.toContain("is meant");
  });
});
