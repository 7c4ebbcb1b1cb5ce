import { classTopics, unitsOf } from "@keepwright/handout";
import { type KitchenAnswers, ordinaryKitchens, ventSettings, wrapIds } from "@keepwright/planner";
import fc from "fast-check";
import type { PlannerChange, PlannerState } from "../../src/state/plannerState.js";
import { dayRange, peopleRange, portionRange } from "../../src/state/plannerState.js";

/** What is opened where nothing was kept. */
export const otherwise: PlannerState = {
  version: 5,
  text: "3 figs",
  corrections: {},
  meant: {},
  kitchen: "ordinary",
  kitchens: [],
  people: 4,
  days: 10,
  portions: 5,
  away: [],
  units: unitsOf("metric"),
  language: "device",
  region: "device",
  done: [],
  lying: {},
  vents: {},
  chosen: {},
  from: "today",
  before: [],
  missed: [],
  classForm: {},
};
export const how = { otherwise, kinds: new Set(["apple", "fig"]) };

const correction = fc.record(
  {
    commodity: fc.constantFrom("apple", "fig"),
    amount: fc.record({
      value: fc.double({ min: 0.1, max: 200_000, noNaN: true }),
      unit: fc.constantFrom("g", "kg", "lb", "oz", "each", "bunch"),
    }),
    extraDays: fc.integer({ min: 0, max: 60 }),
    ripeness: fc.constantFrom("unripe" as const, "turning" as const, "ripe" as const, "very ripe" as const),
    form: fc.constantFrom("whole" as const, "cut" as const),
    tops: fc.boolean(),
    washed: fc.boolean(),
    leftOut: fc.boolean(),
  },
  { requiredKeys: [] },
);
const units = fc.record({
  temperature: fc.constantFrom("metric" as const, "us" as const),
  mass: fc.constantFrom("metric" as const, "us" as const),
});
const place = fc.string({ minLength: 1 });
const lying = fc.oneof(
  fc.record({ place, wrap: fc.constantFrom(...wrapIds) }),
  fc.constant("as planned" as const),
);
const vents = fc.dictionary(fc.string(), fc.constantFrom(...ventSettings));
const portions = fc.integer({ min: portionRange.least, max: portionRange.most });
const away = fc.uniqueArray(fc.constantFrom("2026-06-13", "2026-06-20"));
const ownKitchen = fc.record({
  key: fc.string().map((key) => `own-${key}`),
  kitchen: fc.constantFrom(...Object.values(ordinaryKitchens)),
  answers: fc.constantFrom<KitchenAnswers>(
    {},
    { refrigerator: "litres", litres: "many", drawers: ["slide", "unknown"], door: false },
    { cold: "reading", coldReading: { typed: "60", unit: "°F" }, wraps: ["foil"], balcony: true },
  ),
});
const ordinary = fc.constantFrom("ordinary", "small", "cellar", "warm");
const language = fc.constantFrom("device" as const, "en" as const, "es" as const);
const region = fc.constantFrom("device" as const, "US" as const, "419" as const);
const people = fc.integer({ min: peopleRange.least, max: peopleRange.most });
const days = fc.integer({ min: dayRange.least, max: dayRange.most });

const classForm = fc.record(
  {
    about: fc.constantFrom("list" as const, "season" as const),
    kinds: fc.string(),
    month: fc.integer({ min: 1, max: 12 }),
    topics: fc.subarray([...classTopics]),
    large: fc.boolean(),
  },
  { requiredKeys: [] },
);

/** Any state that this version saves. */
export const anyState: fc.Arbitrary<PlannerState> = fc.record({
  version: fc.constant(5 as const),
  text: fc.string({ unit: "binary" }),
  corrections: fc.dictionary(fc.string(), correction),
  meant: fc.dictionary(fc.string(), fc.constantFrom("apple", "fig", "left out")),
  kitchen: ordinary,
  people,
  days,
  units,
  kitchens: fc.uniqueArray(ownKitchen, { maxLength: 3, selector: ({ key }) => key }),
  portions,
  away,
  vents,
  language,
  region,
  done: fc.array(fc.string()),
  lying: fc.dictionary(fc.string(), lying),
  chosen: fc.dictionary(fc.string(), lying),
  from: fc.constantFrom("today", "2026-06-13", "2026-07-01"),
  before: fc.array(fc.record({ day: fc.constantFrom("2026-06-14", "2026-06-15"), text: fc.string() }), {
    maxLength: 3,
  }),
  missed: fc.array(fc.string()),
  classForm,
});

const words = fc.constantFrom("", "2 kg apples", "2 kg apples\n3 figs", "3 fi", "3 figs", "zorbles 🥦");
/** Anything the page can change, with texts that are often alike. */
export const anyChange: fc.Arbitrary<PlannerChange> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record(
      {
        change: fc.constant("text" as const),
        text: fc.oneof(words, fc.string()),
        on: fc.constantFrom("2026-06-13", "2026-06-14"),
      },
      { requiredKeys: ["change", "text"] },
    ),
  },
  fc.record({ change: fc.constant("correct" as const), key: fc.constantFrom("3 figs#0", "x#1"), correction }),
  fc.record({ change: fc.constant("as read" as const), key: fc.constantFrom("3 figs#0", "x#1") }),
  fc.record({
    change: fc.constant("correct" as const),
    key: fc.constant("x#1"),
    correction,
    meant: fc.record({ word: fc.constantFrom("x", "y"), means: fc.constantFrom("apple", "left out") }),
  }),
  fc.record({ change: fc.constant("forget word" as const), word: fc.constantFrom("x", "y") }),
  fc.record({ change: fc.constant("people" as const), people }),
  fc.record({ change: fc.constant("days" as const), days }),
  fc.record({ change: fc.constant("kitchen" as const), kitchen: ordinary }),
  fc.record({ change: fc.constant("units" as const), units }),
  fc.record({ change: fc.constant("language" as const), language }),
  fc.record({ change: fc.constant("region" as const), region }),
  fc.record({
    change: fc.constant("lying" as const),
    key: fc.constant("3 figs#0"),
    at: fc.option(lying, { nil: undefined }),
  }),
  fc.record({
    change: fc.constant("chosen" as const),
    key: fc.constant("3 figs#0"),
    at: fc.option(lying, { nil: undefined }),
  }),
  fc.record({ change: fc.constant("done" as const), tasks: fc.array(fc.string()), done: fc.boolean() }),
  fc.record({ change: fc.constant("portions" as const), portions }),
  fc.record({ change: fc.constant("class" as const), form: classForm }),
  fc.record({ change: fc.constant("away" as const), away }),
  fc.record({ change: fc.constant("own kitchen" as const), own: ownKitchen }),
  fc.record({ change: fc.constant("forget kitchen" as const), key: fc.constantFrom("own-", "own-a") }),
  fc.constant({ change: "all lying" as const, lying: {}, vents: {} }),
  fc.record({
    change: fc.constant("vent" as const),
    place,
    setting: fc.option(fc.constantFrom(...ventSettings), { nil: undefined }),
  }),
  fc.constant({ change: "from" as const, from: "2026-06-14" }),
  fc.record({ change: fc.constant("missed" as const), keys: fc.array(fc.string()), missed: fc.boolean() }),
  fc.constant({ change: "clear" as const }),
  fc.constant({ change: "open example" as const, example: otherwise }),
);
