import type { Messages } from "../message.js";

/** How things lie and the plan side by side in few words, and what one change comes to. */
export const besideWords = {
  "beside.range": "{low} to {high}",
  "beside.range.upTo": "up to {high}",
  "beside.range.about": "about {value}",
  "beside.range.little": "next to nothing",
  "beside.portions": "{low} to {high} portions",
  "beside.portions.upTo": "{count, plural, one {up to # portion} other {up to # portions}}",
  "beside.portions.about": "{count, plural, one {about # portion} other {about # portions}}",
  "beside.portions.little": "less than a portion",
  "beside.told": "Waste as you have it: {yours}. With the plan: {plan}.",
  "beside.told.neither": "Next to nothing should go to waste, as you have it or with the plan.",
  "beside.how":
    "{count, plural, one {Carried out # time in the model, with temperatures, ages, luck and late meals drawn by chance.} other {Carried out # times in the model, with temperatures, ages, luck and late meals drawn by chance. In 8 cases of 10 the waste was as told here.}}",
  "beside.move.lot": "Put {name} where the plan has it: “{place}”, {wrap}.",
  "beside.move.lotThen":
    "Put {name} where the plan has it: “{place}”, {wrap}, and later “{next}”, {nextWrap}.",
  "beside.move.lotParts": "Share {name} out over places as the plan does.",
  "beside.move.vent.open": "Open the vent of “{place}”.",
  "beside.move.vent.half": "Set the vent of “{place}” half open.",
  "beside.move.vent.closed": "Close the vent of “{place}”.",
  "beside.move.none": "No single move helps any more.",
  "beside.gain": "Waste falls by {low} to {high} in 8 cases of 10.",
  "beside.gain.upTo": "Waste falls by up to {high} in 8 cases of 10, at times not at all.",
  "beside.gain.little": "Waste hardly changes, but it is eaten better or lasts longer.",
  "beside.from": "From plans made without and with this one change: waste {before} and {after}.",
  "beside.from.range":
    "The range comes from how far plans from other starts lie apart ({noise}) and from what is not known of how long things last ({reach}).",
} as const satisfies Messages;
