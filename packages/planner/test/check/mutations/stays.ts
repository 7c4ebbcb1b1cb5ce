import { type Mutation, part, place } from "./mutation.js";

// Where things lie.

export const stays: readonly Mutation[] = [
  {
    rule: "move to somewhere",
    what: "fruit is moved when ripe, but not told where to",
    change: (plan) => {
      part(plan, "apples").stays[0]!.moveWhen = "ripe";
    },
  },
  {
    rule: "stays in order",
    what: "a stay is lengthened",
    change: (plan) => {
      part(plan, "avocados").stays[0]!.toDay! += 1;
    },
  },
  {
    rule: "stays in order",
    what: "the first stay begins late",
    change: (plan) => {
      part(plan, "apples").stays[0]!.fromDay = 1;
    },
  },
  {
    rule: "stays in order",
    what: "the last stay ends",
    change: (plan) => {
      part(plan, "apples").stays[0]!.toDay = 4;
    },
  },
  {
    rule: "stays in order",
    what: "a move has no reason",
    change: (plan) => Reflect.deleteProperty(part(plan, "avocados").stays[0]!, "moveWhen"),
  },
  {
    rule: "wrap at hand",
    what: "a wrap is not at hand",
    change: (plan) => {
      part(plan, "apples").stays[0]!.wrap = "foil";
    },
  },
  {
    rule: "wrap suits",
    what: "apples stand in water",
    change: (plan) => {
      part(plan, "apples").stays[0]!.wrap = "glass of water";
    },
  },
  {
    rule: "wrap suits",
    what: "ripening fruit is shut in",
    change: (plan) => {
      part(plan, "avocados/2").stays[0]!.wrap = "lidded box";
    },
  },
  {
    rule: "wrap suits",
    what: "cut melon lies uncovered",
    change: (plan) => {
      part(plan, "melon").stays[0]!.wrap = "none";
    },
  },
  {
    rule: "vents",
    what: "a stuck vent is turned",
    change: (plan) => {
      plan.vents[1]!.setting = "open";
    },
  },
  {
    rule: "vents",
    what: "a vent is not set",
    change: (plan) => {
      plan.vents.shift();
    },
  },
  {
    rule: "vents",
    what: "a counter gets a vent",
    change: (plan) => {
      plan.vents.push({ place: "counter", setting: "open" });
    },
  },
  {
    rule: "dates",
    what: "a meal has another day's date",
    change: (plan) => {
      part(plan, "apples").eatOn[0]!.date = "2026-06-16";
    },
  },
  {
    rule: "dates",
    what: "a stay has another day's date",
    change: (plan) => {
      part(plan, "avocados").stays[1]!.from = "2026-06-13";
    },
  },
];

export const room: readonly Mutation[] = [
  {
    rule: "litres",
    what: "a part is told to be smaller",
    change: (plan) => {
      part(plan, "spinach").litres /= 2;
    },
  },
  {
    rule: "litres",
    what: "a place is told to hold less",
    change: (plan) => {
      place(plan, "free").litresTaken -= 1;
    },
  },
  {
    rule: "litres",
    what: "a place grows",
    change: (plan) => {
      place(plan, "free").litres += 1;
    },
  },
  {
    rule: "overflow",
    what: "a drawer is overfilled",
    change: (_, request) => {
      const kitchen = request.kitchen as { places: { id: string; litres: number }[] };
      kitchen.places.find(({ id }) => id === "free")!.litres = 2;
    },
  },
  {
    rule: "overflow",
    what: "it tells of litres over that are not",
    change: (plan) => {
      plan.overflow.push({ place: "free", litres: 1 });
    },
  },
];
