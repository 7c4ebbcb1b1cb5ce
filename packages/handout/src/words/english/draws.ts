import type { Messages } from "../message.js";

/** What becomes of a plan when it is carried out many times over in the model. */
export const drawsWords = {
  "heading.draws": "How sure that is",
  "draws.how":
    "{count, plural, one {The model carried the plan out # time, with temperatures, ages on arrival, the luck of each thing and late meals drawn by chance (seed {seed}).} other {The model carried the plan out # times, each time with other temperatures, other ages on arrival, other luck for each thing, and other meals eaten late (seed {seed}).}}",
  "draws.waste":
    "Waste: {mean} on average. In 8 cases of 10 it was between {low} and {high}, in half of them below {median}.",
  "draws.unsorted":
    "With everything put unsorted in the refrigerator, in the same cases: {mean} on average, in 8 cases of 10 between {low} and {high}.",
  "draws.saved":
    "Case by case, the plan saved {mean} on average (give or take {error}), in 8 cases of 10 between {low} and {high}.",
  "draws.savedOrLost":
    "Case by case, the plan saved {mean} on average (give or take {error}), in 8 cases of 10 between {low} more waste and {high} less.",
  "draws.lost": "Case by case, the plan wasted {mean} more than that on average (give or take {error}).",
  "draws.better": "It wasted less than unsorted in {better} of the cases and more in {worse}.",
  "draws.lot": "{name}: {share} eaten in time (the plan counts on {claimed}).",
  "draws.rest": "Eaten in time in {share} of the cases or more: {names}.",
  "draws.unripe": "{name}: not yet ripe on its day in {share} of the cases.",
  "draws.note":
    "These are chances in the model, not counts from real kitchens. The plan was carried out as written: if you look, and eat first what is going, less is wasted. Food safety limits were kept by the temperatures given for the kitchen, so check them with a thermometer.",
} as const satisfies Messages;
