import type { Messages } from "../message.js";

/** Things to take home besides the page: calendar, labels. */
export const takeHomeWords = {
  // Titles of days in a calendar
  "calendar.name": "What to eat and move",
  "calendar.eat": "Eat today: {names}",
  "calendar.eatMore": "Eat today: {names}, and {count} more",
  "calendar.eatBy": "Check today: {name}",
  "calendar.lastSafeDay": "Last safe day: {name}",
  "calendar.atOnce": "Eat within two hours: {name}",
  "calendar.throwAway": "Throw away, do not eat: {name}",
  "calendar.lastCutDay": "Last safe day for what was cut: {name}",
  "calendar.cutTooLong": "{name}: do not eat what was cut on {cut} after {last}. Throw it away.",
  "calendar.cutAtOnce":
    "{name}: eat what is cut on {cut} within two hours. Give the rest away at once or throw it away.",
  "calendar.left": "Throw away what is left: {name}",
  "calendar.move": "Move {name} to “{to}”",
  "calendar.moveRipe": "If ripe, move {name} to “{to}”",
  "calendar.moveSooner": "Ripe already? Then move {name} to “{to}”",
  "calendar.rewrap": "Wrap {name} in another way",
  "calendar.moveFrom": "Take it out of “{from}”. From now on: {wrap}.",
  "calendar.moveRipeFrom":
    "Take it out of “{from}”. From then on: {wrap}. Is it not ripe yet? Leave it, and look again the next day.",
  "calendar.moveSoonerFrom":
    "If it is ripe now, take it out of “{from}”. From then on: {wrap}. Not ripe yet? Leave it: it is to be eaten up by {date}.",
  "calendar.rewrapFrom": "It stays in “{from}”. From now on: {wrap}.",
  "calendar.meals": "The plan eats it: {dates}.",
  "calendar.daySpan": "each day from {from} to {to}",
  "calendar.cancelled": "No longer: {summary}",

  // Labels for bags and boxes
  "label.title": "Labels",
  "label.name": "{name}, {amount}",
  "label.putAway": "Put away {date}",
  "label.until.quality": "Check from {date}",
  "label.until.cutOpen": "Check from {date}. Once cut on {cut}: eat by {last}, then throw away",
  "label.until.cutOpenAtOnce": "Check from {date}. Once cut on {cut}: eat within two hours, then throw away",
  "label.until.for safety": "Eat by {date}, then throw away",
  "label.until.at once": "Eat within two hours, then throw away",
  // Held together: a line of its own must not say “eat”.
  "label.until.throw away": "Throw away: do\u00a0not\u00a0eat",
  "label.place": "{place}: {wrap}",
  "label.then.day": "From {date}: {place}",
  "label.then.ripe": "When ripe, about {date}: {place}",
  "label.then.sooner": "If ripe before {date}: {place}",
  "label.then.rewrap": "From {date}: {wrap}",
} as const satisfies Messages;
