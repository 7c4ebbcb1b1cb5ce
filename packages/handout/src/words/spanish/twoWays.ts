import type { twoWaysWords } from "../english/twoWays.js";

/** La misma compra de dos maneras, noche por noche. */
export const twoWaysSpanish = {
  "twoWays.title": "La misma compra, de dos maneras",
  "twoWays.lead": "Llegaron a casa {brought}. Noche por noche, esto es lo que pasa con todo.",
  "twoWays.rule.refrigerator":
    "Sin orden: todo va al refrigerador tal como se compró, sin envoltura, en el orden en que se nombró. Primero se llenan las repisas, luego el resto del refrigerador y después la cocina. Nadie toca una rejilla. Esta regla es declarada y no tiene fuente: no es un recuento de lo que hace la gente.",
  "twoWays.rule.counter":
    "Sin orden: todo queda sobre la mesa de la cocina tal como se compró, sin envoltura, en el orden en que se nombró. Primero se llena la mesa, luego el resto de la cocina y después el refrigerador. Nadie toca una rejilla. Esta regla es declarada y no tiene fuente: no es un recuento de lo que hace la gente.",
  "twoWays.rule.as told":
    "Como está: todo queda como se dijo, y lo que no se dijo queda donde más le conviene.",
  "twoWays.same":
    "De las dos maneras, lo cortado se guarda al frío y con tapa, y las mismas personas comen al mismo ritmo, cada cosa el día que más le conviene; una de cada {late} porciones se come con {days} días de atraso. La única diferencia es dónde están las cosas, en qué, y qué se les hace antes.",
  "twoWays.model": "Todo esto lo calcula el modelo. No se midió en una cocina de verdad.",
  "twoWays.draws":
    "{count, plural, one {Los rangos vienen de llevar a cabo las dos maneras # vez en el modelo.} other {Los rangos vienen de llevar a cabo las dos maneras # veces en el modelo, con temperaturas, edades, suerte y comidas atrasadas al azar: en 8 de cada 10 casos estuvo entre las dos cifras.}}",
  "twoWays.unsorted": "Sin orden",
  "twoWays.told": "Como está",
  "twoWays.planned": "Con plan",
  "twoWays.eveningOn": "Noche {number}: {date}",
  "twoWays.evening": "Noche {number}",
  "twoWays.afterwards": "Después: lo que sobra",
  "twoWays.after.short": "luego",
  "twoWays.after": "Tras {days, plural, one {un día} other {# días}}: {date}, lo que sobra",
  "twoWays.eaten": "Se comió",
  "twoWays.lost": "Se perdió",
  "twoWays.left": "Aún en buen estado",
  "twoWays.figure": "{value} ({range})",
  "twoWays.mostly": "casi siempre {range}",
  "twoWays.state.not ripe": "aún sin madurar",
  "twoWays.state.good": "en buen estado",
  "twoWays.state.going": "quizá ya en mal estado: {ending}",
  "twoWays.state.past its best": "en mal estado: {ending}",
  "twoWays.state.eaten": "todo se comió",
  "twoWays.state.mostly eaten": "se comió la mayor parte",
  "twoWays.thing": "Cosa",
  "twoWays.heading.lots": "Cosa por cosa",
  "twoWays.told.evening":
    "{evening}. {one}: comido, {oneEaten}; perdido, {oneLost}. {other}: comido, {otherEaten}; perdido, {otherLost}.",
  "twoWays.none": "nada",
  "twoWays.sum": "Lo perdido al final, de {brought}. {one}: {oneLost}. {other}: {otherLost}.",
} as const satisfies Record<keyof typeof twoWaysWords, string>;
