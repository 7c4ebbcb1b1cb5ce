import type { Messages } from "../message.js";

/** One haul laid two ways, evening by evening. */
export const twoWaysWords = {
  "twoWays.title": "The same food, two ways",
  "twoWays.lead": "{brought} came home. Evening by evening, this is what becomes of it.",
  "twoWays.rule.refrigerator":
    "Unsorted: everything goes into the refrigerator as it was bought, bare, in the order it was named. The shelves are filled first, then the rest of the refrigerator, then the kitchen. Nobody touches a vent. This rule is declared and has no source: it is not a count of what people do.",
  "twoWays.rule.counter":
    "Unsorted: everything lies on the counter as it was bought, bare, in the order it was named. The counter is filled first, then the rest of the kitchen, then the refrigerator. Nobody touches a vent. This rule is declared and has no source: it is not a count of what people do.",
  "twoWays.rule.as told":
    "As it lies: everything lies as it was told, and what was not told lies where it suits best.",
  "twoWays.same":
    "Both ways, what is cut is kept cold and covered, and the same people eat at the same pace, each thing on the day that suits it best; one portion in {late} is eaten {days} days late. The only difference is where things lie, in what, and what is done to them first.",
  "twoWays.model": "All of this is worked out by the model. It was not measured in a real kitchen.",
  "twoWays.draws":
    "{count, plural, one {The ranges come from carrying both ways out # time in the model.} other {The ranges come from carrying both ways out # times in the model, with temperatures, ages, luck and late meals drawn by chance: in 8 cases of 10 it was between the two figures.}}",
  "twoWays.unsorted": "Unsorted",
  "twoWays.told": "As it lies",
  "twoWays.planned": "Planned",
  "twoWays.eveningOn": "Evening {number}: {date}",
  "twoWays.evening": "Evening {number}",
  "twoWays.afterwards": "Afterwards: what is left over",
  "twoWays.after.short": "after",
  "twoWays.after": "After {days, plural, one {one day} other {# days}}: {date}, what is left over",
  "twoWays.eaten": "Eaten",
  "twoWays.lost": "Lost",
  "twoWays.left": "Still good",
  "twoWays.figure": "{value} ({range})",
  "twoWays.mostly": "mostly {range}",
  "twoWays.state.not ripe": "not ripe yet",
  "twoWays.state.good": "good",
  "twoWays.state.going": "may be gone: {ending}",
  "twoWays.state.past its best": "gone: {ending}",
  "twoWays.state.eaten": "eaten",
  "twoWays.state.mostly eaten": "mostly eaten",
  "twoWays.thing": "Thing",
  "twoWays.heading.lots": "Thing by thing",
  "twoWays.told.evening":
    "{evening}. {one}: {oneEaten} eaten, {oneLost} lost. {other}: {otherEaten} eaten, {otherLost} lost.",
  "twoWays.none": "nothing",
  "twoWays.sum": "Lost in the end, of {brought}. {one}: {oneLost}. {other}: {otherLost}.",
} as const satisfies Messages;
