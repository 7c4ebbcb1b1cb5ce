import type { Messages } from "../message.js";

/** How long a lot lasts, what ends it and why it lies where it does. */
export const reasonsWords = {
  // Lives and reasons
  "life.line": "{name}: {span}.",
  "life.atOnce": "Eat it at once, within two hours; do not keep it.",
  "life.today": "Eat it the same day.",
  "life.checkFrom": "Check from {date} on.",
  "reason.lasts": "Worked out for {temperature} and air about {humidity} humid.",
  "reason.ends.senescence": "What ends it first is ageing.",
  "reason.ends.water": "What ends it first is drying out: with {loss} of its weight lost it is limp.",
  "reason.ends.chilling": "What ends it first is the cold: it is harmed below {threshold}.",
  "reason.ends.decay": "What ends it first is mould or rot.",
  "reason.ends.over-ripeness": "What ends it first is getting over-ripe.",
  "reason.ends.sprouting": "What ends it first is sprouting.",
  "reason.ends.ethylene injury": "What ends it first is ethylene, the ripening gas ({ethylene} here).",
  "reason.ends.safety": "What ends it first is food safety: do not keep it longer, even if it looks fine.",
  "reason.ends.other": "What ends it first is {ending}.",
  "reason.slower": "At {temperature} it ages about {times} times slower than at {room}.",
  "reason.tooCold": "The cold would harm it: it should not lie below {threshold} ({place}: {temperature}).",
  "reason.ripensFirst": "It needs warmth to ripen: it stays at {temperature} until ripe, about {date}.",
  "reason.bagRipens": "The closed bag holds in its own ethylene, the ripening gas, so it ripens sooner.",
  "reason.thenCold": "Once it is ripe the cold slows it down: {temperature} in {place}.",
  "reason.neverRipens": "It does not ripen after picking, so waiting will not make it sweeter.",
  "reason.lessEthylene":
    "It is kept out of ethylene, the ripening gas of other produce: {here} here, {there} in {place}.",
  "reason.wrapDamp": "The wrap holds damp air: the open air in {place} is only about {there} humid.",
  "reason.damp": "Damp air keeps it from drying out: about {here} humid here, {there} in {place}.",
  "reason.gives": "It gives off much ethylene, the ripening gas, which would age its neighbours.",

  // Beside other places and without neighbours
  "why.elsewhere": "In {place} ({wrap}): {span}, ended by {ending}.",
  "why.tooFull": "In {place} ({wrap}): {span}, ended by {ending}; but there is no room.",
  "why.notRipe": "In {place} it would not get ripe.",
  "why.neighbour": "Without {name} in the kitchen it would keep {span} instead of {now}.",

  // Short words for what ends a lot
  "ending.senescence": "ageing",
  "ending.water": "drying out",
  "ending.chilling": "harm from cold",
  "ending.decay": "mould or rot",
  "ending.over-ripeness": "getting over-ripe",
  "ending.sprouting": "sprouting",
  "ending.ethylene injury": "harm from ethylene",
  "ending.safety": "food safety",
} as const satisfies Messages;
