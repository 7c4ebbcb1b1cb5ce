import type { Messages } from "../message.js";

/** How much of a wished list is worth buying. */
export const buyingWords = {
  "buying.title": "What is worth buying for {from} to {to}",
  "heading.buy": "What to buy",
  "heading.leaveUnbought": "Leave this time",
  "heading.buySaves": "What that saves",
  "heading.buyHow": "How this was worked out",

  "buying.all": "{name}: {amount}, all that you wished for.",
  "buying.less.no room":
    "{name}: {amount} instead of {wished}. For more of it there is no room left where it would keep.",
  "buying.less.too much for the table":
    "{name}: {amount} instead of {wished}. More is not eaten in these days.",
  "buying.less.goes first":
    "{name}: {amount} instead of {wished}. More would be past its best before it is eaten.",
  "buying.none.no room": "{name}, {wished}: there is no room left where it would keep.",
  "buying.none.too much for the table": "{name}, {wished}: there is enough to eat in these days without it.",
  "buying.none.goes first": "{name}, {wished}: it would be past its best before it is eaten.",
  "buying.none.instead": "Nothing on this list is worth buying for this kitchen and these days.",

  "buying.allWorth": "The whole list is worth buying: about {waste} of it should go to waste.",
  "buying.saves":
    "With the whole list about {all} would go to waste, with this one about {bought}: about {gain} less ({low} to {high}).",
  "buying.savesUpTo":
    "With the whole list about {all} would go to waste, with this one about {bought}: about {gain} less (up to {high}).",
  "buying.noSaving":
    "With the whole list about {all} would go to waste, with this one about {bought}: this list saves no waste.",
  "buying.eatLess": "It has a price: about {mass} less is eaten at its best in these days.",
  "buying.eatMore": "And about {mass} more is eaten at its best: less goes off while it waits for its turn.",
  "buying.eatSame": "About as much is eaten at its best in these days as with the whole list.",

  "buying.how.rule":
    "One more piece, bunch or step of {step} is worth buying when more of it should be eaten at its best than go to waste. That is a rule we chose: it has no source.",
  "buying.how.left":
    "What would only be left over at the end, still good, is not bought: it can be bought fresh next time. If you like to have it at home, buy it.",
  "buying.how.range":
    "The figures in brackets hold in about 8 cases of 10: they count how far plans from different starts lie apart (up to {noise} here) and what is not known about how long each kind lasts.",
} as const satisfies Messages;
