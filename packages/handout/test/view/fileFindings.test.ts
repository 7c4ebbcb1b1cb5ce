import { catalogue } from "@keepwright/catalogue";
import { findingLine, handoutContext, spanishLanguage } from "@keepwright/handout";
import {
  carryOn,
  checkKitchen,
  type Finding,
  type FindingValues,
  fileFindingCodes,
  InputError,
  judgeArrangement,
  kitchenFrom,
  ordinaryKitchens,
  type Plan,
  planHaul,
  told,
} from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const english = handoutContext(catalogue());
const spanish = handoutContext(catalogue(), { language: spanishLanguage });

type Code = (typeof fileFindingCodes)[number];

const ordinary = ordinaryKitchens.ordinary;
const kitchen = {
  ...ordinary,
  places: ordinary.places.map((place) => (place.id === "left-drawer" ? { ...place, vent: "open" } : place)),
};
const from = "2026-06-13";
const lot = (id: string, commodity: string, grams: number, more: object = {}) => ({
  id,
  commodity,
  grams,
  ...more,
});
const lots = [
  lot("kale", "kale", 300),
  lot("avocados", "avocado", 400, { pieces: 2 }),
  lot("beets", "beet", 500),
];
const household = (days = 4) => ({ people: 1, portionsPerPersonPerDay: 1, days, daysAway: [] });
const request = (more: object = {}) => ({
  haul: { lots },
  kitchen,
  household: household(),
  from,
  seed: 1,
  catalogue: catalogue(),
  ...more,
});

const judged =
  (arrangement: object, more: object = {}) =>
  () =>
    judgeArrangement({ ...request(more), arrangement: { version: 1, ...arrangement } });
const lies = (more: object, name = "kale", days?: number) =>
  judged(
    { lots: [{ lot: name, place: "counter", ...more }] },
    days === undefined ? {} : { household: household(days) },
  );
const planned = (more: object) => () => planHaul(request(more));

let made: Plan | undefined;
const plan = (): Plan => {
  made ??= planHaul(request());
  return made;
};
const carried =
  (more: object = {}, happened: object = {}) =>
  () =>
    carryOn({
      plan: plan(),
      haul: { lots },
      kitchen,
      catalogue: catalogue(),
      on: "2026-06-14",
      happened: { version: 1, ...happened },
      ...more,
    });
const first = (change: (part: Plan["lots"][number]) => object) => ({
  plan: {
    ...plan(),
    lots: plan().lots.map((part, index) => (index === 0 ? { ...part, ...change(part) } : part)),
  },
});

/** An ordinary kitchen with one thing in it changed. */
const changed = (more: object) => () => kitchenFrom({ ...ordinary, ...more });
const warned = (more: object) => () => {
  const check = checkKitchen({ ...ordinary, ...more });
  throw new InputError(check.ok ? check.warnings : check.problems);
};
const place = (id: string, more: object) => ({
  places: ordinary.places.map((one) => (one.id === id ? { ...one, ...more } : one)),
});
const refrigerator = (more: object) => ({
  refrigerators: ordinary.refrigerators.map((one) => ({ ...one, ...more })),
});
/** What only the command line says. */
const said = (code: Code, values: FindingValues) => () => {
  throw new InputError([{ thing: "", value: "", remedy: "", ...told(code, values) }]);
};

