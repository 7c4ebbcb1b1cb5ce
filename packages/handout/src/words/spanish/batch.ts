import type { Messages } from "../message.js";

/** Muchas hojas de una vez: cuánto falta y qué resultó. */
export const batchSpanish = {
  "batch.done": "{count, plural, one {{past} de # fila lista} other {{past} de # filas listas}}",
  "batch.doneOfUnknown": "{count, plural, one {# fila lista} other {# filas listas}}",
  "batch.failed": "{count, plural, one {# no se pudo hacer} other {# no se pudieron hacer}}",
  "batch.left.moment": "faltan unos segundos",
  "batch.left.seconds": "faltan cerca de {seconds} s",
  "batch.left.minutes": "faltan cerca de {minutes} min",
  "batch.left.hours": "faltan cerca de {hours} h",
  "batch.row": "línea {line} ({id}): {problem}",
  "batch.made": "{count, plural, one {Se hizo la hoja de # fila.} other {Se hicieron las hojas de # filas.}}",
  "batch.kept":
    "{count, plural, one {# fila ya estaba, hecha con las mismas palabras.} other {# filas ya estaban, hechas con las mismas palabras.}}",
  "batch.failures":
    "{count, plural, one {# fila no se pudo hacer; arriba se dice cuál. Corrígela y da la misma orden otra vez.} other {# filas no se pudieron hacer; arriba se dice cuáles. Corrígelas y da la misma orden otra vez.}}",
  "batch.partly":
    "{count, plural, one {En # fila no se entendieron algunas palabras; están arriba y en su plan.} other {En # filas no se entendieron algunas palabras; están arriba y en sus planes.}}",
  "batch.where": "Todo está en la carpeta {folder}.",
} as const satisfies Messages;
