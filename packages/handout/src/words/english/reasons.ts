import type { Messages } from "../message.js";

/** How long a lot lasts, what ends it and why it lies where it does. */
export const reasonsWords = {
  // Lives and reasons
  "life.line": "{name}: {span}.",
  "life.atOnce":
    "Eat within two hours (one hour where it is hotter than 32 °C or 90 °F), and throw the rest away. In a refrigerator at 5 °C (41 °F) or colder this would keep.",
  "life.today": "Eat the same day.",
  "life.safeUntil": "At most until {date}, for food safety; then throw the rest away.",
  "life.past":
    "Throw it away: it was cut or opened too long ago to be eaten safely, even if it still looks good.",
  "life.checkFrom": "Check from {date} on.",
  "reason.lasts": "Worked out for {temperature} and about {humidity} humidity.",
  "reason.ends.senescence": "What sets the limit is ageing.",
  "reason.ends.water": "What sets the limit is drying out: limp once {loss} of the weight is lost.",
  "reason.ends.chilling": "What sets the limit is the cold: harm begins below {threshold}.",
  "reason.ends.decay": "What sets the limit is mould or rot.",
  "reason.ends.over-ripeness": "What sets the limit is getting over-ripe.",
  "reason.ends.sprouting": "What sets the limit is sprouting.",
  "reason.ends.ethylene injury": "What sets the limit is ethylene, the ripening gas, in the air here.",
  "reason.ends.safety": "What sets the limit is food safety: keep no longer, even if all looks fine.",
  "reason.ends.greening":
    "What sets the limit is light: it turns the skin green and bitter. In the dark it keeps far longer.",
  "reason.ends.other": "What sets the limit is {ending}.",
  "reason.slower": "At {temperature} ageing is about {times} times slower than at {room}.",
  "reason.tooCold": "Cold does harm: below {threshold} is too cold (“{place}”: {temperature}).",
  "reason.ripensFirst": "Ripening needs warmth: {temperature} until ripe, about {date}.",
  "reason.ripensInCold":
    "It goes on ripening in the cold, only slowly: {temperature} until ripe, about {date}.",
  "reason.bagRipens": "The closed bag holds in ethylene, the ripening gas, so ripening is quicker.",
  "reason.thenCold": "Once ripe, the cold slows ageing: {temperature} in “{place}”.",
  "reason.neverRipens": "There is no ripening after picking, so waiting brings no sweetness.",
  "reason.lessEthylene":
    "Kept away from ethylene, the ripening gas of other produce: much less here than in “{place}”.",
  "reason.wrapDamp": "The wrap holds damp air: the open air of “{place}” has only about {there} humidity.",
  "reason.damp": "Damp air prevents drying out: about {here} humidity here, {there} in “{place}”.",
  "reason.gives": "Much ethylene, the ripening gas, comes off and would age neighbours.",

  // Short words for what ends a lot
  "ending.senescence": "ageing",
  "ending.water": "drying out",
  "ending.chilling": "harm from cold",
  "ending.decay": "mould or rot",
  "ending.over-ripeness": "getting over-ripe",
  "ending.sprouting": "sprouting",
  "ending.ethylene injury": "harm from ethylene",
  "ending.safety": "food safety",
  "ending.greening": "turning green in light",
} as const satisfies Messages;
