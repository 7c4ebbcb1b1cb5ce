import { type Mutation, moveTo, part, place } from "./mutation.js";

// What the plan tells, against itself and against the simulation.

export const figures: readonly Mutation[] = [
  {
    rule: "life",
    what: "the early day is the latest",
    change: (plan) => {
      part(plan, "apples").life.early *= 9;
    },
  },
  {
    rule: "life",
    what: "the range is lopsided",
    change: (plan) => {
      part(plan, "apples").life.late *= 1.1;
    },
  },
  {
    rule: "safety limit",
    what: "cut melon is said to keep past its safe time",
    change: (plan) => {
      const { life } = part(plan, "melon");
      life.late += 2;
    },
  },
  {
    rule: "safety limit",
    what: "cut melon may be eaten a day too late",
    change: (plan) => {
      part(plan, "melon").safeUntil = "2026-06-20";
    },
  },
  {
    rule: "safety limit",
    what: "the last safe day is left out",
    change: (plan) => Reflect.deleteProperty(part(plan, "melon"), "safeUntil"),
  },
  {
    rule: "chance",
    what: "a chance is played down",
    change: (plan) => {
      part(plan, "avocados").eatOn[0]!.chancePastBest = 0;
    },
  },
  {
    rule: "chance",
    what: "what is left is said to be good",
    change: (plan) => {
      part(plan, "cilantro").ifLeft!.chancePastBest = 0;
    },
  },
  {
    rule: "waste",
    what: "a part's waste is played down",
    change: (plan) => {
      part(plan, "avocados").expectedWaste.value -= 5;
    },
  },
  {
    rule: "waste",
    what: "the whole waste is played down",
    change: (plan) => {
      plan.expectedWaste.value -= 5;
    },
  },
  ...(["waste", "qualityLost", "lifeLost", "effort", "overflow", "total"] as const).map(
    (term): Mutation => ({
      rule: "objective",
      what: `the term ${term} is off by a gram`,
      change: (plan) => {
        plan.objective[term] += 1;
      },
    }),
  ),
  {
    rule: "objective",
    what: "a wrapping is not counted",
    change: (plan) => {
      part(plan, "apples").stays[0]!.wrap = "paper bag";
    },
  },
];

export const replays: readonly Mutation[] = [
  {
    rule: "replayed spread",
    what: "a life is told to be surer than it is",
    change: (plan) => {
      const { life } = part(plan, "apples");
      life.early = life.middle / 1.05;
      life.late = life.middle * 1.05;
    },
  },
  {
    rule: "replayed life",
    what: "a life is a tenth longer than the simulation gives",
    change: (plan) => {
      const { life } = part(plan, "spinach");
      for (const name of ["early", "middle", "late"] as const) life[name] *= 1.1;
    },
  },
  {
    rule: "replayed air",
    what: "the vent is set otherwise",
    change: (plan) => {
      plan.vents[0]!.setting = "closed";
    },
  },
  {
    rule: "replayed life",
    what: "apples lie on the counter instead",
    change: (plan) => moveTo(part(plan, "apples"), "counter", "counter"),
  },
  {
    rule: "replayed ending",
    what: "another ending is named",
    change: (plan) => {
      part(plan, "apples").endedBy = "sprouting";
    },
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
    change: (plan) => {
      part(plan, "avocados").readyOnDay! -= 2;
    },
  },
  {
    rule: "replayed quality",
    what: "quality is praised",
    change: (plan) => {
      part(plan, "cilantro").eatOn[1]!.quality = 1;
    },
  },
  {
    rule: "replayed air",
    what: "ethylene is played down",
    change: (plan) => {
      place(plan, "free").ethylene /= 2;
    },
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
    change: (plan) => {
      part(plan, "avocados/2").eatOn[0]!.chancePastBest = 0;
    },
  },
];
