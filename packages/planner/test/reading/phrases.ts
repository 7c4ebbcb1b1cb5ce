import type { Lot } from "../../src/problem/lot.js";

/** What must be understood of one lot; amounts in grams as our catalogue weighs them are told by unit, see `grams`. */
export type Expected = Partial<Omit<Lot, "grams">> & {
  commodity: string;
  /** Exact grams, for amounts of mass. */
  grams?: number;
  /** Or a count of one of the kind's own units. */
  of?: readonly [count: number, unit: string];
};

const pound = 453.59;

/** Written phrases and the lots in them, in order. */
export const phrases: readonly (readonly [string, ...Expected[]])[] = [
  // Mass
  ["2 lb apples", { commodity: "apple", grams: 907.18 }],
  ["2 lbs of apples", { commodity: "apple", grams: 907.18 }],
  ["1 lb. carrots", { commodity: "carrot", grams: pound }],
  ["2 pounds apples", { commodity: "apple", grams: 907.18 }],
  ["5# potatoes", { commodity: "potato", grams: 2267.96 }],
  ["500 g spinach (washed)", { commodity: "spinach", grams: 500, washed: true }],
  ["500g grapes", { commodity: "grape", grams: 500 }],
  ["1.5 kg potatoes", { commodity: "potato", grams: 1500 }],
  ["1,5 kg potatoes", { commodity: "potato", grams: 1500 }],
  ["1,000 g potatoes", { commodity: "potato", grams: 1000 }],
  ["0,5 kg cherries", { commodity: "cherry", grams: 500 }],
  ["8 oz mushrooms", { commodity: "mushroom", grams: 226.8 }],
  ["1/2 lb ginger", { commodity: "ginger", grams: 226.8 }],
  ["1 1/2 lb green beans", { commodity: "green-bean", grams: 680.39 }],
  ["1½ lb grapes", { commodity: "grape", grams: 680.39 }],
  ["two and a half pounds of peaches", { commodity: "peach", grams: 1133.98 }],
  ["half a pound of cherries", { commodity: "cherry", grams: 226.8 }],
  ["2-3 lb tomatoes", { commodity: "tomato", grams: 1133.98 }],
  ["2 to 3 lb tomatoes", { commodity: "tomato", grams: 1133.98 }],
  ["about 2 lb pears", { commodity: "pear", grams: 907.18 }],
  ["apples 2 lb", { commodity: "apple", grams: 907.18 }],
  ["apples, 2 lb", { commodity: "apple", grams: 907.18 }],
  ["apples - 2 lb", { commodity: "apple", grams: 907.18 }],
  ["2 x 500 g strawberries", { commodity: "strawberry", grams: 1000 }],
  ["two 5 lb bags of potatoes", { commodity: "potato", grams: 4535.92 }],
  ["a 5-lb bag of potatoes", { commodity: "potato", grams: 2267.96 }],
  ["1 bag carrots (2 lb)", { commodity: "carrot", grams: 907.18 }],
  // Counts and the kind's own units
  ["½ bunch cilantro", { commodity: "cilantro", of: [0.5, "bunch"], form: "whole" }],
  ["a dozen lemons", { commodity: "lemon", pieces: 12 }],
  ["half a dozen limes", { commodity: "lime", pieces: 6 }],
  ["2 dozen figs", { commodity: "fig", pieces: 24 }],
  ["a couple of onions", { commodity: "onion", pieces: 2 }],
  ["twenty five figs", { commodity: "fig", pieces: 25 }],
  ["bananas x3", { commodity: "banana", pieces: 3 }],
  ["3x mangoes", { commodity: "mango", pieces: 3 }],
  ["mango × 2", { commodity: "mango", pieces: 2 }],
  ["ripe bananas x 6", { commodity: "banana", pieces: 6, ripeness: "ripe" }],
  ["1 pt cherry tomatoes", { commodity: "cherry-tomato", of: [1, "pint"] }],
  ["2 pints blueberries", { commodity: "blueberry", of: [2, "pint"] }],
  ["1 cup blueberries", { commodity: "blueberry", of: [1, "cup"] }],
  ["4 ears of corn", { commodity: "sweet-corn", of: [4, "ear"], pieces: 4 }],
  ["3 garlic cloves", { commodity: "garlic", of: [3, "clove"], pieces: 3 }],
  ["2 cloves of garlic", { commodity: "garlic", of: [2, "clove"] }],
  ["a head of garlic", { commodity: "garlic", of: [1, "head"] }],
  ["stalk of celery", { commodity: "celery", of: [1, "stalk"] }],
  ["hand of bananas", { commodity: "banana", of: [1, "hand"] }],
  ["2 fennel bulbs", { commodity: "fennel", of: [2, "bulb"] }],
  ["1 knob ginger", { commodity: "ginger", of: [1, "knob"] }],
  ["a handful of basil", { commodity: "basil", of: [1, "handful"] }],
  ["1 small cabbage", { commodity: "cabbage", of: [1, "head small"] }],
  ["1 large watermelon", { commodity: "watermelon", of: [1, "each large"] }],
  ["half a bag of spinach", { commodity: "spinach", of: [0.5, "bag"], form: "whole" }],
  // States
  ["bag of carrots with tops", { commodity: "carrot", of: [1, "bag"], tops: true }],
  ["1 bunch beets tops on", { commodity: "beet", of: [1, "bunch"], tops: true }],
  ["6 large carrots no tops", { commodity: "carrot", of: [6, "each large"], tops: false }],
  ["half a cut cantaloupe", { commodity: "cantaloupe", of: [0.5, "each medium"], form: "cut" }],
  ["half an onion", { commodity: "onion", of: [0.5, "each"], form: "cut" }],
  ["½ a cucumber", { commodity: "cucumber", of: [0.5, "each"], form: "cut" }],
  ["1/2 a head of cauliflower", { commodity: "cauliflower", of: [0.5, "head"], form: "cut" }],
  ["three quarters of a pineapple", { commodity: "pineapple", of: [0.75, "each"], form: "cut" }],
  ["¼ watermelon, cut", { commodity: "watermelon", form: "cut" }],
  ["300 g watermelon", { commodity: "watermelon", grams: 300, form: "cut" }],
  ["2 cut tomatoes", { commodity: "tomato", pieces: 2, form: "cut" }],
  ["1 peeled cucumber", { commodity: "cucumber", form: "cut" }],
  ["leftover half onion", { commodity: "onion", of: [0.5, "each"], form: "cut" }],
  ["green bananas", { commodity: "banana", ripeness: "unripe" }],
  ["6 bananas, green tips", { commodity: "banana", pieces: 6, ripeness: "turning" }],
  ["overripe bananas (4)", { commodity: "banana", pieces: 4, ripeness: "very ripe" }],
  ["mangos (2, very ripe)", { commodity: "mango", pieces: 2, ripeness: "very ripe" }],
  ["2 kg peaches, firm", { commodity: "peach", grams: 2000, ripeness: "unripe" }],
  ["not ripe mangoes x2", { commodity: "mango", pieces: 2, ripeness: "unripe" }],
  ["2 avocados, hard", { commodity: "avocado", pieces: 2, ripeness: "unripe" }],
  ["kale 3 days old", { commodity: "kale", extraDays: 3 }],
  ["3-day-old kale", { commodity: "kale", extraDays: 3 }],
  ["spinach from last week", { commodity: "spinach", extraDays: 7 }],
  // Names that hold words of state or units
  ["1 green pepper", { commodity: "sweet-pepper", pieces: 1 }],
  ["1 bunch green onions", { commodity: "green-onion", of: [1, "bunch"] }],
  ["1 lb green beans", { commodity: "green-bean", grams: pound }],
  ["2 orange peppers", { commodity: "sweet-pepper", pieces: 2 }],
  ["1 head of lettuce", { commodity: "head-lettuce", of: [1, "head"] }],
  ["2 heads of romaine", { commodity: "romaine", of: [2, "head"] }],
  ["2 lbs of fresh organic local gala apples", { commodity: "apple", grams: 907.18 }],
  // Parts of a lot
  [
    "3 avocados, 1 ripe",
    { commodity: "avocado", pieces: 2 },
    { commodity: "avocado", pieces: 1, ripeness: "ripe" },
  ],
  [
    "3 avocados (one ripe)",
    { commodity: "avocado", pieces: 2 },
    { commodity: "avocado", pieces: 1, ripeness: "ripe" },
  ],
  [
    "3 avocados: one ripe, two hard",
    { commodity: "avocado", pieces: 1, ripeness: "ripe" },
    { commodity: "avocado", pieces: 2, ripeness: "unripe" },
  ],
  [
    "avocados: 2 ripe and 1 hard",
    { commodity: "avocado", pieces: 2, ripeness: "ripe" },
    { commodity: "avocado", pieces: 1, ripeness: "unripe" },
  ],
  ["2 avocados, both ripe", { commodity: "avocado", pieces: 2, ripeness: "ripe" }],
  // Several lots
  ["lemons and limes", { commodity: "lemon" }, { commodity: "lime" }],
  [
    "apples 2 lb bananas 3 pears 1 kg",
    { commodity: "apple", grams: 907.18 },
    { commodity: "banana", pieces: 3 },
    { commodity: "pear", grams: 1000 },
  ],
  ["apples: 2 lb; pears: 3", { commodity: "apple", grams: 907.18 }, { commodity: "pear", pieces: 3 }],
  [
    "- 2 apples\n* 3 pears\n• 1 mango\n4) 2 limes",
    { commodity: "apple", pieces: 2 },
    { commodity: "pear", pieces: 3 },
    { commodity: "mango", pieces: 1 },
    { commodity: "lime", pieces: 2 },
  ],
  ["1. 3 lemons\r\n2. 4 limes", { commodity: "lemon", pieces: 3 }, { commodity: "lime", pieces: 4 }],
  [
    "two pounds of apples a bunch of cilantro and three avocados one ripe",
    { commodity: "apple", grams: 907.18 },
    { commodity: "cilantro", of: [1, "bunch"] },
    { commodity: "avocado", pieces: 2 },
    { commodity: "avocado", pieces: 1, ripeness: "ripe" },
  ],
  [
    "i bought 2 lb of apples and 3 pears please",
    { commodity: "apple", grams: 907.18 },
    { commodity: "pear", pieces: 3 },
  ],
  [
    "a bunch of radishes with greens and a bag of washed spinach",
    { commodity: "radish", of: [1, "bunch"], tops: true },
    { commodity: "spinach", of: [1, "bag"], washed: true },
  ],
  [
    "bananas x3; hand of bananas",
    { commodity: "banana", pieces: 3 },
    { commodity: "banana", of: [1, "hand"] },
  ],
  [
    "apples 3, bunch of cilantro",
    { commodity: "apple", pieces: 3 },
    { commodity: "cilantro", of: [1, "bunch"] },
  ],
  // Misspelt
  ["aples, brocolli and tomatos", { commodity: "apple" }, { commodity: "broccoli" }, { commodity: "tomato" }],
  [
    "2 lb of tomatos and a head of brocoli",
    { commodity: "tomato", grams: 907.18 },
    { commodity: "broccoli", of: [1, "head"] },
  ],
  // Spanish
  ["2 kilos de manzanas", { commodity: "apple", grams: 2000 }],
  ["un manojo de cilantro", { commodity: "cilantro", of: [1, "bunch"] }],
  ["media sandía", { commodity: "watermelon", of: [0.5, "each medium"], form: "cut" }],
  [
    "3 aguacates, 1 maduro",
    { commodity: "avocado", pieces: 2 },
    { commodity: "avocado", pieces: 1, ripeness: "ripe" },
  ],
  [
    "medio kilo de fresas y una docena de naranjas",
    { commodity: "strawberry", grams: 500 },
    { commodity: "orange", pieces: 12 },
  ],
  ["zanahorias con hojas", { commodity: "carrot", tops: true }],
  [
    "1 kg fresas, 500g uvas, 2 piñas",
    { commodity: "strawberry", grams: 1000 },
    { commodity: "grape", grams: 500 },
    { commodity: "pineapple", pieces: 2 },
  ],
];
