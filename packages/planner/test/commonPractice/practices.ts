import type { Plan, PlannedLot } from "@keepwright/planner";

/** One piece of common advice (no source): what it says, and whether a plan follows it. */
export interface Practice {
  readonly name: string;
  readonly follows: (plan: Plan) => boolean;
  /** What the plan does about it follows from a declared rule or the kind's record, not from the simulation. */
  readonly declared?: true;
}

const partsOf = (plan: Plan, lot: string): PlannedLot[] => plan.lots.filter((part) => part.lot === lot);
const placesOf = (plan: Plan, lot: string): string[] =>
  partsOf(plan, lot).flatMap((part) => part.stays.map((stay) => stay.place));
const kindsOf = (plan: Plan, lot: string): string[] =>
  partsOf(plan, lot).flatMap((part) => part.stays.map((stay) => stay.placeKind));

const cold = (kind: string): boolean => kind.startsWith("refrigerator") || kind === "crisper drawer";
const room = (kind: string): boolean => !cold(kind);

/** Never in one place together, at any time of their stays. */
const apart = (one: string, others: readonly string[]) => (plan: Plan) =>
  [one, ...others].every((lot) => partsOf(plan, lot).length > 0) &&
  others.every((other) => !placesOf(plan, one).some((place) => placesOf(plan, other).includes(place)));

const all = (lots: readonly string[], holds: (plan: Plan, lot: string) => boolean) => (plan: Plan) =>
  lots.every((lot) => partsOf(plan, lot).length > 0 && holds(plan, lot));

const always = (test: (kind: string) => boolean) => (plan: Plan, lot: string) =>
  kindsOf(plan, lot).every(test);

/** First stay in the room until ripe; then at least one more, and every later one cold. */
function ripenedThenChilled(plan: Plan, lot: string): boolean {
  return partsOf(plan, lot).every(({ stays }) => {
    const [first, ...later] = stays;
    return (
      first !== undefined &&
      room(first.placeKind) &&
      later.length > 0 &&
      later.every((stay) => cold(stay.placeKind))
    );
  });
}

const prepared = (task: string) => (plan: Plan, lot: string) =>
  partsOf(plan, lot).every((part) => part.preparation.includes(task));

const closedness = { open: 0, half: 1, closed: 2 };
const drawersOf = (plan: Plan, lots: readonly string[]) => {
  const places = new Set(lots.flatMap((lot) => placesOf(plan, lot)));
  return plan.vents.filter((vent) => places.has(vent.place));
};

const greens = ["lettuce", "spinach", "kale"];
const fruit = [
  "apples",
  "oranges",
  "lemons",
  "strawberries",
  "bananas",
  "tomatoes",
  "avocados",
  "mangoes",
  "peaches",
  "melon",
];

/** Greens lie in drawers, some fruit lies in one too, and every drawer with fruit is set drier than every drawer with greens. */
function greensDamperThanFruit(plan: Plan): boolean {
  const inDrawers = greens.every((lot) => kindsOf(plan, lot).every((kind) => kind === "crisper drawer"));
  const driestGreens = Math.min(...drawersOf(plan, greens).map((vent) => closedness[vent.setting]));
  const fruitDrawers = drawersOf(plan, fruit);
  return (
    inDrawers &&
    fruitDrawers.length > 0 &&
    fruitDrawers.every((vent) => closedness[vent.setting] < driestGreens)
  );
}

export const practices: readonly Practice[] = [
  { name: "onions apart from potatoes", follows: apart("onions", ["potatoes"]) },
  { name: "apples apart from citrus", follows: apart("apples", ["oranges", "lemons"]) },
  { name: "apples apart from leafy greens", follows: apart("apples", greens) },
  { name: "apples apart from carrots", follows: apart("apples", ["carrots"]) },
  { name: "leafy greens in the humid drawer and fruit in the vented one", follows: greensDamperThanFruit },
  { name: "whole tomatoes out of the refrigerator", follows: all(["tomatoes"], always(room)) },
  { name: "bananas out of the refrigerator", follows: all(["bananas"], always(room)) },
  ...["potatoes", "sweet-potatoes", "squash", "garlic", "onions", "shallots"].map((lot) => ({
    name: `${lot.replace("-", " ")} in the cool dark place`,
    follows: all(
      [lot],
      always((kind) => kind === "cool dark cupboard" || kind === "cellar"),
    ),
  })),
  ...["avocados", "mangoes", "peaches", "melon"].map((lot) => ({
    name: `firm ${lot} at room temperature until ripe, then refrigerated`,
    follows: all([lot], ripenedThenChilled),
  })),
  {
    name: "leaves twisted off beets and carrots",
    follows: all(["beets", "carrots"], prepared("twist off leaves")),
    declared: true,
  },
  {
    name: "berries kept dry and unwashed",
    follows: all(["strawberries"], prepared("keep dry and unwashed")),
    declared: true,
  },
  { name: "cut fruit always refrigerated", follows: all(["cut-melon"], always(cold)), declared: true },
];
