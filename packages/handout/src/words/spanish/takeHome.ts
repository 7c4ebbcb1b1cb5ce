import type { Messages } from "../message.js";

/** Calendario y etiquetas. */
export const takeHomeSpanish = {
  "calendar.name": "Qué comer y qué cambiar",
  "calendar.eat": "Hoy come: {names}",
  "calendar.eatMore": "Hoy come: {names} y {count} más",
  "calendar.eatBy": "Revisa hoy: {name}",
  "calendar.lastSafeDay": "Último día seguro: {name}",
  "calendar.atOnce": "Come antes de dos horas: {name}",
  "calendar.throwAway": "Tira, no comas: {name}",
  "calendar.lastCutDay": "Último día seguro de lo que se cortó: {name}",
  "calendar.cutTooLong": "{name}: lo que se cortó el {cut}, no lo comas después del {last}. Tíralo.",
  "calendar.cutAtOnce":
    "{name}: come antes de dos horas lo que cortes el {cut}. Regala el resto de inmediato o tíralo.",
  "calendar.left": "Tira lo que quede: {name}",
  "calendar.move": "Pasa a “{to}”: {name}",
  "calendar.moveRipe": "Si está a punto, pasa a “{to}”: {name}",
  "calendar.moveSooner": "¿Ya está a punto? Pasa a “{to}”: {name}",
  "calendar.rewrap": "Cambia la envoltura: {name}",
  "calendar.moveFrom": "Sale de “{from}”. Desde ahora: {wrap}.",
  "calendar.moveRipeFrom":
    "Sale de “{from}”. Desde entonces: {wrap}. ¿Aún no está a punto? Espera y mira otra vez al día siguiente.",
  "calendar.moveSoonerFrom":
    "Si ya está a punto, sale de “{from}”. Desde entonces: {wrap}. ¿Aún no? Espera: se come a más tardar el {date}.",
  "calendar.rewrapFrom": "Se queda en “{from}”. Desde ahora: {wrap}.",
  "calendar.meals": "Según el plan se come: {dates}.",
  "calendar.daySpan": "cada día del {from} al {to}",
  "calendar.cancelled": "Ya no: {summary}",

  "label.title": "Etiquetas",
  "label.name": "{name}, {amount}",
  "label.putAway": "Desde el {date}",
  "label.until.quality": "Revisa desde el {date}",
  "label.until.cutOpen": "Revisa desde el {date}. Si cortas el {cut}: come hasta el {last}, luego tira",
  "label.until.cutOpenAtOnce":
    "Revisa desde el {date}. Si cortas el {cut}: come antes de dos horas, luego tira",
  "label.until.for safety": "Come hasta el {date}, luego tira",
  "label.until.at once": "Come antes de dos horas, luego tira",
  // Van juntas: una línea no debe decir solo “comas”.
  "label.until.throw away": "Tira: no\u00a0comas\u00a0esto",
  "label.place": "{place}: {wrap}",
  "label.then.day": "Desde el {date}: {place}",
  "label.then.ripe": "Cuando esté a punto, hacia el {date}: {place}",
  "label.then.sooner": "Si está a punto antes del {date}: {place}",
  "label.then.rewrap": "Desde el {date}: {wrap}",
} as const satisfies Messages;
