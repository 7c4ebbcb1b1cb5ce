import type { CheckRequest, PlanRule } from "../../src/check/index.js";
import type { Plan, PlannedLot } from "../../src/problem/plan.js";

/** One way to spoil a valid plan, and the rule that must notice. */
export interface Mutation {
  readonly rule: PlanRule;
  readonly what: string;
  readonly change: (
    plan: Plan,
    request: { -readonly [Key in keyof CheckRequest]: CheckRequest[Key] },
  ) => void;
}

const part = (plan: Plan, id: string): PlannedLot => plan.lots.find((lot) => lot.id === id)!;
const place = (plan: Plan, id: string) => plan.places.find((one) => one.place === id)!;

function moveTo(lot: PlannedLot, to: string, kind: PlannedLot["stays"][number]["placeKind"]): void {
  lot.stays[0]!.place = to;
  lot.stays[0]!.placeKind = kind;
}

/** Moves the only (or first) meal of a part to another day, with its date. */
function eatOn(lot: PlannedLot, day: number): void {
  lot.eatOn[0]!.day = day;
  lot.eatOn[0]!.date = `2026-06-${13 + day}`;
}

const things: readonly Mutation[] = [
  {
    rule: "shape",
    what: "a figure is missing",
    change: (plan) => Reflect.deleteProperty(plan.lots[0]!, "grams"),
  },
  { rule: "household", what: "it is for more people", change: (plan) => void (plan.household.people = 3) },
  { rule: "household", what: "it is for more days", change: (plan) => void (plan.days = 10) },
  {
    rule: "known things",
    what: "a place does not exist",
    change: (plan) => moveTo(part(plan, "apples"), "balcony", "counter"),
  },
  {
    rule: "known things",
    what: "a place is of another kind",
    change: (plan) => moveTo(part(plan, "apples"), "stuck", "counter"),
  },
  { rule: "known things", what: "a lot is left out", change: (plan) => void plan.lots.splice(1, 1) },
  {
    rule: "known things",
    what: "a lot nobody has appears",
    change: (plan) => void (part(plan, "spinach").lot = "kale"),
  },
  {
    rule: "known things",
    what: "a lot becomes another kind",
    change: (plan) => void (part(plan, "spinach").commodity = "kale"),
  },
  { rule: "known things", what: "a place is left out", change: (plan) => void plan.places.pop() },
  {
    rule: "known things",
    what: "it is for another kitchen",
    change: (plan) => void (plan.kitchen = "Another"),
  },
  {
    rule: "part names",
    what: "a part has a wrong name",
    change: (plan) => void (part(plan, "avocados/2").id = "avocados/3"),
  },
];

const amounts: readonly Mutation[] = [
  { rule: "grams", what: "grams are added", change: (plan) => void (part(plan, "carrots").grams += 50) },
  { rule: "grams", what: "grams are lost", change: (plan) => void (part(plan, "carrots").grams -= 1) },
  { rule: "grams", what: "a part is dropped", change: (plan) => void plan.lots.splice(4, 1) },
  {
    rule: "pieces",
    what: "a split cuts a piece",
    change: (plan) => {
      part(plan, "avocados").grams += 51;
      part(plan, "avocados/2").grams -= 51;
    },
  },
  {
    rule: "portions",
    what: "a portion is forgotten",
    change: (plan) => void (part(plan, "cilantro").leftPortions = 0),
  },
  {
    rule: "portions",
    what: "a meal weighs too much",
    change: (plan) => void (part(plan, "apples").eatOn[0]!.grams += 10),
  },
  {
    rule: "portions",
    what: "portions are added",
    change: (plan) => void (part(plan, "apples").eatOn[0]!.portions += 1),
  },
  {
    rule: "state on arrival",
    what: "unripe fruit counts as ripe",
    change: (plan) => void (part(plan, "avocados").ripeness = 1),
  },
  {
    rule: "state on arrival",
    what: "washed leaves count as unwashed",
    change: (plan) => void (part(plan, "spinach").washed = false),
  },
  {
    rule: "state on arrival",
    what: "cut fruit counts as whole",
    change: (plan) => void (part(plan, "melon").form = "whole"),
  },
  {
    rule: "state on arrival",
    what: "leaves grow",
    change: (plan) => void (part(plan, "apples").tops = true),
  },
  {
    rule: "preparation",
    what: "nobody is told to take the leaves off",
    change: (plan) => void (part(plan, "carrots").preparation = []),
  },
];

