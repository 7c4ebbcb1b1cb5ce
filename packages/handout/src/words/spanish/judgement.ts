import type { Messages } from "../message.js";

/** Cómo está todo ahora, al lado del plan. */
export const judgementSpanish = {
  "judge.title": "Como lo tienes, al lado del plan, del {from} al {to}",

  "heading.unsafe": "Arregla esto primero",
  "heading.asYouHaveIt": "Como lo tienes",
  "heading.notTold": "Lo que no dijiste",
  "heading.beside": "Lo que cuesta",
  "heading.conflicts": "Lo que va peor",
  "heading.lotByLot": "Cuánto dura cada cosa: como lo tienes, y en el plan",
  "heading.alsoSeen": "Además",

  // La salud, primero
  "judge.unsafe.cut out of refrigerator":
    "{name}: en trozos y fuera del refrigerador (“{place}”). Pon en el frío antes de dos horas (una hora si hace más de 32 °C o 90 °F), o tira.",
  "judge.unsafe.cut too warm":
    "{name}: está en el refrigerador, pero en “{place}” hace demasiado calor. Necesita 5 °C (41 °F) o menos: pásalo a un lugar más frío o come antes de dos horas.",
  "judge.unsafe.cut uncovered":
    "{name}: sin tapar. Tapa bien, para que nada toque lo que ya está cortado o se come así.",
  "judge.unsafe.greens in light":
    "{name}: con luz (“{place}”). La luz hace partes verdes y amargas que pueden hacer daño. Guarda sin luz.",

  // Lo que no se dijo
  "judge.notTold.lots": "Se puso donde lo pondría un plan, junto a lo demás: {names}.",
  "judge.notTold.vents":
    "No dijiste nada de estas rejillas. Se toman como si nadie las hubiera movido: {vents}.",
  "judge.ventAt.open": "“{place}” abierta",
  "judge.ventAt.half": "“{place}” a la mitad",
  "judge.ventAt.closed": "“{place}” cerrada",

  // Cómo está
  "judge.vent.open": "La rejilla está abierta.",
  "judge.vent.half": "La rejilla está a la mitad.",
  "judge.vent.closed": "La rejilla está cerrada.",

  // Lo que cuesta
  "judge.waste":
    "Desperdicio esperado como lo tienes: {yours} ({yoursPortions}). Con el plan: {plan} ({planPortions}).",
  "judge.wasteEqual": "Como lo tienes y con el plan el desperdicio esperado es casi el mismo: {yours}.",
  "judge.wasteNeither": "Casi no se espera desperdicio, ni como lo tienes ni con el plan.",
  "judge.portions": "{count, plural, one {cerca de # porción} other {cerca de # porciones}}",
  "judge.portions.little": "menos de una porción",
  "judge.same": "En total está tan bien como el plan. Deja todo como está.",
  "judge.better": "En total está un poco mejor que el plan hallado. Deja todo como está.",
  "judge.betterBut":
    "Según estas cifras está un poco mejor que el plan, pero hace lo que ningún plan haría: mira arriba y abajo.",
  "judge.quality": "Además se come con menos sabor: pesa tanto como perder {grams}.",

  // Lo que va peor
  "judge.worst.life": "{name}: {span}; con el plan, {planned}. El límite es {ending}.",
  "judge.worst.lifeLittle": "{name}: {span}, un poco menos que con el plan. El límite es {ending}.",
  "judge.worst.not ripe": "{name}: allí no se llega a la madurez. Con el plan: a punto hacia el {date}.",
  "judge.worst.eating": "{name}: dura bastante, pero allí se come peor: {effects}.",
  "judge.worst.smell": "{name}: toma el olor de {givers}.",
  "judge.why.eating": "Además se come peor: {effects}.",
  "judge.why.smell": "Además toma el olor de {givers}.",
  "judge.why.waste": "Desperdicio esperado de esto: {here}; con el plan, {planned}.",
  "judge.why.onlyNeighbour": "Con {name} y nada más al lado: {span}.",
  "judge.why.place": "Nada de lo que está al lado tiene la culpa: es el lugar, la envoltura o la rejilla.",
  "judge.instead": "En el plan: “{place}” ({wrap}).",
  "judge.insteadPart": "En el plan, {name}: “{place}” ({wrap}).",
  "judge.insteadRipe": "En el plan: “{place}” hasta que madure ({wrap}), luego “{next}” ({nextWrap}).",
  "judge.insteadRipePart":
    "En el plan, {name}: “{place}” hasta que madure ({wrap}), luego “{next}” ({nextWrap}).",

  // Cosa por cosa
  "judge.lot": "{name}: {here}; en el plan, {planned}.",
  "judge.lotSame": "{name}: {here}, igual que en el plan.",
  "judge.noRipening": "no madura",

  // Además
  "judge.seen.unsuitable wrap":
    "{name}: {wrap} no le va bien (es costumbre y no tiene fuente). Hay cosas que deben respirar o estar secas, y pocas van en agua.",
  "judge.seen.never moves": "{name}: iba a cambiar de lugar al madurar, pero allí no madura.",
} as const satisfies Messages;
