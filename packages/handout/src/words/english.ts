import type { Messages } from "./message.js";

/**
 * Every word Keepwright says in English. A sentence is always whole: what changes stands in {braces}, and nothing is
 * built by joining halves, so that a translator may put the parts in the order the other language wants.
 * An entry with `one` and `other` is chosen by its {count}. Words are plain; ethylene is explained where it is named.
 */
export const english = {
  // Amounts
  "amount.pieces": "{pieces} (about {mass})",
  "amount.mass": "about {mass}",
  "amount.quarts": "{value} qt",
  "amount.litres": "{value} L",
  "amount.ethylene": "{value} µL/L",
  "amount.ethylene.little": "less than {value} µL/L",

  // Spans of time, never finer than the biology allows
  "span.none": "less than a day",
  "span.days.one": "about a day",
  "span.days.upTo": { one: "up to {count} day", other: "up to {count} days" },
  "span.days.about": "about {days} days",
  "span.days": "{low} to {high} days",
  "span.daysToWeeks": { one: "{low} days to a week", other: "{low} days to {count} weeks" },
  "span.dayToWeeks": { one: "a day to a week", other: "a day to {count} weeks" },
  "span.weeks.about": "about {weeks} weeks",
  "span.weeks": "{low} to {high} weeks",
  "span.daysToMonths": "{low} days to {high} months",
  "span.weeksToMonths": { one: "a week to {high} months", other: "{count} weeks to {high} months" },
  "span.months.about": "about {months} months",
  "span.months": "{low} to {high} months",
  "span.overYear": "more than a year",
  "span.monthsToOverYear": {
    one: "a month to more than a year",
    other: "{count} months to more than a year",
  },

  // Title and summary of a plan
  "plan.title": "Where everything goes, from {from} to {to}",
  "plan.household": {
    one: "For {count} person eating about {portions} portions of fruit and vegetables a day.",
    other: "For {count} people, each eating about {portions} portions of fruit and vegetables a day.",
  },
  "plan.kitchen": "Kitchen: {kitchen}.",
  "plan.ordinaryKitchen":
    "No kitchen was given, so this plan is for an ordinary one: {kitchen}. Yours may be warmer, colder or smaller.",
  "plan.away": "Nobody eats at home on {dates}.",

  // Headings
  "heading.understood": "What was understood",
  "heading.questions": "Please check",
  "heading.kitchen": "The kitchen this is worked out for",
  "heading.prepare": "Do this first",
  "heading.places": "Where each thing goes",
  "heading.moves": "Move later",
  "heading.eat": "Eat in this order",
  "heading.lives": "How long each will last, and why",
  "heading.waste": "What this is worth",
  "heading.cautions": "Take care",
  "heading.sources": "Where the figures come from",
  "heading.belongs": "Where it belongs",
  "heading.lasts": "How long, and why",
  "heading.elsewhere": "In the other places of an ordinary kitchen",

  // Places
  "place.air": "{temperature}, air about {humidity} humid",
  "place.room": "{taken} of {litres} taken",
  "place.empty": "Nothing goes here this time.",
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
  "lot.part": "{name}, part {part} of {parts}",
  "lot.cut": "{name}, cut",
  "lot.tops": "{name} with leaves on",
  "lot.now.unripe": "{name}, unripe",
  "lot.now.ripe": "{name}, ripe",
  "lot.now.very ripe": "{name}, very ripe",
  "lot.came.unripe": "{name} (came unripe)",
  "lot.came.ripe": "{name} (came ripe)",
  "lot.came.very ripe": "{name} (came very ripe)",
  "lot.came.turning": "{name} (came half ripe)",

  // Preparation: what, then why
  "prepare.line": "{names}: {task} {why}",
  "prepare.practice": "{names}: {task} {why} (Common practice, no source.)",
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
  "prepare.do.keep on the vine": "leave on the vine.",
  "prepare.do.wash just before use": "wash just before you eat it, not now.",
  "prepare.do.leave whole": "leave whole until you need it.",
  "prepare.do.break up bunch": "part the bunch.",
  "prepare.do.remove from sealed bag": "take out of the sealed bag.",
  "prepare.why.keep dry and unwashed": "Water on the skin lets mould start.",
  "prepare.why.twist off leaves": "Leaves keep drawing water out of the root.",
  "prepare.why.trim stem ends": "A fresh cut lets the stem take up water.",
  "prepare.why.remove bands and bruised leaves": "Pressed and bruised parts rot first and spread it.",
  "prepare.why.dry well": "Water left on the surface lets rot start.",
  "prepare.why.keep husk on": "The husk keeps it from drying out.",
  "prepare.why.keep in the dark": "Light turns it green and bitter.",
  "prepare.why.light": "It keeps longer out of the light.",
  "prepare.why.cure first": "Hard, dry skin heals small cuts and keeps rot out.",
  "prepare.why.sort out damaged pieces": "One that rots spoils those that touch it.",
  "prepare.why.wrap crown": "Ripening gas leaves at the crown.",
  "prepare.why.keep on the vine": "Every place where the stem is torn off is a small wound.",
  "prepare.why.wash just before use": "Water left on the surface lets rot start.",
  "prepare.why.leave whole": "Cut sides dry out and rot sooner.",
  "prepare.why.break up bunch": "Air can reach each stem, and bad ones come out.",
  "prepare.why.remove from sealed bag": "Trapped damp lets rot start.",

  // Moves
  "move.day": "{date}. {name}: move from {from} to {to} ({wrap}).",
  "move.ripe": "When ripe, about {date}. {name}: move from {from} to {to} ({wrap}).",
  "move.rewrap": "{date}. {name}: stays in {from}, but from now on {wrap}.",
  "move.none": "Nothing needs to be moved.",

  // Eating
  "eat.day": "{date}: {list}",
  "eat.away": "{date}: nobody at home",
  "eat.nothing": "{date}: nothing planned",
  "eat.entry": { one: "{name} ({count} portion)", other: "{name} ({count} portions)" },
  "eat.left": {
    one: "Still there at the end: {name} ({count} portion).",
    other: "Still there at the end: {name} ({count} portions).",
  },
  "eat.ready": "{name}: ready to eat about {date}.",
  "eat.notReady": "{name}: will not get ripe where it lies.",

  // Lives and reasons
  "life.line": "{name}: {span}",
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

  // Short words for what ends a lot
  "ending.senescence": "ageing",
  "ending.water": "drying out",
  "ending.chilling": "harm from cold",
  "ending.decay": "mould or rot",
  "ending.over-ripeness": "getting over-ripe",
  "ending.sprouting": "sprouting",
  "ending.ethylene injury": "harm from ethylene",
  "ending.safety": "food safety",

  // Waste
  "waste.both":
    "Expected waste with this plan: {plan}. With everything put unsorted in the refrigerator: {unsorted}.",
  "waste.none":
    "Next to nothing should go to waste with this plan. With everything put unsorted in the refrigerator: {unsorted}.",
  "waste.equal":
    "This plan and putting everything unsorted in the refrigerator should waste about the same: {plan}. It is eaten soon enough either way.",
  "waste.neither":
    "Next to nothing should go to waste, with this plan or with everything unsorted in the refrigerator: it is eaten soon enough.",
  "waste.worse":
    "Expected waste with this plan: {plan}. With everything put unsorted in the refrigerator it would be less: {unsorted}. The plan gives that up for better eating.",
  "waste.note": "These are averages worked out from the model, for edible weight. A single week may differ.",

  // Cautions. Their figures are the safety limits of the catalogue; a test compares them.
  "caution.no-refrigerator-for-cut-produce":
    "There is no refrigerator for what is cut. Eat it within two hours (one hour where it is hotter than 32 °C or 90 °F), or throw it away.",
  "caution.cut-produce":
    "Cut fruit and vegetables: cover them and put them in the refrigerator within two hours of cutting (one hour where it is hotter than 32 °C or 90 °F).",
  "caution.cut-ready-to-eat":
    "Cut melon, cut tomato and cut leaves: keep them at 5 °C (41 °F) or colder. Eat them within seven days at most, counting the day they were cut, even if they still look good.",
  "caution.refrigerator-too-warm": "The refrigerator is warmer than 40 °F (4.4 °C). Turn it colder.",
  "caution.green-potatoes":
    "Potatoes: cut away green parts and sprouts; throw the potato out if it is green through or bitter.",
  "caution.mould-soft":
    "Soft fruit and vegetables with mould: throw the piece away, however small the spot, and look over those next to it.",
  "caution.mould-firm":
    "Firm fruit and vegetables with a small spot of mould: cut away at least 2.5 cm (1 inch) around and below it, and keep the knife out of the mould.",
  "caution.garlic-in-oil":
    "Home-made garlic in oil: refrigerate it at once, use it within four days, and never leave it at room temperature.",
  "caution.washed-greens": "Ready-washed leaves: keep cold all the time and use by the date on the bag.",
  "caution.overflow": "{place} would be over-full by about {litres}. Eat or give away some first.",
  "caution.unnamed": "Take care: {name}.",
  "caution.local": "Check with your local food-safety authority. When in doubt, throw it out.",

  // What was understood of a haul
  "reading.lot": "“{typed}” → {name}, {amount}",
  "reading.lotAssuming": "“{typed}” → {name}, {amount} (taken for granted: {assumed})",
  "reading.notUnderstood": "“{typed}” → not understood",
  "assumed.usual amount": "the usual amount",
  "assumed.usual size": "the usual size",
  "assumed.usual ripeness": "as ripe as usual",
  "assumed.whole": "whole",
  "assumed.spelling": "the spelling",
  "assumed.cut, because half of one": "cut, because it is half of one",
  "assumed.rounded amount": "a rounded amount",
  "assumed.weight from volume": "the weight, from its volume",
  "ask.which commodity": "“{word}”: which kind is it? It could be {candidates}.",
  "ask.which commodity.none": "“{word}”: which kind is it?",
  "ask.what is this":
    "“{word}”: no kind of fruit or vegetable by this name is known. Is it spelt right, or is there another name?",
  "ask.too many lots": "“{word}”: this is more than one plan can hold (60 things). Plan it in two parts.",
  "ask.how much.no amount": "“{word}”: how much is it?",
  "ask.how much.zero": "“{word}”: the amount is nothing. How much is it?",
  "ask.how much.negative": "“{word}”: an amount cannot be less than nothing. How much is it?",
  "ask.how much.too large": "“{word}”: that is more than a household could have. How much is it?",
  "ask.how much.unknown unit": "“{word}”: this measure is not known. How much is it, in pieces or by weight?",
  "ask.how much.known units":
    "“{word}”: this measure is not known for it. How much is it, by weight or in one of these: {units}?",
  "ask.how much.contradictory": "“{word}”: the amounts do not agree. How much is it?",

  // One kind, by itself
  "item.names": "Also called {names}.",
  "item.conditions": "At {temperature}, {humidity} humid, {ethylene} of ethylene (ripening gas): {span}.",
  "item.recommended": "Recommended: {low} to {high}, {lowHumidity} to {highHumidity} humid.",
  "item.recommendedOne": "Recommended: {low}, {lowHumidity} to {highHumidity} humid.",
  "item.respiration": "It breathes out {value} mg of carbon dioxide per kilogram and hour.",
  "item.ethylene": "It gives off {value} µL of ethylene per kilogram and hour.",
  "item.share": "{ending}: {percent} of the way when it ends.",
  "item.belongs": "{place}: {span}, ended by {ending} ({wrap}).",
  "item.belongsRipe":
    "First {place} until it is ripe ({wrap}), then {next} ({nextWrap}): {span} in all, ended by {ending}.",
  "item.elsewhere": "{place}: {span}, ended by {ending}.",
  "item.source": "{figure}: {citation} ({where}).",
  "item.sourcePractice": "{figure}: common practice, no source.",
  "item.sourceInferred": "{figure}: inferred ({where}).",
  "item.sourceMemory": "{figure}: {citation} ({where}; recalled, not checked in print).",
  "item.figure.temperature": "storage temperature",
  "item.figure.humidity": "storage humidity",
  "item.figure.life": "storage life",
  "item.figure.respiration": "breathing",
  "item.figure.ethylene": "ethylene given off",
  "item.figure.sensitivity": "harm from ethylene",
  "item.figure.water": "water loss",
  "item.figure.chilling": "lowest safe temperature",
  "item.figure.ripening": "ripening",
  "item.figure.decay": "mould and rot",

  // A kitchen
  "kitchen.room": "Room: {temperature}, air {humidity} humid.",
  "kitchen.refrigerator": "Refrigerator “{name}”: {litres} of air at {temperature}.",
  "kitchen.refrigeratorOnly": "Refrigerator: {litres} of air at {temperature}.",
  "kitchen.place": "{name} ({kind}): {temperature}, room for {litres}.",
  "kitchen.placeWithVent": "{name} ({kind}): {temperature}, room for {litres}. {vent}",
  "kitchen.wraps": "Wraps at hand: {wraps}.",
  "kitchen.noWraps": "No wraps at hand.",
} as const satisfies Messages;