const stays: readonly Mutation[] = [
  {
    rule: "stays in order",
    what: "a stay is lengthened",
    change: (plan) => void (part(plan, "avocados").stays[0]!.toDay! += 1),
  },
  {
    rule: "stays in order",
    what: "the first stay begins late",
    change: (plan) => void (part(plan, "apples").stays[0]!.fromDay = 1),
  },
  {
    rule: "stays in order",
    what: "the last stay ends",
    change: (plan) => void (part(plan, "apples").stays[0]!.toDay = 4),
  },
  {
    rule: "stays in order",
    what: "a move has no reason",
    change: (plan) => Reflect.deleteProperty(part(plan, "avocados").stays[0]!, "moveWhen"),
  },
  {
    rule: "wrap at hand",
    what: "a wrap is not at hand",
    change: (plan) => void (part(plan, "apples").stays[0]!.wrap = "foil"),
  },
  {
    rule: "wrap suits",
    what: "apples stand in water",
    change: (plan) => void (part(plan, "apples").stays[0]!.wrap = "glass of water"),
  },
  { rule: "vents", what: "a stuck vent is turned", change: (plan) => void (plan.vents[1]!.setting = "open") },
  { rule: "vents", what: "a vent is not set", change: (plan) => void plan.vents.shift() },
  {
    rule: "vents",
    what: "a counter gets a vent",
    change: (plan) => void plan.vents.push({ place: "counter", setting: "open" }),
  },
  {
    rule: "dates",
    what: "a meal has another day's date",
    change: (plan) => void (part(plan, "apples").eatOn[0]!.date = "2026-06-16"),
  },
  {
    rule: "dates",
    what: "a stay has another day's date",
    change: (plan) => void (part(plan, "avocados").stays[1]!.from = "2026-06-13"),
  },
];

const room: readonly Mutation[] = [
  {
    rule: "litres",
    what: "a part is told to be smaller",
    change: (plan) => void (part(plan, "spinach").litres /= 2),
  },
  {
    rule: "litres",
    what: "a place is told to hold less",
    change: (plan) => void (place(plan, "stuck").litresTaken -= 1),
  },
  { rule: "litres", what: "a place grows", change: (plan) => void (place(plan, "stuck").litres += 1) },
  {
    rule: "overflow",
    what: "a drawer is overfilled",
    change: (_, request) => {
      const kitchen = request.kitchen as { places: { id: string; litres: number }[] };
      kitchen.places.find(({ id }) => id === "free")!.litres = 4;
    },
  },
  {
    rule: "overflow",
    what: "it tells of litres over that are not",
    change: (plan) => void plan.overflow.push({ place: "free", litres: 1 }),
  },
];

const eating: readonly Mutation[] = [
  {
    rule: "days away",
    what: "something is eaten while away",
    change: (plan) => eatOn(part(plan, "apples"), 3),
  },
  {
    rule: "days away",
    what: "a seasoning is eaten while away",
    change: (plan) => eatOn(part(plan, "cilantro"), 3),
  },
  { rule: "portions a day", what: "a day brings too much", change: (plan) => eatOn(part(plan, "apples"), 1) },
  {
    rule: "same thing a day",
    what: "all carrots come at once",
    change: (plan) => eatOn(part(plan, "carrots"), 2),
  },
  { rule: "ready to eat", what: "unripe fruit is eaten", change: (plan) => eatOn(part(plan, "avocados"), 1) },
  {
    rule: "ready to eat",
    what: "something is eaten after the planned days",
    change: (plan) => eatOn(part(plan, "avocados"), 9),
  },
  {
    rule: "ready to eat",
    what: "what never gets ready is eaten",
    change: (plan) => void (part(plan, "avocados").readyOnDay = null),
  },
];

