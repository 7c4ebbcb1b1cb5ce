import type { SimulatedStay } from "@keepwright/physics";

/** A stay written by hand: place, wrap, and whether it lasts until ripe. */
export interface HandStay {
  readonly place: "shelf" | "free" | "stuck" | "counter" | "cupboard";
  readonly wrap: SimulatedStay["wrap"];
  readonly untilRipe?: boolean;
}

/** A part written by hand. Litres: grams over the kind's bulk density, times 1 + the wrap's extra room, summed in the plan. */
export interface HandPart {
  readonly id: string;
  readonly lot: string;
  readonly grams: number;
  readonly stays: readonly HandStay[];
  /** Portions by day. */
  readonly eaten: Readonly<Record<number, number>>;
  readonly left?: number;
}

export const handMadeHaul = {
  lots: [
    { id: "apples", commodity: "apple", grams: 1092, pieces: 6 },
    { id: "spinach", commodity: "spinach", grams: 320, washed: true },
    { id: "carrots", commodity: "carrot", grams: 640, tops: true },
    { id: "avocados", commodity: "avocado", grams: 408, pieces: 4, ripeness: "unripe" },
    { id: "melon", commodity: "cantaloupe", grams: 540, form: "cut" },
    { id: "tomato", commodity: "tomato", grams: 246, form: "cut" },
    { id: "cilantro", commodity: "cilantro", grams: 20 },
  ],
};

/**
 * Six portions a day at the table at most; nobody at home on day 3. 27 portions (seasonings apart) over 8 days at home, a quarter ahead of even:
 * 4.2, so five a day; four of cilantro: one a day.
 */
export const handMadeHousehold = { people: 2, portionsPerPersonPerDay: 3, daysAway: [3], days: 9 };

export const handMadeParts: readonly HandPart[] = [
  {
    id: "apples",
    lot: "apples",
    grams: 1092,
    stays: [{ place: "free", wrap: "none" }],
    eaten: { 2: 2, 4: 4 },
  },
  {
    id: "spinach",
    lot: "spinach",
    grams: 320,
    stays: [{ place: "stuck", wrap: "perforated bag" }],
    eaten: { 0: 1, 1: 2, 4: 1 },
  },
  {
    id: "carrots",
    lot: "carrots",
    grams: 640,
    stays: [{ place: "free", wrap: "none" }],
    eaten: { 1: 2, 2: 3, 5: 3 },
  },
  {
    id: "avocados",
    lot: "avocados",
    grams: 204,
    stays: [
      { place: "counter", wrap: "none", untilRipe: true },
      { place: "shelf", wrap: "none" },
    ],
    eaten: { 8: 2 },
  },
  {
    id: "avocados/2",
    lot: "avocados",
    grams: 204,
    stays: [{ place: "counter", wrap: "paper bag" }],
    eaten: { 7: 2 },
  },
  {
    id: "melon",
    lot: "melon",
    grams: 540,
    stays: [{ place: "shelf", wrap: "lidded box" }],
    eaten: { 0: 2, 1: 1 },
  },
  {
    id: "tomato",
    lot: "tomato",
    grams: 246,
    stays: [{ place: "shelf", wrap: "lidded box" }],
    eaten: { 0: 2 },
  },
  {
    id: "cilantro",
    lot: "cilantro",
    grams: 20,
    stays: [{ place: "shelf", wrap: "glass of water" }],
    eaten: { 0: 1, 2: 1, 4: 1 },
    left: 1,
  },
];
