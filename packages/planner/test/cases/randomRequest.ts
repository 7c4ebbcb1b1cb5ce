import { type Commodity, catalogue } from "@keepwright/catalogue";
import { seededRandom } from "@keepwright/quantities";
import { type Kitchen, kitchenSchema, type Place } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import type { PlanRequest } from "../../src/problem/problem.js";

/** How large a request may be. */
export interface Size {
  readonly lots: readonly [number, number];
  readonly places: readonly [number, number];
  readonly wraps: readonly [number, number];
  readonly days: readonly [number, number];
  /** Lots in ripening kinds, at most: they have many more programmes. */
  readonly ripening?: number;
}

/** Written out so that a kind added to the catalogue does not turn every seed into another request. */
const kinds = (
  "apple apricot asparagus avocado banana basil beet blueberry broccoli cabbage cantaloupe carrot celery cilantro cucumber " +
  "eggplant garlic ginger grape green-bean kale kiwifruit leek lemon mango mushroom nectarine onion orange parsley peach pear " +
  "pineapple plum potato radish raspberry romaine salad-leaves spinach strawberry sweet-corn sweet-pepper sweet-potato tomato " +
  "winter-squash zucchini"
)
  .split(" ")
  .map((id) => catalogue().commodities.get(id)!);

/** Draws from a seeded stream. */
export class Draw {
  readonly next: () => number;
  constructor(seed: number) {
    this.next = seededRandom(seed);
  }
  between = (low: number, high: number): number => low + this.next() * (high - low);
  whole = ([low, high]: readonly [number, number]): number =>
    low + Math.floor(this.next() * (high - low + 1));
  chance = (share: number): boolean => this.next() < share;
  one = <Item>(items: readonly Item[]): Item => items[Math.floor(this.next() * items.length)]!;
  some = <Item>(items: readonly Item[], count: number): Item[] => {
    const rest = [...items];
    return Array.from({ length: Math.min(count, rest.length) }, () =>
      rest.splice(Math.floor(this.next() * rest.length), 1),
    ).flat();
  };
}

function randomLot(draw: Draw, commodity: Commodity, index: number) {
  const portion = commodity.household.portion.value;
  const cut = draw.chance(0.12);
  const pieces = draw.chance(0.4) ? draw.whole([1, 6]) : undefined;
  return {
    id: `lot-${index}`,
    commodity: commodity.id,
    grams: Math.round((pieces ?? draw.whole([1, 9])) * portion * draw.between(0.8, 1.6)) + 1,
    ...(pieces !== undefined && { pieces }),
    form: cut ? "cut" : "whole",
    ...(commodity.ripening &&
      !cut &&
      draw.chance(0.6) && { ripeness: draw.one(["unripe", "turning", "ripe", 0.8]) }),
    tops: !cut && commodity.water.transpirationWithTops !== undefined && draw.chance(0.5),
    washed: draw.chance(0.15),
    extraDays: draw.chance(0.2) ? draw.whole([1, 4]) : 0,
  };
}

function randomLots(draw: Draw, size: Size) {
  const lots = [];
  let ripening = 0;
  const count = draw.whole(size.lots);
  while (lots.length < count) {
    const commodity = draw.one(kinds);
    if (commodity.ripening && ++ripening > (size.ripening ?? count)) continue;
    lots.push(randomLot(draw, commodity, lots.length));
  }
  return lots;
}

/** One of the ordinary kitchens with some of its places and wraps, room now and then too small, temperatures moved a little. */
function randomKitchen(draw: Draw, size: Size): Kitchen {
  const base = draw.one(Object.values(ordinaryKitchens));
  const shelf = base.places.find((place) => place.kind === "refrigerator shelf")!;
  const others = draw.some(
    base.places.filter((place) => place !== shelf),
    draw.whole(size.places) - 1,
  );
  const colder = draw.between(-1.5, 1.5);
  const changed = (place: Place): Place => ({
    ...place,
    temperature: place.temperature + (place.refrigerator === undefined ? 0 : colder),
    litres: draw.chance(0.3) ? draw.between(0.5, 3) : place.litres,
  });
  return kitchenSchema.parse({
    ...base,
    refrigerators: base.refrigerators.map((one) => ({ ...one, temperature: one.temperature + colder })),
    places: base.places.filter((place) => place === shelf || others.includes(place)).map(changed),
    wraps: draw.some(base.wraps, draw.whole(size.wraps)),
  });
}

/** A request that a seed stands for: everything in it is invented. */
export function randomRequest(seed: number, size: Size): PlanRequest & { readonly kitchen: Kitchen } {
  const draw = new Draw(seed);
  const days = draw.whole(size.days);
  const lots = randomLots(draw, size);
  const maybeAway = draw.chance(0.3) ? [draw.whole([0, days - 1])] : [];
  return {
    haul: { lots },
    kitchen: randomKitchen(draw, size),
    household: {
      people: draw.whole([1, 4]),
      portionsPerPersonPerDay: draw.one([0.5, 1, 2, 3.5, 5]),
      daysAway: maybeAway,
      days,
    },
    from: "2026-02-26",
    seed,
    catalogue: catalogue(),
  };
}
