import { eatOn, type Mutation, moveTo, part } from "./mutation.js";

// What is eaten when, and safely.

export const eating: readonly Mutation[] = [
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
    change: (plan) => {
      part(plan, "avocados").readyOnDay = null;
    },
  },
];

export const safety: readonly Mutation[] = [
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
    rule: "chance",
    what: "cut tomato left after its safe time is said to be good",
    change: (plan) => {
      part(plan, "tomato").ifLeft!.chancePastBest = 0.2;
    },
  },
  {
    rule: "freezing",
    what: "spinach lies in a drawer below its freezing point",
    change: (_, request) => {
      const kitchen = request.kitchen as { places: { id: string; temperature: number }[] };
      kitchen.places.find(({ id }) => id === "stuck")!.temperature = -0.9;
    },
  },
  {
    rule: "cautions",
    what: "it does not defer to local codes",
    change: (plan) => {
      plan.cautions = ["cut-produce"];
    },
  },
  {
    rule: "cautions",
    what: "it does not caution about cut produce",
    change: (plan) => {
      plan.cautions = ["local"];
    },
  },
];
