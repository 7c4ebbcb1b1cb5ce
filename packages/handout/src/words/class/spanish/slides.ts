import type { Messages } from "../../message.js";

/** Diapositivas, y la comparación de una compra guardada de dos maneras. */
export const slidesSpanish = {
  "slides.kinds": "{count, plural, one {# producto} other {# productos}}, una cocina, una semana en casa",
  "slides.sources": "De dónde sale esto",
  "slides.moreSources": "más en las notas",
  "slides.goesOn": "{title} ({number} de {of})",
  "slides.why": "Por qué",
  "slides.days": "Días hasta que la mitad ya no está en buen estado, por lugar",
  "slides.daysShort": "Días",
  "slides.lives.alt": "Gráfica de barras con los días hasta que la mitad ya no está en buen estado. {list}.",
  "slides.lives.one": "{place}: {days, plural, one {# día} other {# días}}",
  "slides.lives.sign": "† Allí dura, pero no madura o sabe peor.",
  "slides.open.notes": "Da la bienvenida. Pregunta: ¿quién tiró frutas o verduras esta semana, y cuáles?",
  "slides.kind.notes":
    "Di dónde va, cómo se envuelve y cuánto dura. Después pregunta quién lo guarda de otra manera, y qué pasó.",
  "slides.quiz.title": "Pregunta {number}",
  "slides.quiz.notes": "Deja que todos elijan antes de decirlo. La respuesta es {letter}) {choice}",
  "slides.question": "Pregunta al grupo antes de seguir.",
  "slides.invented": "El hogar de este ejemplo es inventado.",
  "slides.lost.title": "Lo perdido hasta cada noche",
  "slides.lost.axis": "Perdido hasta entonces, {unit}",
  "slides.lost.alt":
    "Gráfica de líneas de lo perdido hasta cada noche. {one}: {oneLost} al final. {other}: {otherLost} al final.",
  "slides.fate.title": "Qué pasó con todo al final",
  "slides.fate.axis": "De lo que llegó a casa, {unit}",
  "slides.fate.alt":
    "Barras de lo que se comió, se perdió y sigue en buen estado al final. {one}: {oneLost} de pérdida. {other}: {otherLost} de pérdida.",
  "slides.fate.row": "{eaten}: {eatenWords}. {lost}: {lostWords}. {left}: {leftWords}.",
  "slides.things.title": "Dónde está la diferencia",
  "slides.things.gone": "en mal estado desde la noche {number}: {ending}",
  "slides.things.lost": "{words}; se perdió {lost}",
  "slides.things.none": "Ninguna cosa por sí sola cambia mucho.",
  "slides.close.title": "Para llevar a casa",
  "slides.close.notes":
    "Da las gracias. Reparte las hojas. Pide a cada persona que nombre una cosa que hará de otra manera esta semana.",
  "slides.kilograms": "kg",
  "slides.pounds": "lb",
  "twoWaysPaper.evenings": "Noche por noche",
  "twoWaysPaper.evening": "Noche",
  "twoWaysPaper.of": "{side}: {fate}",
  "twoWaysPaper.how": "Cómo se calcula esto",
} as const satisfies Messages;
