import type { Messages } from "../message.js";

/** A plan carried on: what changed against the plan before, and why. */
export const carryOnWords = {
  "carryOn.title": "The plan carried on, from {from} to {to}",
  "carryOn.changed":
    "{count, plural, one {# thing is not as it was in the plan before; the rest stays.} other {# things are not as they were in the plan before; the rest stays.}}",
  "carryOn.nothing": "Nothing changes: the plan before still holds. Leave everything where it is.",

  "heading.changes": "What changes, and why",
  "heading.staying": "Stays as it was",
  "heading.gone": "Gone",
  "heading.begun": "Begun, and so cut",

  "carryOn.moves": "{name}: move now, from “{from}” to “{to}” ({wrap}). {reasons}",
  "carryOn.rewrap": "{name}: stays in “{from}”, but from now on {wrap}. {reasons}",
  "carryOn.parted": "{name}: from “{from}” to {places}. {reasons}",
  "carryOn.planned": "{name}: move now, as planned, from “{from}” to “{to}” ({wrap}). {reasons}",
  "carryOn.days": "{name}: stays where it is; eat {now} instead of {before}. {reasons}",
  "carryOn.new": "{name}: put into “{to}” ({wrap}). {reasons}",
  "carryOn.newParted": "{name}: put into {places}. {reasons}",
  "carryOn.vent": "Vent of “{place}”: set it to {setting}.",
  "carryOn.stays": "{names}.",
  "carryOn.gone": "{name}: {reason}.",
  "carryOn.takenAsCut":
    "{name}: some has been eaten, and no day of cutting was told. It is taken as cut on {date} and kept covered in the refrigerator since. If it was cut on another day, or lay elsewhere, say so, for example: “cut the melon yesterday”.",
  "carryOn.takenAsCutOut":
    "{name}: some has been eaten, and no day of cutting was told. It is taken as cut on {date}, and this kitchen has no refrigerator for it. If it was cut on another day, or lay in a cold place, say so, for example: “cut the melon yesterday”.",
  "carryOn.cutUndated":
    "{name}: cut, and on which day was not told. It is taken as cut on {date}, the earliest it can have been. If it was cut later, say so, for example: “cut the melon yesterday”.",
  "carryOn.layWarm":
    "{name}: cut on {date}, and where it lay since was not told. It is taken as left at “{place}”, out of the refrigerator, where the plan had it. If it was put in the refrigerator when it was cut, say so, for example: “moved the melon to the fridge yesterday”.",
  "carryOn.cutToday":
    "{name}: cut on {date}. It is taken as put in the refrigerator at once, not left at “{place}”. If it lay out, say so, for example: “left the melon out for 2 hours”.",
  "carryOn.begun":
    "{title}: some has been eaten, so what is left is cut. Cover it, keep it in the refrigerator, and tell the day it was cut: “cut the {name} yesterday”. Until then it is taken for whole.",
  "carryOn.whichIsMeant":
    "Of {name}, what was cut first is meant. If you cannot tell which that is, throw all of it away.",
  "carryOn.onDay": "{date} ({portions})",
  "carryOn.noDay": "on no day",
  "carryOn.setting.open": "open",
  "carryOn.setting.half": "half open",
  "carryOn.setting.closed": "closed",

  "carryOn.gone.eaten": "eaten up",
  "carryOn.gone.thrown out": "thrown out",
  "carryOn.gone.given away": "given away",
  "carryOn.gone.frozen": "frozen",
  "carryOn.taken": "{name}: {amounts}.",
  "carryOn.taken.thrown out": "{grams} thrown out",
  "carryOn.taken.given away": "{grams} given away",
  "carryOn.taken.frozen": "{grams} frozen",

  "carryOn.because.came home": "It came home since.",
  "carryOn.because.usual kind":
    "“{word}” is taken for {name}. If another kind is meant, write that: {kinds}.",
  "carryOn.because.moved by hand": "It was put elsewhere than planned.",
  "carryOn.because.cut since": "It has been cut since.",
  "carryOn.because.ripe sooner": "{count, plural, one {Ripe # day sooner.} other {Ripe # days sooner.}}",
  "carryOn.because.ripe later": "{count, plural, one {Ripe # day later.} other {Ripe # days later.}}",
  "carryOn.because.ends sooner":
    "{count, plural, one {It will be past its best about # day sooner than the plan before had it.} other {It will be past its best about # days sooner than the plan before had it.}}",
  "carryOn.because.keeps longer":
    "{count, plural, one {It keeps about # day longer than the plan before had it.} other {It keeps about # days longer than the plan before had it.}}",
  "carryOn.because.more left":
    "{count, plural, one {# portion more is left than planned.} other {# portions more are left than planned.}}",
  "carryOn.because.less left":
    "{count, plural, one {# portion less is left than planned.} other {# portions less are left than planned.}}",
  "carryOn.because.may not stay": "It may not stay as it lies: see “Take care”.",
  "carryOn.because.room taken": "The room in “{place}” is taken by {names}.",
  "carryOn.because.room gone": "There is too little room left in “{place}”.",
  "carryOn.because.room free": "There is room in “{place}” now.",
  "carryOn.because.beside":
    "{count, plural, one {Beside {names} it would last # day less.} other {Beside {names} it would last # days less.}}",
  "carryOn.because.lasts longer there":
    "{count, plural, one {It lasts about # day longer there.} other {It lasts about # days longer there.}}",
  "carryOn.because.ripens there": "It gets ripe sooner there.",
  "carryOn.because.eats better there": "It eats better from there.",
  "carryOn.because.better for the rest": "The rest is the better for it: worth {grams} of waste.",
  "carryOn.because.others to eat": "On those days these are to be eaten: {names}.",
  "carryOn.because.others gone": "There is more or less of the rest to eat than planned.",
} as const satisfies Messages;
