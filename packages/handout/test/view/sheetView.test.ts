import { handoutContext, type SheetView, sheetView, spanishLanguage, unitSystems } from "@keepwright/handout";
import { addDays } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyPlan } from "../fixtures/anyPlan.js";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const english = handoutContext(inventedCatalogue);
const spanish = handoutContext(inventedCatalogue, { language: spanishLanguage });
const rowsOf = ({ places }: SheetView) => places.flatMap(({ rows }) => rows);
const lotsOf = (view: SheetView) => rowsOf(view).map(({ lot }) => lot);

describe("the sheet of a plan", () => {
  const view = sheetView(english, handMadePlan);

  it("names the days it is for", () => {
    expect(view.dates).toMatch(/^[A-Z][a-z]{2} \d+ \w+ to [A-Z][a-z]{2} \d+ \w+ 20\d\d$/);
  });

  it("puts every part into its place at the start, with its vent and which drawer it is", () => {
    expect(lotsOf(view).sort()).toEqual(handMadePlan.lots.map(({ id }) => id).sort());
    const left = view.places.find(({ place }) => place === "left")!;
    expect(left).toMatchObject({ number: 1, of: 2, vent: { setting: "closed", words: "Vent: closed" } });
    expect(view.places.find(({ place }) => place === "right")).toMatchObject({ number: 2, of: 2 });
  });

  it("says what comes into a place later, and when it is to be moved", () => {
    expect(view.places.find(({ place }) => place === "right")!.later).toHaveLength(1);
    expect(view.moves.map(({ when, what }) => `${when}: ${what}`)).toEqual([
      expect.stringMatching(/: Leave in “Right drawer”, but from now on in a paper bag/),
      expect.stringMatching(/^When ripe, about .*: Move to “Right drawer”, loose\.$/),
    ]);
  });

  it("has each part on the day of its last meal, or among what is left, and on no other", () => {
    const eaten = handMadePlan.lots.filter(
      ({ leftPortions, eatOn }) => leftPortions === 0 && eatOn.length > 0,
    );
    const told = view.eating.days.flatMap(({ date, lines }) => lines.map((line) => `${date} ${line}`));
    expect(eaten.length).toBeGreaterThan(2);
    for (const lot of eaten) {
      const name = rowsOf(view)
        .find((row) => row.lot === lot.id)!
        .name.split(/[,(]/)[0]!
        .trim();
      const date = addDays(handMadePlan.from, lot.eatOn.at(-1)!.day);
      const days = told.filter((line) => line.toLowerCase().includes(name.toLowerCase()));
      expect(days.filter((line) => line.startsWith(date)).length, name).toBeGreaterThan(0);
    }
    expect(view.eating.left.join(" ")).toMatch(/Left at the end/);
  });

  it("never tells a later last day than food safety allows", () => {
    const safe = { ...handMadePlan.lots[5]!, safeUntil: addDays(handMadePlan.from, 2) };
    const [row] = rowsOf(sheetView(english, { ...handMadePlan, lots: [safe] }));
    expect(row!.until).toMatch(/For food safety, keep it until [A-Z][a-z]{2} \d+ [A-Z]\w+ at most\.$/);
    expect(row!.until).not.toMatch(/with luck/);
  });

  it("says of what is eaten over several days how it is kept once cut, and its last safe day", () => {
    const [a, b, , , , melon] = handMadePlan.lots;
    const from = handMadePlan.from;
    const limit = { date: from, safeUntil: addDays(from, 6) };
    const lots = [
      { ...a!, cutOpen: [{ date: from, portionsAfter: 0 }] },
      { ...b!, cutOpen: [{ date: from, portionsAfter: 0 }] },
      {
        ...melon!,
        form: "whole" as const,
        cutOpen: [
          { ...limit, portionsAfter: 0 },
          { ...limit, portionsAfter: 2 },
          { date: from, safeUntil: from, portionsAfter: 1 },
        ],
      },
    ];
    const told = sheetView(english, { ...handMadePlan, lots }).eating.cutOpen;
    expect(told).toEqual([
      expect.stringMatching(
        /: once cut \(about .*\), cover and chill at once\. Eat it by \w{3} \d+ \w+, for food safety\.$/,
      ),
      expect.stringMatching(/for food safety\. There is more than that: freeze the rest/),
      expect.stringMatching(/: once cut \(about .*\), eat it within two hours\./),
      expect.stringMatching(/^Once cut, cover and chill at once: .* and .*\.$/),
    ]);
  });

  it("throws away what is past its safe time, and gives it no place, task, move or meal", () => {
    const past = { ...handMadePlan.lots[5]!, safeUntil: "past" as const, preparation: ["dry well"] };
    const sheet = sheetView(english, { ...handMadePlan, lots: [past] });
    expect(sheet.pressing[0]).toMatch(/^Throw away: /);
    expect([sheet.places, sheet.tasks, sheet.moves, sheet.eating.days, sheet.eating.left]).toEqual([
      [],
      [],
      [],
      [],
      [],
    ]);
  });

  it("ends with the local authority, and says no caution twice", () => {
    expect(view.cautions.at(-1)).toMatch(/local food-safety authority/);
    expect(view.cautions.filter((line) => view.pressing.includes(line))).toEqual([]);
  });

  it("tells an ordinary kitchen's places in Spanish, and one's own as they were written", () => {
    const places = handMadePlan.places.map((place) =>
      place.place === "shelf" ? { ...place, name: "Nonna's shelf" } : place,
    );
    const names = sheetView(spanish, { ...handMadePlan, places }).places.map(({ name }) => name);
    expect(names).toContain("Cajón izquierdo");
    expect(names).toContain("Nonna's shelf");
  });
});

describe("the sheet of any plan", () => {
  it.each([
    ["English", undefined],
    ["Spanish", spanishLanguage],
  ] as const)("is whole in %s: no hole, no missing figure, no lost lot", (_, language) => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom(...unitSystems), (plan, units) => {
        const context = handoutContext(inventedCatalogue, { units, ...(language && { language }) });
        const view = sheetView(context, plan);
        expect(lotsOf(view).sort()).toEqual(plan.lots.map(({ id }) => id).sort());
        const strings: string[] = [];
        JSON.stringify(view, (_key, value) => {
          if (typeof value === "string") strings.push(value);
          return value;
        });
        for (const text of strings) expect(text).not.toMatch(/undefined|NaN|Infinity|\{|\}|∞|^$/);
      }),
      { numRuns: 200 },
    );
  });
});
