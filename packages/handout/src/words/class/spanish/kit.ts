import type { Messages } from "../../message.js";

/** Un juego para la clase, sus hojas de respuestas y su página de lugares. */
export const kitSpanish = {
  "kit.title": "Cómo guardar lo que compras",
  "kit.page": "Página {page} de {pages}",
  "kit.sources": "De dónde sale esto",
  "kit.foot":
    "{title}. Calculado por Keepwright. Los plazos son probables, no seguros. Pregunta a la autoridad sanitaria de tu zona.",
  "kit.host": "Para quien da la clase",
  "kit.invented": "Inventado para esta clase: no es un hogar real.",

  "answer.where": "Dónde",
  "answer.how": "Cómo",
  "answer.until": "Cuánto dura",
  "answer.first": "Haz primero",
  "answer.range": "Los días son un plazo probable, no una promesa. Mira, huele y toca.",
  "answer.kitchen": "Pensado para: {kitchen}.",

  "size.cut": "{centimetres} cm (1 pulgada)",

  "places.title": "Dónde va cada cosa",
  "places.subtitle": "Para colgar en la pared",
  "places.heading": "{place} ({temperature})",
  "places.first": "{name}: {wrap}. {span}.",
  "places.ripening": "{name}: {wrap}, hasta madurar. Luego “{next}”. {span} en total.",
  "places.ripe": "{name}, ya a punto: {wrap}.",
  "places.group": "Grupo {number}, lejos de los otros de aquí:",
  "places.groups":
    "Los grupos van lejos: el gas o el olor de uno daña a otro. Si puedes, un cajón o una repisa para cada uno.",
  "places.alone":
    "Aquí se mira cada cosa por sí sola. En una cocina llena, puede que algo tenga que ir en otro sitio.",
} as const satisfies Messages;
