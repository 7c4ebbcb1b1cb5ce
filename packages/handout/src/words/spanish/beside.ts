import type { besideWords } from "../english/beside.js";

/** Cómo están las cosas y el plan, lado a lado y en pocas palabras. */
export const besideSpanish = {
  "beside.range": "{low} a {high}",
  "beside.range.upTo": "hasta {high}",
  "beside.range.about": "unos {value}",
  "beside.range.little": "casi nada",
  "beside.portions": "{low} a {high} porciones",
  "beside.portions.upTo": "{count, plural, one {hasta # porción} other {hasta # porciones}}",
  "beside.portions.about": "{count, plural, one {cerca de # porción} other {cerca de # porciones}}",
  "beside.portions.little": "menos de una porción",
  "beside.told": "Desperdicio como lo tienes: {yours}. Con el plan: {plan}.",
  "beside.told.neither": "Casi no se espera desperdicio, ni como lo tienes ni con el plan.",
  "beside.how":
    "{count, plural, one {Se llevó a cabo # vez en el modelo, con temperaturas, edades, suerte y comidas atrasadas al azar.} other {Se llevó a cabo # veces en el modelo, con temperaturas, edades, suerte y comidas atrasadas al azar. En 8 de cada 10 casos el desperdicio fue el que se dice aquí.}}",
  "beside.move.lot": "Como en el plan: {name} en “{place}”, {wrap}.",
  "beside.move.lotThen": "Como en el plan: {name} en “{place}”, {wrap}, y más tarde en “{next}”, {nextWrap}.",
  "beside.move.lotParts": "Como en el plan: {name} en varios lugares.",
  "beside.move.vent.open": "Abre la rejilla de “{place}”.",
  "beside.move.vent.half": "Deja a la mitad la rejilla de “{place}”.",
  "beside.move.vent.closed": "Cierra la rejilla de “{place}”.",
  "beside.move.none": "Ya no hay un solo cambio que ayude.",
  "beside.gain": "El desperdicio baja entre {low} y {high} en 8 de cada 10 casos.",
  "beside.gain.upTo": "El desperdicio baja hasta {high} en 8 de cada 10 casos, a veces nada.",
  "beside.gain.little": "El desperdicio apenas cambia, pero se come mejor o dura más.",
  "beside.from": "De planes hechos sin este único cambio y con él: desperdicio de {before} y de {after}.",
  "beside.from.range":
    "El rango viene de cuánto difieren planes con otros comienzos ({noise}) y de lo que no se sabe de cuánto duran las cosas ({reach}).",
} as const satisfies Record<keyof typeof besideWords, string>;