/** What somebody writes that leads to each. */
const situations: Readonly<Record<Code, () => unknown>> = {
  "arrangement empty": judged({}),
  "lies said twice": judged({
    lots: [
      { lot: "kale", place: "counter" },
      { lot: "kale", place: "shelf" },
    ],
  }),
  "shares not whole": lies({ share: 0.5 }),
  "share too small": judged({
    lots: [
      { lot: "kale", place: "counter", share: 0.999 },
      { lot: "kale", place: "shelf", share: 0.001 },
    ],
  }),
  "vent set twice": judged({
    vents: [
      { place: "right-drawer", setting: "open" },
      { place: "right-drawer", setting: "half" },
    ],
  }),
  "place without vent": judged({ vents: [{ place: "counter", setting: "open" }] }),
  "vent always so": judged({ vents: [{ place: "left-drawer", setting: "closed" }] }),
  "moves when ripe in vain": lies({ later: { moveWhen: "ripe", place: "shelf" } }),
  "day beside when ripe": lies({ later: { moveWhen: "ripe", day: 2, place: "shelf" } }, "avocados"),
  "day of move not given": lies({ later: { moveWhen: "day", place: "shelf" } }),
  "day of move too late": lies({ later: { moveWhen: "day", day: 9, place: "shelf" } }),
  "no day to move on": lies({ later: { moveWhen: "day", place: "shelf" } }, "kale", 1),
  "done but not needed": lies({ done: ["twist off leaves"] }),
  "nothing said of lot": carried({}, { lots: [{ lot: "kale" }] }),
  "left beside gone": carried({}, { lots: [{ lot: "kale", left: "none", eaten: "all" }] }),
  "since alone": carried({}, { lots: [{ lot: "kale", since: from }] }),
  "vent cannot be set": carried({}, { vents: [{ place: "counter", setting: "open" }] }),
  "warm refrigerator": warned(refrigerator({ temperature: 7 })),
  "place below freezing": warned(place("shelf", { temperature: -0.5 })),
  "counter unlike its room": warned(place("counter", { temperature: ordinary.room.temperature + 7 })),
  "no refrigerator": warned({
    refrigerators: [],
    places: ordinary.places.filter((one) => one.refrigerator === undefined),
  }),
  "haul empty": planned({ haul: { lots: [] } }),
  "lot id twice": planned({ haul: { lots: [lots[0], lots[0]] } }),
  "kind not in catalogue": planned({ haul: { lots: [lot("a", "zorb", 100)] } }),
  "carried from another kitchen": () => {
    const next = carryOn({
      plan: plan(),
      haul: { lots },
      kitchen,
      catalogue: catalogue(),
      on: "2026-06-14",
      happened: { version: 1, followed: false },
    });
    const where = next.haul.lots[0]!.carried!.place;
    const others = kitchen.places.map((one) => (one.id === where ? { ...one, id: "elsewhere" } : one));
    return planHaul(request({ haul: next.haul, kitchen: { ...kitchen, places: others } }));
  },
  "plan of another kitchen": carried({ kitchen: { ...kitchen, name: "Ours" } }),
  "plan without lot": carried({ haul: { lots: [...lots, lot("leeks", "leek", 300)] } }),
  "plan of other weight": () => carried(first(({ grams }) => ({ grams: grams + 50 })))(),
  "plan of other portions": () =>
    carried(first(({ leftPortions }) => ({ leftPortions: leftPortions + 1 })))(),
  "plan of another kind": () => carried(first(() => ({ commodity: "leek" })))(),
  "file kind of value": changed({ room: "warm" }),
  "file one of": changed(place("shelf", { kind: "loft" })),
  "file too few": changed({ places: [] }),
  "file too many": changed({ places: Array.from({ length: 99 }, () => ordinary.places[0]) }),
  "file too small": planned({ household: { ...household(), people: 0 } }),
  "file not above": changed(place("shelf", { litres: 0 })),
  "file too big": planned({ household: { ...household(), days: 99 } }),
  "file text empty": changed(place("shelf", { id: "" })),
  "file text too long": planned({ haul: { lots: [lot("x".repeat(99), "kale", 100)] } }),
  "file no such field": changed({ loft: 1 }),
  "file form": carried({}, { lots: [{ lot: "kale", ripeness: [] }] }),
  "file day": carried({}, { lots: [{ lot: "kale", since: "yesterday" }] }),
  "file wanted day": planned({
    haul: { lots: [{ ...lot("a", "kale", 100), wanted: { when: "on", day: "someday" } }] },
  }),
  "file other": said("file other", { whole: "row", at: "id", stands: "“a b”", why: "§" }),
  "haul not there": said("haul not there", {}),
  "haul not understood": said("haul not understood", {}),
  "list not there": said("list not there", {}),
  "list not understood": said("list not understood", {}),
  "question about it": said("question about it", { question: "“Zorb”: ?".repeat(5) }),
  "row not data": said("row not data", { text: "“zorb”", why: "§" }),
  "row kitchen not known": said("row kitchen not known", { kitchen: "“loft”", keys: ["ordinary"] }),
  "row files not written": said("row files not written", { fault: "EACCES" }),
};

function findingsOf(act: () => unknown): readonly Finding[] {
  try {
    act();
  } catch (error) {
    if (error instanceof InputError) return error.findings;
    throw error;
  }
  return [];
}

describe("what is wrong with a file, an arrangement or a row", () => {
  it.each(fileFindingCodes)("is told in both languages: %s", (code) => {
    const findings = findingsOf(situations[code]);
    const finding = findings.find((one) => one.told?.code === code);
    expect(finding, JSON.stringify(findings)).toBeDefined();
    const [ours, theirs] = [english, spanish].map((context) => findingLine(context, finding!));
    for (const line of [ours!, theirs!]) {
      expect(line).not.toMatch(/undefined|NaN|\{\w|finding\.|file\.\w/);
      expect(line.length).toBeGreaterThan(20);
    }
    if (code === "question about it") return;
    expect(theirs).not.toBe(ours);
    // What was typed, and the schema's own reason where there are no words of ours for it, stays as it is.
    const ownWords = theirs!.replace(/"[^"]*["…]|“[^”]*”/g, "").replace(/Corrígelo: .*$/, "");
    expect(ownWords).not.toMatch(/\b(?:the|it is|write|name|give|nothing|must)\b/i);
  });

  it("names the thing in English as the planner does", () => {
    const [finding] = findingsOf(situations["file too small"]);
    expect(findingLine(english, finding!)).toBe(`${finding!.thing}: ${finding!.value}. ${finding!.remedy}`);
    expect(findingLine(spanish, finding!)).toBe("hogar people: 0. Escribe 1 o más.");
  });
});
