import type { Messages } from "../message.js";

/** Qué pasa con un plan si se hace muchas veces en el modelo. */
export const drawsSpanish = {
  "heading.draws": "Qué tan seguro es",
  "draws.how":
    "{count, plural, one {El modelo hizo el plan # vez, con temperaturas, edades al llegar, suerte de cada cosa y comidas atrasadas al azar (semilla {seed}).} other {El modelo hizo el plan # veces, cada vez con otras temperaturas, otra edad al llegar, otra suerte de cada cosa y otras comidas atrasadas (semilla {seed}).}}",
  "draws.waste":
    "Se pierde: {mean} en promedio. En 8 de cada 10 casos fue de {low} a {high}; en la mitad, menos de {median}.",
  "draws.unsorted":
    "Con todo sin orden en el refrigerador, en los mismos casos: {mean} en promedio; en 8 de cada 10 casos, de {low} a {high}.",
  "draws.saved":
    "Caso por caso, el plan salvó {mean} en promedio (con un margen de {error}); en 8 de cada 10 casos, de {low} a {high}.",
  "draws.savedOrLost":
    "Caso por caso, el plan salvó {mean} en promedio (con un margen de {error}); en 8 de cada 10 casos, entre {low} más de pérdida y {high} menos.",
  "draws.lost": "Caso por caso, con el plan se perdió más: {mean} en promedio (con un margen de {error}).",
  "draws.better": "Se perdió menos que sin orden en {better} de los casos, y más en {worse}.",
  "draws.lot": "{name}: {share} se come a tiempo (el plan cuenta con {claimed}).",
  "draws.rest": "Se come a tiempo en {share} de los casos o más: {names}.",
  "draws.unripe": "{name}: en {share} de los casos aún sin madurar en su día.",
  "draws.note":
    "Esto es lo que pasa en el modelo, no en cocinas de verdad. Allí el plan se hizo tal como está escrito. Si miras y comes primero lo que se pasa, se pierde menos. Los límites de salud se cuidaron con el frío que dice la cocina: revisa con un termómetro.",
} as const satisfies Messages;
