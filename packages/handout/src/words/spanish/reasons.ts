import type { Messages } from "../message.js";

/** Cuánto dura cada cosa, qué le pone fin y por qué está donde está. */
export const reasonsSpanish = {
  "life.line": "{name}: {span}.",
  "life.atOnce":
    "Come antes de dos horas (una hora si hace más de 32 °C o 90 °F) y tira lo demás. En un refrigerador a 5 °C (41 °F) o menos, esto sí dura.",
  "life.today": "Come hoy mismo.",
  "life.safeUntil": "Por salud, hasta el {date} y no más; luego tira el resto.",
  "life.past": "Tira esto: se cortó o se abrió hace mucho y ya no es seguro, aunque se vea bien.",
  "life.checkFrom": "Revisa desde el {date}.",
  "reason.lasts": "Se calculó para {temperature} y cerca de {humidity} de humedad.",
  "reason.ends.senescence": "Lo que pone el límite es la edad.",
  "reason.ends.water":
    "Lo que pone el límite es que se seca: le falta firmeza cuando pierde {loss} del peso.",
  "reason.ends.chilling": "Lo que pone el límite es el frío: hace daño a menos de {threshold}.",
  "reason.ends.decay": "Lo que pone el límite es el moho o la pudrición.",
  "reason.ends.over-ripeness": "Lo que pone el límite es que madura de más.",
  "reason.ends.sprouting": "Lo que pone el límite son los brotes.",
  "reason.ends.ethylene injury":
    "Lo que pone el límite es el etileno, el gas que hace madurar, en este aire.",
  "reason.ends.safety": "Lo que pone el límite es la salud: no guardes más, aunque todo se vea bien.",
  "reason.ends.greening":
    "Lo que pone el límite es la luz: vuelve la piel verde y amarga. A oscuras dura mucho más.",
  "reason.ends.other": "Lo que pone el límite es {ending}.",
  "reason.slower": "A {temperature} envejece cerca de {times} veces más despacio que a {room}.",
  "reason.tooCold": "El frío le hace daño por debajo de {threshold} (“{place}”: {temperature}).",
  "reason.ripensFirst": "Para madurar necesita calor: {temperature} hasta que esté a punto, hacia el {date}.",
  "reason.ripensInCold":
    "En el frío también madura, pero lento: {temperature} hasta que esté a punto, hacia el {date}.",
  "reason.bagRipens": "La bolsa cerrada guarda el etileno, el gas que hace madurar. Así madura antes.",
  "reason.thenCold": "Ya a punto, el frío lo hace durar: {temperature} en “{place}”.",
  "reason.neverRipens": "Ya no madura después de la cosecha: esperar no lo hace más dulce.",
  "reason.lessEthylene":
    "Lejos del etileno, el gas que hace madurar y que suelta la otra fruta: aquí hay mucho menos que en “{place}”.",
  "reason.wrapDamp": "La envoltura guarda la humedad: el aire de “{place}” solo tiene cerca de {there}.",
  "reason.damp":
    "El aire húmedo no deja que se seque: cerca de {here} de humedad aquí, y de {there} en “{place}”.",
  "reason.gives": "Suelta mucho etileno, el gas que hace madurar, y le quita días a lo que está al lado.",

  // Lo que le pone fin, en pocas palabras
  "ending.senescence": "la edad",
  "ending.water": "la pérdida de agua",
  "ending.chilling": "el daño por frío",
  "ending.decay": "el moho o la pudrición",
  "ending.over-ripeness": "el exceso de madurez",
  "ending.sprouting": "la salida de brotes",
  "ending.ethylene injury": "el daño por etileno",
  "ending.safety": "el riesgo para la salud",
  "ending.greening": "el color verde que da la luz",
} as const satisfies Messages;
