import type { Messages } from "../message.js";

/** One kind by itself, and a kitchen. */
export const itemWords = {
  // One kind, by itself
  "item.names": "Also called {names}.",
  "item.conditions": "At {temperature}, {humidity} humidity, {ethylene} of ethylene (ripening gas): {span}.",
  "item.recommended": "Recommended: {low} to {high}, {lowHumidity} to {highHumidity} humidity.",
  "item.recommendedOne": "Recommended: {low}, {lowHumidity} to {highHumidity} humidity.",
  "item.respiration": "Breathing: {value} mg of carbon dioxide per kilogram and hour.",
  "item.ethylene": "Ethylene (ripening gas) given off: {value} µL per kilogram and hour.",
  "item.share": "{ending}: {percent} of the way when it ends.",
  "item.belongs": "{place}: {span}, ended by {ending} ({wrap}).",
  "item.belongsRipe":
    "First “{place}” until ripe ({wrap}), then “{next}” ({nextWrap}): {span} in all, ended by {ending}.",
  "item.belongsSpoilt": "The price is in the eating: {effects}.",
  "item.elsewhere": "{place} ({wrap}): {span}, ended by {ending}.",
  "item.elsewhereSpoilt":
    "{place} ({wrap}): {span}, ended by {ending}. The price is in the eating: {effects}.",
  "item.elsewhereNotRipe": "{place} ({wrap}): no ripening there; {span}, ended by {ending}.",
  "item.effect.flavour loss": "lost flavour",
  "item.effect.sweetening": "a sweet taste",
  "item.effect.blackening": "black patches",
  "item.effect.hard core": "a hard core",
  "item.effect.mealiness": "mealy flesh",
  "item.effect.starchiness": "less sweetness",
  "item.effect.toughening": "tough stems",
  "item.effect.skin browning": "brown skin",
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
  "kitchen.room": "Room: {temperature}, {humidity} humidity.",
  "kitchen.refrigerator": "Refrigerator “{name}”: {litres} of air at {temperature}.",
  "kitchen.refrigeratorOnly": "Refrigerator: {litres} of air at {temperature}.",
  "kitchen.place": "{name} ({kind}): {temperature}, room for {litres}.",
  "kitchen.placeWithVent": "{name} ({kind}): {temperature}, room for {litres}. {vent}",
  "kitchen.wraps": "Wraps at hand: {wraps}.",
  "kitchen.noWraps": "No wraps at hand.",
} as const satisfies Messages;
