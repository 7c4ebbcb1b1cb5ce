import { catalogue } from "@keepwright/catalogue";
import { findingLine, handoutContext, problemLines, spanishLanguage } from "@keepwright/handout";
import {
  carryOn,
  type Finding,
  type FindingCode,
  fileFindingCodes,
  findingCodes,
  InputError,
  ordinaryKitchens,
  type Plan,
  planHaul,
  readHappened,
} from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const english = handoutContext(catalogue());
const spanish = handoutContext(catalogue(), { language: spanishLanguage });

const kitchen = ordinaryKitchens.ordinary;
const from = "2026-06-13";
const on = "2026-06-15";
const lot = (id: string, commodity: string, grams: number, more: object = {}) => ({
  id,
  commodity,
  grams,
  form: "whole" as const,
  tops: false,
  washed: false,
  extraDays: 0,
  ...more,
});
const haul = {
  lots: [
    lot("apples", "apple", 900),
    lot("salad", "romaine", 200, { form: "cut" as const, typed: "cut green leaves" }),
    lot("kale", "kale", 300, { typed: "green kale" }),
    lot("few", "spinach", 85),
    lot("bananas", "banana", 600),
  ],
};
const household = { people: 1, portionsPerPersonPerDay: 1, days: 6, daysAway: [] };
const request = { haul, kitchen, household, from, seed: 1, catalogue: catalogue() };
let made: Plan | undefined;
const plan = (): Plan => {
  made ??= planHaul(request);
  return made;
};

const read = (text: string) => () =>
  readHappened(text, { catalogue: catalogue(), lots: haul.lots, places: kitchen.places, on });
const later =
  (happened: object, more: object = {}) =>
  () =>
    carryOn({
      plan: plan(),
      haul,
      kitchen,
      catalogue: catalogue(),
      on,
      happened: { version: 1, ...happened },
      ...more,
    });
const said = (name: string, what: object) => later({ lots: [{ lot: name, ...what }] });
const wanted = (day: string) => () =>
  planHaul({ ...request, haul: { lots: [lot("pears", "pear", 300, { wanted: { when: "by", day } })] } });
const all = haul.lots.map(({ id }) => ({ lot: id, eaten: "all" }));

/** What a household says that leads to each. */
type AccountCode = Exclude<FindingCode, (typeof fileFindingCodes)[number]>;
const ofFiles: ReadonlySet<string> = new Set(fileFindingCodes);
const situations: Readonly<Record<AccountCode, () => unknown>> = {
  "account line not understood": read("kale sings"),
  "account words not understood": read("ate 2 wibbly apples"),
  "account kind not known": read("ate the dog"),
  "account which kind": read("bought 2 plátanos"),
  "account kind not in plan": read("ate 2 pears"),
  "account cut kind not in plan": read("200 g watermelon left"),
  "account without age": read("bought 200 g cut watermelon"),
  "came home without age": later({ cameHome: [{ commodity: "cantaloupe", grams: 300, form: "cut" }] }),
  "account without amount": read("ate some kale"),
  "account of a day to come": read("ate 2 apples for friday"),
  "account of a part": read("moved 2 apples to the counter"),
  "account day not clear": read("cut the kale a few days ago"),
  "account without a known place": read("moved the kale to the moon"),
  "account without hours": read("left the salad out"),
  "account without since": read("left the kale on the counter"),
  "account of what is not so": read("the kale is no longer good"),
  "account of both": read("ate the spinach but not the kale"),
  "account of its look": read("the kale is limp"),
  "no such lot": said("turnips", { seenGood: true }),
  "lot of several kinds": said("green", { seenGood: true }),
  "day not between": said("kale", { place: "counter", since: "2026-05-01" }),
  "day not of the calendar": said("kale", { place: "counter", since: "2026-02-31" }),
  "does not ripen": said("kale", { ripeness: "ripe" }),
  "came cut": said("salad", { cut: on }),
  "cut on which day": said("bananas", { cut: "day not told" }),
  "hours of what is whole": said("apples", { hoursOut: 1 }),
  "warm since when": said("salad", { place: "counter" }),
  "no such wrap": later({ lots: [{ lot: "kale", wrap: "foil" }] }, {}),
  "no such place": said("kale", { place: "moon" }),
  "pieces not counted": said("apples", { eaten: { pieces: 2 } }),
  "more eaten than there was": said("apples", { eaten: { grams: 5000 } }),
  "more thrown out than there was": said("apples", { thrownOut: { grams: 5000 } }),
  "more given away than there was": said("apples", { givenAway: { grams: 5000 } }),
  "more frozen than there was": said("apples", { frozen: { grams: 5000 } }),
  "more left than there was": said("apples", { left: { grams: 5000 } }),
  "more cut left than there was": said("salad", { left: { grams: 5000 } }),
  "eaten by the plan": () => eatenByPlan(),
  "today not of the calendar": later({}, { on: "2026-02-31" }),
  "today before the plan": later({}, { on: "2026-06-01" }),
  "today long after the plan": later({}, { on: "2026-12-01" }),
  "plan over": later({}, { on: "2026-06-30" }),
  "days to plan for": later({}, { days: 0 }),
  "nothing left": later({ lots: all }),
  "wanted on no day": wanted("2026-02-31"),
  "wanted before the first day": wanted("2026-06-01"),
  "wanted too far ahead": wanted("2026-12-01"),
};

