import type { Messages } from "../message.js";

/** The page for the refrigerator door: short lines, read standing up. */
export const sheetWords = {
  "sheet.title": "Where it all goes",
  "sheet.dates": "{from} to {to} {year}",
  "sheet.throwAway": "Read this first",
  "sheet.eat": "Eat it up by",
  "sheet.moves": "Move later",
  "sheet.prepare": "Get it ready",
  "sheet.places": "Put it here",
  "sheet.cautions": "Take care",
  "sheet.note":
    "Made by Keepwright for: {kitchen}. All dates are likely, not sure. Look, smell and feel. Tips with a star (*) are common practice and have no source.",
  "sheet.page": "Page {page} of {pages}",

  "sheet.written":
    "{count, plural, one {Written: {file} (# page, ordinary text of {size} pt).} other {Written: {file} (# pages, ordinary text of {size} pt).}}",

  "paper.written": "{count, plural, one {Written: {file} (# page).} other {Written: {file} (# pages).}}",

  "sheet.finish": "{names}.",
  "sheet.doubtful": "May not last till then: {names}. Eat it sooner, freeze it or give it away.",
  "sheet.cutOpen": "Once cut, cover and chill at once: {names}.",
  "sheet.cutOpenUntil":
    "{name}: once cut (about {date}), cover and chill at once. Eat it by {last}, for food safety.",
  "sheet.cutOpenTooLong":
    "{name}: once cut (about {date}), cover and chill at once. Eat it by {last}, for food safety. There is more than that: freeze the rest or give it away first.",
  "sheet.cutOpenAtOnce":
    "{name}: once cut (about {date}), eat it within two hours. There is more than that: give the rest away at once or throw it away.",
  "sheet.left": "Left at the end: {names}. Keep it, freeze it or share it.",

  "sheet.move.day": "{date}",
  "sheet.move.ripe": "When ripe, about {date}",
  "sheet.move.sooner": "If ripe before {date}",
  "sheet.move.to": "Move to “{place}”, {wrap}.",
  "sheet.move.rewrap": "Leave in “{place}”, but from now on {wrap}.",
  "sheet.loose": "loose",
  "sheet.later": "From {date}: {names}.",
  "sheet.starred": "{task} *",

  "sheet.vent.open": "Vent: open",
  "sheet.vent.half": "Vent: half open",
  "sheet.vent.closed": "Vent: closed",

  "sheet.ready": "Ready to eat about {date}.",
  "sheet.notReady": "It will not get ripe here.",
  "sheet.until": "Check from {from}; with luck it keeps to {to}.",
  "sheet.until.ready": "Check it from then; with luck it keeps to {to}.",
  "sheet.until.about": "Check from {date}.",
  "sheet.until.today": "Eat it today.",
  "sheet.until.upTo": "Eat it soon: with luck it keeps to {date}.",
  "sheet.until.safe": "Look at it from {date} on. For food safety, keep it until {safe} at most.",
  "sheet.until.safeOnly": "For food safety, keep it until {safe} at most.",
  "sheet.until.long": "Keeps {span}.",

  // Names of the ordinary kitchens and their places, so that they can be told in another language
  "ordinary.An ordinary kitchen": "an ordinary kitchen",
  "ordinary.A small refrigerator without drawers": "a small refrigerator without drawers",
  "ordinary.A kitchen with a cellar": "a kitchen with a cellar",
  "ordinary.A warm kitchen in summer": "a warm kitchen in summer",
  "ordinary.Refrigerator shelves": "Refrigerator shelves",
  "ordinary.Refrigerator door": "Refrigerator door",
  "ordinary.Left drawer": "Left drawer",
  "ordinary.Right drawer": "Right drawer",
  "ordinary.Counter": "Counter",
  "ordinary.Cupboard, upper shelf": "Cupboard, upper shelf",
  "ordinary.Cupboard, lower shelf": "Cupboard, lower shelf",
  "ordinary.Cupboard": "Cupboard",
  "ordinary.Cellar": "Cellar",
  "ordinary.Drawer": "Drawer",
  "ordinary.Upper drawer": "Upper drawer",
  "ordinary.Upper left drawer": "Upper left drawer",
  "ordinary.Upper right drawer": "Upper right drawer",
  "ordinary.Balcony": "Balcony",
} as const satisfies Messages;
