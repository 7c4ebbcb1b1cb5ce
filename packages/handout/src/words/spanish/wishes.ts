import type { Messages } from "../message.js";

/** Lo que se quiere para un día, y qué pasa con eso. */
export const wishSpanish = {
  "heading.wishes": "Para un día fijo",

  "wanted.by": "a más tardar el {date}",
  "wanted.on": "para el {date}",
  "wanted.from": "no antes del {date}",
  "wanted.after": "después del {date}",

  "wish.met": "{name}, {wanted}: debe estar a punto hacia el {ready}, y aún en buen estado ese día.",
  "wish.metAlready": "{name}, {wanted}: ya llegó a punto, y debe seguir en buen estado.",
  "wish.ripens too slowly":
    "{name}, {wanted}: lo más probable es que no esté a tiempo. Con el plan estará a punto hacia el {ready}; por sí solo, en esta cocina, hacia el {best} lo más pronto.",
  "wish.neverReady": "{name}, {wanted}: en esta cocina no va a madurar.",
  "wish.keeps too short": "{name}, {wanted}: es difícil que dure hasta entonces. Come en los días del plan.",
  "wish.other things weigh more":
    "{name}, {wanted}: el plan no lo cumple. Podría, pero se perdería más en otra parte: otra comida, espacio o días sin nadie en casa.",
  "wish.chance":
    "Probabilidad de que salga bien: cerca de {count} de 10. Cada fruta es distinta: mira y toca.",
  "wish.chanceReady": "Probabilidad de que salga bien: cerca de {count} de 10.",
  "wish.chanceHigh": "Probabilidad de que salga bien: más de 9 de 10.",
  "wish.chanceLittle": "Probabilidad de que salga bien: menos de 1 de 10.",
  "wish.noRipening": "Esto no madura después de la cosecha: esperar no lo cambia.",

  // En lo que se entendió
  "lot.wanted.by": "{name}, a más tardar {day}",
  "lot.wanted.on": "{name}, para {day}",
  "lot.wanted.from": "{name}, desde {day}",
  "lot.wanted.after": "{name}, más tarde que {day}",
  "day.weekday": "el {weekday}",
  "day.date": "el {date}",
  "day.today": "hoy",
  "day.tomorrow": "mañana",
  "day.ahead": "dentro de {count} días",
} as const satisfies Messages;
