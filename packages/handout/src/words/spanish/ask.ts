import type { Messages } from "../message.js";

/** Una respuesta corta, para leerla de lejos. */
export const askSpanish = {
  "ask.whereThen": "{place} hasta que madure, luego {next}",
  "ask.howThen": "{wrap} hasta que madure, luego {nextWrap}",
  "ask.ends": "Se acaba por {ending}.",
  "ask.ready": "Para estar a punto: {span}.",
  "ask.readyNow": "Ya a punto para comer.",
  "ask.notReady": "Ahí no madura.",
  "ask.practice": "{line} *",
  "ask.dairy": "leche, mantequilla y queso",
  "ask.heading.apart": "No junto a",
  "ask.apart.gas from": "{names}: su etileno, un gas que hace madurar, le quita días a: {name}.",
  "ask.apart.gas from unripe":
    "{names}, cuando ya esté a punto: su etileno, un gas que hace madurar, le quita días a: {name}. Antes solo hace que madure más pronto.",
  "ask.apart.gas to": "{names}: el etileno, un gas que hace madurar, sale de {name} y les quita días.",
  "ask.apart.smell from": "{names}: su olor se pega a: {name}.",
  "ask.apart.smell to": "{names}: se les pega el olor de {name}.",
  "ask.apart.none": "No se conoce nada que le haga daño si está al lado, ni nada a lo que le haga daño.",
  "ask.figure.signs": "señales",
  "ask.figure.save": "cómo guardar lo que sobra",
  "ask.figure.trimmings": "recortes",
  "ask.figure.hazards": "lo que puede hacer daño",
  "ask.figure.season": "temporada",
  "ask.figure.preparation": "qué hacer primero",
  "ask.figure.smells": "olores",
  "ask.figure.cutLife": "duración ya cortado",
} as const satisfies Messages;
