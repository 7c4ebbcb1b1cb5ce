import type { Messages } from "../message.js";

/** What one change would save. */
export const improveWords = {
  "improve.title": "What would help most, from {from} to {to}",
  "improve.asItIs": "Expected waste as it is, with the best plan found: {waste}.",
  "improve.littleWasted":
    "Next to nothing should go to waste as it is (less than {least}): no change can save more than that.",
  "heading.helps": "What would help most",
  "heading.helpsLittle": "No sure saving",
  "heading.improveHow": "How this was worked out",
  "improve.noneMatters": "None of the changes tried matters for this haul.",
  "improve.gain": "{change}: about {gain} less waste ({low} to {high}).",
  "improve.gainUpTo": "{change}: about {gain} less waste (from next to nothing to {high}).",
  "improve.gainFewer":
    "{change}: about {gain} less waste ({low} to {high}), and about {eaten} less to eat at its best.",
  "improve.worthBuying": "{change}: about {gain} less waste, but about {eaten} less to eat at its best.",
  "improve.nothingToLeave": "Buy one thing less: nothing here is wasted more than it is eaten.",
  "improve.mayGain": "{change}: perhaps {gain} less waste, perhaps none.",
  "improve.worse": "{change}: about {loss} more waste.",
  "improve.noGain": "{change}.",

  "improve.do.temperature": "Set the refrigerator to {to} instead of {from}",
  "improve.do.temperatureOf": "Set the refrigerator “{name}” to {to} instead of {from}",
  "improve.do.vent.open": "Open the vent of “{place}”",
  "improve.do.vent.half": "Set the vent of “{place}” half open",
  "improve.do.vent.closed": "Close the vent of “{place}”",
  "improve.do.lidded boxes at hand": "Have boxes with lids at hand",
  "improve.do.paper bags at hand": "Have paper bags at hand",
  "improve.do.drawer": "Put one more drawer with a vent, {litres}, on the refrigerator shelf",
  "improve.do.drawerOf":
    "Put one more drawer with a vent, {litres}, on the shelf of the refrigerator “{name}”",
  "improve.do.topped": "Have the leaves taken off in the shop: {names}",
  "improve.do.portion": "Eat one portion more a day each ({to} instead of {from})",
  "improve.do.twice": "Shop twice, and buy this only on {date}: {names}",
  "improve.do.twice.mass": "{mass} of {name}",
  "improve.do.twice.pieces": "{pieces} {name}",
  "improve.do.lot": "Buy one thing less, best of all: {name}, {amount}",

  "improve.how.one":
    "Each change was tried by itself, with a plan of its own. Savings do not add up: after one of them the others save less or more.",
  "improve.how.range":
    "The figures in brackets hold in about 8 cases of 10: they count how far plans from different starts lie apart (up to {noise} here) and what is not known about how long each kind lasts.",
  "improve.how.rule":
    "A change counts when it saves at least {least} and even the low end of its range saves something.",
  "improve.how.fewer":
    "What is not bought is not eaten either. Buying one thing less counts only where more of it would be wasted than eaten at its best.",
  "improve.how.twice":
    "Shopping twice was worked out as two plans, one after the other. What is left of the first goes into the second about as old as it is by then.",
} as const satisfies Messages;
