import { catalogue } from "@keepwright/catalogue";
import { type Haul, type Lot, ordinaryKitchens, type Plan, planHaul } from "@keepwright/planner";

const lot = (id: string, commodity: string, grams: number, more: Partial<Lot> = {}): Lot => ({
  id,
  commodity,
  grams,
  form: "whole",
  tops: false,
  washed: false,
  extraDays: 0,
  ...more,
});

/** An invented ordinary haul with every kind that the common advice speaks of. */
export const ordinaryHaul: Haul = {
  lots: [
    lot("apples", "apple", 1500),
    lot("oranges", "orange", 1200),
    lot("lemons", "lemon", 300),
    lot("bananas", "banana", 900),
    lot("tomatoes", "tomato", 700),
    lot("avocados", "avocado", 600, { ripeness: "unripe" }),
    lot("mangoes", "mango", 700, { ripeness: "unripe" }),
    lot("peaches", "peach", 600, { ripeness: "unripe" }),
    lot("melon", "cantaloupe", 1200, { ripeness: "turning" }),
    lot("cut-melon", "watermelon", 800, { form: "cut" }),
    lot("strawberries", "strawberry", 450),
    lot("lettuce", "head-lettuce", 500),
    lot("spinach", "spinach", 300),
    lot("kale", "kale", 250),
    lot("broccoli", "broccoli", 500),
    lot("carrots", "carrot", 600, { tops: true }),
    lot("beets", "beet", 500, { tops: true }),
    lot("potatoes", "potato", 2000),
    lot("sweet-potatoes", "sweet-potato", 800),
    lot("squash", "winter-squash", 1200),
    lot("onions", "onion", 1000),
    lot("shallots", "shallot", 200),
    lot("garlic", "garlic", 100),
  ],
};

/** A household and a kitchen that the haul is planned for. */
export interface Setting {
  readonly people: number;
  readonly kitchen: keyof typeof ordinaryKitchens;
}

/** Two to five people, in the ordinary kitchen and in one with a cellar: advice that holds in one of them only is no rule. */
export const settings: readonly Setting[] = (["ordinary", "cellar"] as const).flatMap((kitchen) =>
  [2, 3, 4, 5].map((people) => ({ people, kitchen })),
);

const planned = ({ people, kitchen }: Setting): Plan =>
  planHaul({
    haul: ordinaryHaul,
    kitchen: ordinaryKitchens[kitchen],
    household: { people, portionsPerPersonPerDay: 5, daysAway: [], days: 10 },
    from: "2026-06-13",
    seed: 1,
    catalogue: catalogue(),
  });

let made: readonly Plan[] | undefined;

/** The plans of that haul in every setting, made once. */
export function ordinaryPlans(): readonly Plan[] {
  made ??= settings.map(planned);
  return made;
}
