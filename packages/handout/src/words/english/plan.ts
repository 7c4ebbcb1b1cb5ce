import type { Messages } from "../message.js";

/** A plan: headings, places, what to do, moves, eating and waste. */
export const planWords = {
  // Title and summary of a plan
  "plan.title": "Where everything goes, from {from} to {to}",
  "plan.household":
    "{count, plural, one {For # person eating about {portions} portions of fruit and vegetables a day.} other {For # people, each eating about {portions} portions of fruit and vegetables a day.}}",
  "plan.kitchen": "Kitchen: {kitchen}.",
  "plan.ordinaryKitchen":
    "No kitchen was given, so this plan is for {kitchen}. Yours may be warmer, colder or smaller.",
  "plan.away": "Nobody eats at home on {dates}.",

  // Headings
  "heading.understood": "What was understood",
  "heading.questions": "Please check",
  "heading.kitchen": "The kitchen this is worked out for",
  "heading.throwAway": "Throw away first",
  "heading.prepare": "Do this first",
  "heading.leave": "Leave these as they are for now",
  "heading.places": "Where each thing goes",
  "heading.moves": "Move later",
  "heading.eat": "Eat in this order",
  "heading.lives": "How long each will last, and why",
  "heading.waste": "What this is worth",
  "heading.cautions": "Take care",
  "heading.sources": "Where the figures come from",
  "heading.ripe": "How to tell that it is ready",
  "heading.going": "Going: eat it now",
  "heading.discard": "Throw it away when",
  "heading.save": "Too much? Save it",
  "heading.season": "In season",
  "heading.belongs": "Where it belongs",
  "heading.lasts": "How long, and why",
  "heading.elsewhere": "In each sort of place by itself",

  // Places
  "place.air": "{temperature}, about {humidity} humidity",
  "place.line": "{name}: {air}; {room}.",
  "place.lineWithSetting": "{name}: {air}; {room}. {setting}",
  "place.room": "{taken} of {litres} taken",
  "place.empty": "Nothing goes in these this time: {places}.",
  "place.quoted": "“{place}”",
  "place.kind.refrigerator shelf": "refrigerator shelf",
  "place.kind.refrigerator door": "refrigerator door",
  "place.kind.crisper drawer": "crisper drawer",
  "place.kind.counter": "counter",
  "place.kind.cool dark cupboard": "cool dark cupboard",
  "place.kind.cellar": "cellar",
  "vent.open": "Set the vent open.",
  "vent.half": "Set the vent half open.",
  "vent.closed": "Set the vent closed.",
  "vent.choose": "Its vent can be set.",
  entry: "{name}, {amount}: {wrap}",
  "entry.sooner": "{name}, {amount}: {wrap} (if ripe before {date})",
  "entry.from": "{name}, {amount}: {wrap} (from {date})",
  "wrap.none": "loose, no wrap",
  "wrap.paper bag": "in a paper bag, folded shut",
  "wrap.perforated bag": "in a bag with holes",
  "wrap.closed film bag": "in a closed plastic bag",
  "wrap.damp towel": "wrapped in a damp towel",
  "wrap.beeswax cloth": "wrapped in beeswax cloth",
  "wrap.foil": "wrapped in foil",
  "wrap.lidded box": "in a box with a lid",
  "wrap.glass of water": "standing in a glass of water",

  "wrapName.paper bag": "paper bags",
  "wrapName.perforated bag": "bags with holes",
  "wrapName.closed film bag": "plastic bags that close",
  "wrapName.damp towel": "towels to dampen",
  "wrapName.beeswax cloth": "beeswax cloths",
  "wrapName.foil": "foil",
  "wrapName.lidded box": "boxes with lids",
  "wrapName.glass of water": "glasses for water",

  // Names of lots
  "lot.apart": "{name} ({told})",
  "lot.apartBoth": "{first}, {next}",
  "lot.of": "of {date}",
  "lot.which": "lot {number} of {all}",
  "lot.part": "part {part} of {parts}",
  "lot.cut": "{name}, cut",
  "lot.tops": "{name} with leaves on",
  "lot.now.unripe": "{name}, unripe",
  "lot.washed": "{name}, washed",
  "lot.now.turning": "{name}, half ripe",
  "lot.now.nearly ripe": "{name}, nearly ripe",
  "lot.now.ripe": "{name}, ripe",
  "lot.now.very ripe": "{name}, very ripe",
  "lot.came.unripe": "came unripe",
  "lot.was.unripe": "unripe on {date}",
  "lot.came.nearly ripe": "came nearly ripe",
  "lot.was.nearly ripe": "nearly ripe on {date}",
  "lot.came.ripe": "came ripe",
  "lot.was.ripe": "ripe on {date}",
  "lot.came.very ripe": "came very ripe",
  "lot.was.very ripe": "very ripe on {date}",
  "lot.came.turning": "came half ripe",
  "lot.was.turning": "half ripe on {date}",

  // Preparation: what, then why
  "prepare.line": "{names}: {task} {why}",
  "prepare.practice": "{names}: {task} {why} *",
  "prepare.practiceNote": "* Common practice, no source.",
  "prepare.what": "{names}: {task}",
  "prepare.whyPractice": "{why} Common practice, no source.",
  "prepare.do.keep dry and unwashed": "keep dry and do not wash yet.",
  "prepare.do.twist off leaves": "twist off the leaves.",
  "prepare.do.trim stem ends": "trim the ends of the stems.",
  "prepare.do.remove bands and bruised leaves": "take off bands and any bruised leaves.",
  "prepare.do.dry well": "dry well before putting away.",
  "prepare.do.keep husk on": "leave the husk on.",
  "prepare.do.keep in the dark": "keep in the dark.",
  "prepare.do.cure first": "let the skin dry and harden before storing.",
  "prepare.do.sort out damaged pieces": "pick out damaged pieces and eat those first.",
  "prepare.do.wrap crown": "wrap the crown.",
  "prepare.do.keep on the vine": "leave on the vine those that came on it.",
  "prepare.do.wash just before use": "wash just before eating, not now.",
  "prepare.do.leave whole": "leave whole until needed.",
  "prepare.do.break up bunch": "part the bunch.",
  "prepare.do.remove from sealed bag": "take out of the sealed bag.",
  "prepare.why.keep dry and unwashed": "Water on the skin lets mould start.",
  "prepare.why.twist off leaves": "Leaves keep drawing water out of the root.",
  "prepare.why.trim stem ends": "A fresh cut lets the stem take up water.",
  "prepare.why.remove bands and bruised leaves": "Pressed and bruised parts rot first and spread it.",
  "prepare.why.dry well": "Water left on the surface lets rot start.",
  "prepare.why.keep husk on": "The husk keeps the inside from drying out.",
  "prepare.why.keep in the dark": "Light makes green, bitter patches.",
  "prepare.why.light": "Life is longer out of the light.",
  "prepare.why.cure first": "Hard, dry skin heals small cuts and keeps rot out.",
  "prepare.why.sort out damaged pieces": "One that rots spoils those that touch it.",
  "prepare.why.wrap crown": "Ripening gas leaves at the crown.",
  "prepare.why.keep on the vine": "Every place where the stem is torn off is a small wound.",
  "prepare.why.wash just before use": "Water left on the surface lets rot start.",
  "prepare.why.leave whole": "Cut sides dry out and rot sooner.",
  "prepare.why.break up bunch": "Air can reach each stem, and bad ones come out.",
  "prepare.why.remove from sealed bag": "Trapped damp lets rot start.",

  // Moves
  "move.day": "{date}. {name}: move from “{from}” to “{to}” ({wrap}).",
  "move.ripe": "When ripe, about {date}. {name}: move from “{from}” to “{to}” ({wrap}).",
  "move.sooner": "If ripe before {date}. {name}: move from “{from}” to “{to}” ({wrap}).",
  "move.rewrap": "{date}. {name}: same place, “{from}”, but from now on {wrap}.",
  "move.none": "Nothing needs to be moved.",

  // Eating
  "eat.day": "{date}: {list}",
  "eat.away": "{date}: nobody at home",
  "eat.nothing": "{date}: nothing planned",
  "eat.entryShort": "{name}: {portions}",
  "eat.entry": "{count, plural, one {{name} (# portion)} other {{name} (# portions)}}",
  "eat.entryDoubtful":
    "{count, plural, one {{name} (# portion; may not last: eat sooner, freeze, or give away)} other {{name} (# portions; may not last: eat sooner, freeze, or give away)}}",
  "eat.throwAway":
    "{count, plural, one {Throw away what is left of {name} after {date} (# portion).} other {Throw away what is left of {name} after {date} (# portions).}}",
  "eat.left":
    "{count, plural, one {Still there at the end: {name} (# portion).} other {Still there at the end: {name} (# portions).}}",
  "eat.cutOpen":
    "{name}: eaten over several days, from {date} on. Once it is cut, cover what is left and put it in the refrigerator at once.",
  "eat.cutOpenOften":
    "{name}: each is eaten over several days, begun on {dates}. Once one is cut, cover what is left and put it in the refrigerator at once.",
  "eat.cutOpenUntil":
    "{name}: eaten over several days, from {date} on. Once it is cut, cover what is left and put it in the refrigerator at once. For food safety eat it by {last}.",
  "eat.cutOpenTooLong":
    "{count, plural, one {{name}: eaten over several days, from {date} on. Once it is cut, cover what is left and put it in the refrigerator at once. For food safety eat it by {last}: # portion is more than can be eaten by then. Freeze it or give it away before.} other {{name}: eaten over several days, from {date} on. Once it is cut, cover what is left and put it in the refrigerator at once. For food safety eat it by {last}: # portions are more than can be eaten by then. Freeze them or give them away before.}}",
  "eat.cutOpenAtOnce":
    "{count, plural, one {{name}: cut on {date}. No place in this kitchen keeps it safe for longer than hours once it is cut, so eat it within two hours. # portion is more than can be eaten that day: give it away at once or throw it away.} other {{name}: cut on {date}. No place in this kitchen keeps it safe for longer than hours once it is cut, so eat it within two hours. # portions are more than can be eaten that day: give them away at once or throw them away.}}",
  "eat.ready": "{name}: ready to eat about {date}.",
  "eat.notReady": "{name}: no ripening in this place.",

  // Waste
  "waste.both":
    "Expected waste with this plan: {plan}. With everything put unsorted in the refrigerator: {unsorted}.",
  "waste.none":
    "Next to nothing should go to waste with this plan. With everything put unsorted in the refrigerator: {unsorted}.",
  "waste.equal":
    "This plan and putting everything unsorted in the refrigerator should waste about the same: {plan}.",
  "waste.neither":
    "Next to nothing should go to waste, with this plan or with everything unsorted in the refrigerator: it is eaten soon enough.",
  "waste.worse":
    "Expected waste with this plan: {plan}. With everything put unsorted in the refrigerator it would be less: {unsorted}. The plan gives that up for better eating.",
  "waste.worseAll":
    "Expected waste with this plan: {plan}. Everything unsorted in the refrigerator would do better here: {unsorted}.",
  "waste.alone": "Expected waste with this plan: {plan}.",
  "waste.note": "These are averages worked out from the model, for edible weight. A single week may differ.",
} as const satisfies Messages;
