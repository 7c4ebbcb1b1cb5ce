import type { Messages } from "../../message.js";

/** Lo que se dice cuando un juego está hecho, y qué cambió desde la última vez. */
export const changesSpanish = {
  "made.progress": "Se prepara el juego …",
  "made.kit":
    "{count, plural, one {Escrito en {folder}: # documento.} other {Escrito en {folder}: # documentos.}}",
  "made.document": "{pages, plural, one {{file} (# página): {title}} other {{file} (# páginas): {title}}}",
  "made.host": "{line} (para quien da la clase)",
  "made.taken": "“{word}” puede ser varias cosas; aquí se tomó como: {name}.",
  "made.season":
    "Se eligió por los meses de cosecha, que son práctica común y no tienen fuente: {names}. Una lista es más segura.",

  "changes.title": "Qué cambió desde la última vez que se hizo este juego",
  "changes.none": "Nada cambió desde la última vez que se hizo este juego.",
  "changes.program": "El programa: antes {before}, ahora {after}.",
  "changes.catalogue": "El catálogo ya no es el de entonces.",
  "changes.field": "Lo pedido, {field}: antes {before}, ahora {after}.",
  "changes.nothing": "nada",
  "changes.itemsAdded": "Alimentos nuevos: {names}.",
  "changes.itemsRemoved": "Alimentos que ya no están: {names}.",
  "changes.itemsChanged": "El catálogo dice otra cosa de: {names}.",
  "changes.documentAdded": "Nuevo: {title} ({id}).",
  "changes.documentRemoved": "Ya no está: {title} ({id}). Se quitó su archivo.",
  "changes.document": "Cambió: {title} ({id}). Toca a: {names}.",
  "changes.documentOnly": "Cambió: {title} ({id}).",
  "changes.order": "Las mismas líneas en otro orden.",
  "changes.more": "{count, plural, one {y # línea más} other {y # líneas más}}",
  "changes.noDocument": "Ningún documento dice otra cosa que antes.",
} as const satisfies Messages;
