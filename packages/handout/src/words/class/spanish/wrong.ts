import type { Messages } from "../../message.js";

/** Qué no se entiende de lo que se pide para una clase, sin punto final, y qué sí se puede escribir. */
export const wrongSpanish = {
  "wrong.noKind": "“{word}”: no se conoce ningún producto con este nombre",
  "wrong.noKind.remedy": "Revisa cómo está escrito, o prueba con otro nombre.",
  "wrong.severalKinds": "“{word}”: puede ser más de una cosa",
  "wrong.severalKinds.remedy": "Pon uno de estos: {names}.",
  "wrong.fewInSeason": "entonces están en temporada {known} productos conocidos, y se piden {asked}",
  "wrong.fewInSeason.remedy": "Pide menos productos, o nómbralos tú.",
  "wrong.haul": "no se entiende todo",
  "wrong.haul.remedy": "Escribe cantidades y nombres, por ejemplo: 1 kg de manzanas, un manojo de espinaca.",
} as const satisfies Messages;
