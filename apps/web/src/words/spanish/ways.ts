import type { waysEnglish } from "../english/ways.js";

/** La misma compra de dos maneras, noche por noche. */
export const waysSpanish = {
  "ways.title": "La misma compra, de dos maneras",
  "ways.noHaul": "Escribe primero lo que llegó a casa. Después mira aquí qué pasa con todo.",
  "ways.waiting": "Se está calculando …",
  "ways.ranges": "Se calcula qué tan seguro es …",
  "ways.problem": "No se pudo calcular: {problem}",
  "ways.stopped": "se detuvo antes de terminar. Abre la página de nuevo; lo que escribiste se conserva.",
  "ways.against": "Junto al plan",
  "ways.against.refrigerator": "Todo en el refrigerador, sin orden",
  "ways.against.counter": "Todo en la mesa de la cocina, sin orden",
  "ways.against.told": "Como lo tengo",
  "ways.steps": "Noches",
  "ways.before": "Noche anterior",
  "ways.next": "Noche siguiente",
  "ways.slider": "Noche",
  "ways.play": "Pasar despacio",
  "ways.stop": "Parar",
  "ways.legend": "Relleno: se comió. Vacío: aún en buen estado. Rayado: se perdió.",
  "ways.how": "Cómo se calcula esto",
  "ways.keys": "Con las flechas, Av Pág, Re Pág o deslizando el dedo se pasa de noche en noche.",
} as const satisfies Record<keyof typeof waysEnglish, string>;