const safety: readonly Mutation[] = [
  {
    rule: "cut in the refrigerator",
    what: "cut melon lies on the counter",
    change: (plan) => moveTo(part(plan, "melon"), "counter", "counter"),
  },
  {
    rule: "safety limit",
    what: "cut melon from the counter is eaten",
    change: (plan) => moveTo(part(plan, "melon"), "counter", "counter"),
  },
  {
    rule: "safety limit",
    what: "cut tomato is eaten on the eighth day",
    change: (plan) => eatOn(part(plan, "tomato"), 7),
  },
  {
    rule: "safety limit",
    what: "cut tomato is kept in a warm refrigerator",
    change: (plan, request) => {
      const kitchen = request.kitchen as { places: { id: string; temperature: number }[] };
      kitchen.places.find(({ id }) => id === "shelf")!.temperature = 7;
      eatOn(part(plan, "tomato"), 1);
    },
  },
  {
    rule: "freezing",
    what: "spinach lies in a drawer below its freezing point",
    change: (_, request) => {
      const kitchen = request.kitchen as { places: { id: string; temperature: number }[] };
      kitchen.places.find(({ id }) => id === "free")!.temperature = -0.9;
    },
  },
  {
    rule: "cautions",
    what: "it does not defer to local codes",
    change: (plan) => void (plan.cautions = ["cut-produce"]),
  },
  {
    rule: "cautions",
    what: "it does not caution about cut produce",
    change: (plan) => void (plan.cautions = ["local"]),
  },
];

const figures: readonly Mutation[] = [
  {
    rule: "life",
    what: "the early day is the latest",
    change: (plan) => void (part(plan, "apples").life.early *= 9),
  },
  {
    rule: "life",
    what: "the range is lopsided",
    change: (plan) => void (part(plan, "apples").life.late *= 1.1),
  },
  {
    rule: "chance",
    what: "a chance is played down",
    change: (plan) => void (part(plan, "avocados").eatOn[0]!.chancePastBest = 0),
  },
  {
    rule: "chance",
    what: "what is left is said to be good",
    change: (plan) => void (part(plan, "cilantro").ifLeft!.chancePastBest = 0),
  },
  {
    rule: "waste",
    what: "a part's waste is played down",
    change: (plan) => void (part(plan, "avocados").expectedWaste.value -= 5),
  },
  {
    rule: "waste",
    what: "the whole waste is played down",
    change: (plan) => void (plan.expectedWaste.value -= 5),
  },
  ...(["waste", "qualityLost", "lifeLost", "effort", "overflow", "total"] as const).map(
    (term): Mutation => ({
      rule: "objective",
      what: `the term ${term} is off by a gram`,
      change: (plan) => void (plan.objective[term] += 1),
    }),
  ),
  {
    rule: "objective",
    what: "a wrapping is not counted",
    change: (plan) => void (part(plan, "apples").stays[0]!.wrap = "paper bag"),
  },
];

const replays: readonly Mutation[] = [
  {
    rule: "replayed life",
    what: "a life is a tenth longer than the simulation gives",
    change: (plan) => {
      const { life } = part(plan, "spinach");
      for (const name of ["early", "middle", "late"] as const) life[name] *= 1.1;
    },
  },
  {
    rule: "replayed life",
    what: "the vent is set otherwise",
    change: (plan) => void (plan.vents[0]!.setting = "closed"),
  },
  {
    rule: "replayed life",
    what: "spinach lies bare",
    change: (plan) => void (part(plan, "spinach").stays[0]!.wrap = "none"),
  },
  {
    rule: "replayed ending",
    what: "another ending is named",
    change: (plan) => void (part(plan, "apples").endedBy = "sprouting"),
  },
  {
    rule: "replayed move",
    what: "fruit is moved a day before it is ripe",
    change: (plan) => {
      const [first, second] = part(plan, "avocados").stays;
      first!.toDay! -= 1;
      second!.fromDay -= 1;
    },
  },
  {
    rule: "replayed ripeness",
    what: "fruit is called ready two days early",
    change: (plan) => void (part(plan, "avocados").readyOnDay! -= 2),
  },
  {
    rule: "replayed quality",
    what: "quality is praised",
    change: (plan) => void (part(plan, "cilantro").eatOn[1]!.quality = 1),
  },
  {
    rule: "replayed air",
    what: "ethylene is played down",
    change: (plan) => void (place(plan, "stuck").ethylene /= 2),
  },
  {
    rule: "replayed waste",
    what: "waste is left out everywhere",
    change: (plan) => {
      plan.expectedWaste.value = 0;
      for (const lot of plan.lots) for (const meal of lot.eatOn) meal.chancePastBest = 0;
    },
  },
  {
    rule: "replayed chance",
    what: "chances are those of a longer life",
    change: (plan) => void (part(plan, "avocados/2").eatOn[0]!.chancePastBest = 0),
  },
];

/** Every rule broken at least once. */
export const mutations: readonly Mutation[] = [
  ...things,
  ...amounts,
  ...stays,
  ...room,
  ...eating,
  ...safety,
  ...figures,
  ...replays,
];
