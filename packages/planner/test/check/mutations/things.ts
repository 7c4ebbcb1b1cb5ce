import { type Mutation, moveTo, part } from "./mutation.js";

// What a plan names, and its amounts.

export const things: readonly Mutation[] = [
  {
    rule: "shape",
    what: "a figure is missing",
    change: (plan) => Reflect.deleteProperty(plan.lots[0]!, "grams"),
  },
  {
    rule: "household",
    what: "it is for more people",
    change: (plan) => {
      plan.household.people = 3;
    },
  },
  {
    rule: "household",
    what: "it is for more days",
    change: (plan) => {
      plan.days = 10;
    },
  },
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
  {
    rule: "known things",
    what: "a lot is left out",
    change: (plan) => {
      plan.lots.splice(1, 1);
    },
  },
  {
    rule: "known things",
    what: "a lot nobody has appears",
    change: (plan) => {
      part(plan, "spinach").lot = "kale";
    },
  },
  {
    rule: "known things",
    what: "a lot becomes another kind",
    change: (plan) => {
      part(plan, "spinach").commodity = "kale";
    },
  },
  {
    rule: "known things",
    what: "a place is left out",
    change: (plan) => {
      plan.places.pop();
    },
  },
  {
    rule: "known things",
    what: "it is for another kitchen",
    change: (plan) => {
      plan.kitchen = "Another";
    },
  },
  {
    rule: "part names",
    what: "a part has a wrong name",
    change: (plan) => {
      part(plan, "avocados/2").id = "avocados/3";
    },
  },
];

export const amounts: readonly Mutation[] = [
  {
    rule: "grams",
    what: "grams are added",
    change: (plan) => {
      part(plan, "carrots").grams += 50;
    },
  },
  {
    rule: "grams",
    what: "grams are lost",
    change: (plan) => {
      part(plan, "carrots").grams -= 1;
    },
  },
  {
    rule: "grams",
    what: "a part is dropped",
    change: (plan) => {
      plan.lots.splice(4, 1);
    },
  },
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
    change: (plan) => {
      part(plan, "cilantro").leftPortions = 0;
    },
  },
  {
    rule: "portions",
    what: "a meal weighs too much",
    change: (plan) => {
      part(plan, "apples").eatOn[0]!.grams += 10;
    },
  },
  {
    rule: "portions",
    what: "portions are added",
    change: (plan) => {
      part(plan, "apples").eatOn[0]!.portions += 1;
    },
  },
  {
    rule: "state on arrival",
    what: "unripe fruit counts as ripe",
    change: (plan) => {
      part(plan, "avocados").ripeness = 1;
    },
  },
  {
    rule: "state on arrival",
    what: "washed leaves count as unwashed",
    change: (plan) => {
      part(plan, "spinach").washed = false;
    },
  },
  {
    rule: "state on arrival",
    what: "cut fruit counts as whole",
    change: (plan) => {
      part(plan, "melon").form = "whole";
    },
  },
  {
    rule: "state on arrival",
    what: "leaves grow",
    change: (plan) => {
      part(plan, "apples").tops = true;
    },
  },
  {
    rule: "preparation",
    what: "nobody is told to take the leaves off",
    change: (plan) => {
      part(plan, "carrots").preparation = [];
    },
  },
  {
    rule: "preparation",
    what: "somebody is told to dry what is not wet",
    change: (plan) => {
      part(plan, "carrots").preparation.push("dry well");
    },
  },
];
