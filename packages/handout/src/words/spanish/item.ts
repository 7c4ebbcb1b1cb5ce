import type { Messages } from "../message.js";

/** Una sola clase, y una cocina. */
export const itemSpanish = {
  // Una sola clase
  "item.names": "También se llama: {names}.",
  "item.conditions":
    "A {temperature}, con humedad de {humidity} y {ethylene} de etileno (gas que hace madurar): {span}.",
  "item.recommended": "Lo mejor: de {low} a {high}, con humedad de {lowHumidity} a {highHumidity}.",
  "item.recommendedOne": "Lo mejor: {low}, con humedad de {lowHumidity} a {highHumidity}.",
  "item.respiration": "Respira: {value} mg de dióxido de carbono por kilo y hora.",
  "item.ethylene": "Suelta etileno (gas que hace madurar): {value} µL por kilo y hora.",
  "item.share": "{ending}: {percent} del camino cuando llega el fin.",
  "item.belongs": "{place}: {span}; el límite es {ending} ({wrap}).",
  "item.belongsRipe":
    "Primero “{place}” hasta que madure ({wrap}), luego “{next}” ({nextWrap}): {span} en total; el límite es {ending}.",
  "item.belongsSpoilt": "A cambio, se come peor: {effects}.",
  "item.elsewhere": "{place} ({wrap}): {span}; el límite es {ending}.",
  "item.elsewhereSpoilt":
    "{place} ({wrap}): {span}; el límite es {ending}. A cambio, se come peor: {effects}.",
  "item.elsewhereNotRipe": "{place} ({wrap}): allí no madura; {span}; el límite es {ending}.",
  "item.effect.flavour loss": "menos sabor",
  "item.effect.sweetening": "un sabor dulce",
  "item.effect.blackening": "manchas negras",
  "item.effect.hard core": "el centro duro",
  "item.effect.mealiness": "pulpa harinosa",
  "item.effect.starchiness": "menos dulce",
  "item.effect.toughening": "tallos duros",
  "item.effect.skin browning": "piel oscura",
  "item.allYear": "Todo el año.",
  "item.month": "{from}",
  "item.months": "de {from} a {to}",
  "item.seasonNorth": "Al norte del ecuador: {months}.",
  "item.seasonSouth": "Al sur del ecuador: {months}.",
  "item.source": "{figure}: {citation} ({where}).",
  "item.sourcePractice": "{figure}: es costumbre y no tiene fuente.",
  "item.sourceInferred": "{figure}: se deduce ({where}).",
  "item.sourceMemory": "{figure}: {citation} ({where}; de memoria, sin revisar en papel).",
  "item.figure.temperature": "frío para guardar",
  "item.figure.humidity": "humedad para guardar",
  "item.figure.life": "cuánto dura",
  "item.figure.respiration": "cuánto respira",
  "item.figure.ethylene": "etileno que suelta",
  "item.figure.sensitivity": "daño por etileno",
  "item.figure.water": "agua que pierde",
  "item.figure.chilling": "hasta dónde aguanta el frío",
  "item.figure.ripening": "cómo madura",
  "item.figure.decay": "moho y pudrición",

  // Una cocina
  "kitchen.room": "Cuarto: {temperature}, humedad de {humidity}.",
  "kitchen.refrigerator": "Refrigerador “{name}”: {litres} de aire a {temperature}.",
  "kitchen.refrigeratorOnly": "Refrigerador: {litres} de aire a {temperature}.",
  "kitchen.place": "{name} ({kind}): {temperature}, caben {litres}.",
  "kitchen.placeWithVent": "{name} ({kind}): {temperature}, caben {litres}. {vent}",
  "kitchen.wraps": "A la mano para envolver: {wraps}.",
  "kitchen.noWraps": "No hay nada a la mano para envolver.",
} as const satisfies Messages;