/** Something is told of the first lot that the plan had eaten up by some day. */
function eatenByPlan(): unknown {
  const of = haul.lots.map(({ id }) => ({
    id,
    day:
      1 +
      Math.max(
        -1,
        ...plan()
          .lots.filter((part) => part.lot === id && part.leftPortions === 0)
          .flatMap(({ eatOn }) => eatOn.map(({ day }) => day)),
      ),
  }));
  const { id, day } = of.find((one) => one.day > 0 && one.day < 6)!;
  return later({ lots: [{ lot: id, seenGood: true }] }, { on: `2026-06-${13 + day}` })();
}

function findingsOf(act: () => unknown): readonly Finding[] {
  try {
    act();
  } catch (error) {
    if (error instanceof InputError) return error.findings;
    throw error;
  }
  return [];
}

describe("what is wrong with what was said", () => {
  it.each(findingCodes.filter((code): code is AccountCode => !ofFiles.has(code)))(
    "is told in both languages: %s",
    (code) => {
      const finding = findingsOf(situations[code]).find(({ told }) => told?.code === code);
      expect(finding).toBeDefined();
      const [ours, theirs] = [english, spanish].map((context) => findingLine(context, finding!));
      for (const line of [ours!, theirs!]) {
        expect(line).not.toMatch(/undefined|NaN|[{}]|finding\./);
        expect(line.length).toBeGreaterThan(30);
      }
      expect(theirs).not.toBe(ours);
      const ownWords = theirs!.replace(/"[^"]*"|“[^”]*”/g, "");
      expect(ownWords).not.toMatch(/\b(?:the|it is|write|name one|give)\b/i);
    },
  );

  it("is told as the planner says it where it has no code", () => {
    const finding = { thing: "plan", value: "a fault", remedy: "Give the plan as it was printed." };
    expect(findingLine(spanish, finding)).toBe("plan: a fault. Give the plan as it was printed.");
  });

  it("is told line by line, and of nothing else than what somebody gave", () => {
    expect(problemLines(english, new Error("a fault"))).toBeUndefined();
    let lines: string | undefined;
    try {
      read("the dog barked; ate 2 pears")();
    } catch (error) {
      lines = problemLines(spanish, error);
    }
    expect(lines?.split("\n")).toHaveLength(2);
  });

  it.each([english, spanish])(
    "shows in $speaker.tag what can be read, in every example it gives",
    ({ speaker }) => {
      const codes = [
        "account line not understood",
        "account without hours",
        "account of what is not so",
      ] as const;
      const examples = codes.flatMap((code) =>
        speaker
          .say(`finding.${code}`, { line: "" })
          .replace(/^.*: (?=[^:]*$)/u, "")
          .replace(/\.$/, "")
          .split(";"),
      );
      const kinds = ["apple", "spinach", "avocado", "kale", "cantaloupe"];
      const lots = kinds.map((commodity) => lot(commodity, commodity, 500));
      const places = kitchen.places;
      expect(examples.length).toBeGreaterThan(5);
      for (const example of examples)
        expect(() => readHappened(example, { catalogue: catalogue(), lots, places, on })).not.toThrow();
    },
  );
});
