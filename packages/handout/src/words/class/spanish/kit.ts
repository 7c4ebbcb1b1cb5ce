import type { Messages } from "../../message.js";

/** Un juego para la clase, sus hojas de respuestas y su página de lugares. */
export const kitSpanish = {
  "kit.title": "Cómo guardar lo que compras",
  "kit.page": "Página {page} de {pages}",
  "kit.sources": "De dónde sale esto",
  "kit.foot": "{title}. Calculado por Keepwright.",
  "kit.host": "Para quien da la clase",
  "kit.invented": "Inventado para esta clase: no es un hogar real.",

  "answer.where": "Dónde",
  "answer.how": "Cómo",
  "answer.until": "Cuánto dura",
  "answer.first": "Haz primero",
  "answer.range": "Los días son un plazo probable, no una promesa. Mira, huele y toca.",
  "answer.season": "{season}: {months}",
  "answer.kitchen": "Pensado para: {kitchen}.",

  // Las pocas fuentes de una hoja, y todas en la de quien da la clase
  "brief.marked": "{text} ({numbers})",
  "brief.read": "({number}) {citation}.",
  "brief.memory": "({number}) {citation} (de memoria, sin revisar en papel).",
  "brief.practice": "({number}) Es costumbre y no tiene fuente.",
  "brief.inferred": "({number}) Se deduce; de qué, lo dice la lista completa.",
  "brief.life.read": "({number}) Calculado por Keepwright. Cuánto dura en almacén: {citation}.",
  "brief.life.memory":
    "({number}) Calculado por Keepwright. Cuánto dura en almacén: {citation} (de memoria, sin revisar en papel).",
  "brief.life.practice":
    "({number}) Calculado por Keepwright. Cuánto dura en almacén: es costumbre y no tiene fuente.",
  "brief.life.inferred": "({number}) Calculado por Keepwright. Cuánto dura en almacén se deduce.",
  "brief.source.read": "Fuente: {citation}.",
  "brief.source.memory": "Fuente: {citation} (de memoria, sin revisar en papel).",
  "brief.source.practice": "Fuente: ninguna; es costumbre.",
  "brief.source.inferred": "Fuente: se deduce; de qué, lo dice la lista completa.",
  "brief.whole":
    "Más fuentes, y cuáles son de memoria o se deducen: en la hoja “{title}” de quien da la clase. Pídela.",
  "sources.title": "De dónde sale todo",
  "sources.intro": "Las hojas del grupo nombran pocas fuentes. Aquí están todas, hoja por hoja.",
  "sources.limits": "cuidados",

  "size.cut": "{centimetres} cm (1 pulgada)",

  "places.title": "Dónde va cada cosa",
  "places.subtitle": "Para colgar en la pared",
  "places.heading": "{place} ({temperature})",
  "places.part": "{place}: {part} ({temperature})",
  "places.box": "{place}: caja {number} ({temperature})",
  "places.part.upper shelf": "repisa de arriba",
  "places.part.middle shelf": "repisa de en medio",
  "places.part.lower shelf": "repisa de abajo",
  "places.part.upper rack": "estante de arriba",
  "places.part.lower rack": "estante de abajo",
  "places.part.left end": "lado izquierdo",
  "places.part.right end": "lado derecho",
  "places.part.left side": "lado izquierdo",
  "places.part.right side": "lado derecho",
  "places.first": "{name}: {wrap}; {span}",
  "places.ripening": "{name}: {wrap} hasta madurar, luego “{next}”; {span} en total",
  "places.ripe": "{name}, ya a punto: {wrap}",
  "places.intro":
    "El gas o el olor de uno daña a otro: cada cosa en su lugar, aunque su hoja diga el de al lado. En una cocina llena, algo irá en otro sitio.",
  "places.boxes": "Donde ya no hay lugar, usa una caja con su tapa (es costumbre y no tiene fuente).",
  "places.ajar": "Deja la tapa un poco abierta para lo que debe respirar: {names}.",
  "places.source":
    "Días: calculados por Keepwright con los datos de las hojas de respuestas. Son probables, no seguros.",
  "places.alone":
    "Aquí se mira cada cosa por sí sola. En una cocina llena, puede que algo tenga que ir en otro sitio.",
} as const satisfies Messages;
