import type { Messages } from "../message.js";

/** La hoja para la puerta del refrigerador. */
export const sheetSpanish = {
  "sheet.title": "Dónde va cada cosa",
  "sheet.dates": "{from} a {to} de {year}",
  "sheet.throwAway": "Lee esto primero",
  "sheet.eat": "Come a más tardar",
  "sheet.moves": "Cambia después",
  "sheet.prepare": "Antes de guardar",
  "sheet.places": "Ponlo aquí",
  "sheet.cautions": "Ten cuidado",
  "sheet.note":
    "Hecho con Keepwright para: {kitchen}. Las fechas son lo más probable, no son seguras. Mira, huele y toca. Lo que lleva una estrella (*) es costumbre y no tiene fuente.",
  "sheet.page": "Página {page} de {pages}",

  "sheet.written":
    "{count, plural, one {Se escribió: {file} (# página, letra de {size} pt).} other {Se escribió: {file} (# páginas, letra de {size} pt).}}",

  "paper.written":
    "{count, plural, one {Se escribió: {file} (# página).} other {Se escribió: {file} (# páginas).}}",

  "sheet.finish": "{names}.",
  "sheet.doubtful": "Quizá no dure tanto: {names}. Come antes, congela o regala.",
  "sheet.cutOpen": "Al cortar, tapa y enfría de inmediato: {names}.",
  "sheet.cutOpenUntil":
    "{name}: al cortar (hacia el {date}), tapa y enfría de inmediato. Por salud, come hasta el {last} y no más.",
  "sheet.cutOpenTooLong":
    "{name}: al cortar (hacia el {date}), tapa y enfría de inmediato. Por salud, come hasta el {last} y no más. Hay más que eso: congela o regala el resto antes.",
  "sheet.cutOpenAtOnce":
    "{name}: al cortar (hacia el {date}), come antes de dos horas. Hay más que eso: regala el resto de inmediato o tíralo.",
  "sheet.left": "Queda al final: {names}. Guarda, congela o comparte.",

  "sheet.move.day": "{date}",
  "sheet.move.ripe": "Cuando esté a punto, hacia el {date}",
  "sheet.move.sooner": "Si está a punto antes del {date}",
  "sheet.move.to": "Pasa a “{place}”, {wrap}.",
  "sheet.move.rewrap": "Deja en “{place}”, pero desde ahora {wrap}.",
  "sheet.loose": "sin envolver",
  "sheet.later": "Desde el {date}: {names}.",
  "sheet.starred": "{task} *",

  "sheet.vent.open": "Rejilla: abierta",
  "sheet.vent.half": "Rejilla: a la mitad",
  "sheet.vent.closed": "Rejilla: cerrada",

  "sheet.ready": "A punto hacia el {date}.",
  "sheet.notReady": "Aquí no va a madurar.",
  "sheet.until": "Revisa desde el {from}; con suerte dura hasta el {to}.",
  "sheet.until.ready": "Revisa desde ese día; con suerte dura hasta el {to}.",
  "sheet.until.about": "Revisa desde el {date}.",
  "sheet.until.today": "Come hoy.",
  "sheet.until.upTo": "Come pronto: con suerte dura hasta el {date}.",
  "sheet.until.safe": "Revisa desde el {date}. Por salud, guarda hasta el {safe} y no más.",
  "sheet.until.safeOnly": "Por salud, guarda hasta el {safe} y no más.",
  "sheet.until.long": "Dura {span}.",

  "ordinary.An ordinary kitchen": "una cocina común",
  "ordinary.A small refrigerator without drawers": "un refrigerador chico sin cajones",
  "ordinary.A kitchen with a cellar": "una cocina con sótano",
  "ordinary.A warm kitchen in summer": "una cocina calurosa en verano",
  "ordinary.Refrigerator shelves": "Repisas del refrigerador",
  "ordinary.Refrigerator door": "Puerta del refrigerador",
  "ordinary.Left drawer": "Cajón izquierdo",
  "ordinary.Right drawer": "Cajón derecho",
  "ordinary.Counter": "Mesa de la cocina",
  "ordinary.Cupboard, upper shelf": "Alacena, repisa de arriba",
  "ordinary.Cupboard, lower shelf": "Alacena, repisa de abajo",
  "ordinary.Cupboard": "Alacena",
  "ordinary.Cellar": "Sótano",
  "ordinary.Drawer": "Cajón",
  "ordinary.Upper drawer": "Cajón de arriba",
  "ordinary.Upper left drawer": "Cajón de arriba a la izquierda",
  "ordinary.Upper right drawer": "Cajón de arriba a la derecha",
  "ordinary.Balcony": "Balcón",
} as const satisfies Messages;
