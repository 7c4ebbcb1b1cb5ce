import type { SomeMessages } from "../spanish.js";

/** Envolturas, nombres de lotes y lo que se hace antes de guardar. */
export const planSpanish = {
  "wrap.none": "sin envolver",
  "wrap.paper bag": "en bolsa de papel, con la boca doblada",
  "wrap.perforated bag": "en bolsa con hoyitos",
  "wrap.closed film bag": "en bolsa de plástico cerrada",
  "wrap.damp towel": "en un paño húmedo",
  "wrap.beeswax cloth": "en tela con cera de abeja",
  "wrap.foil": "en papel de aluminio",
  "wrap.lidded box": "en caja con tapa",
  "wrap.glass of water": "de pie en un vaso con agua",

  "lot.part": "{name}, parte {part} de {parts}",
  "lot.cut": "{name} en trozos",
  "lot.tops": "{name} con hojas",
  "lot.now.unripe": "{name} sin madurar",
  "lot.now.turning": "{name} a medio madurar",
  "lot.now.nearly ripe": "{name} casi a punto",
  "lot.now.ripe": "{name} a punto",
  "lot.now.very ripe": "{name} muy a punto",
  "lot.came.unripe": "{name} (al llegar: sin madurar)",
  "lot.came.turning": "{name} (al llegar: a medio madurar)",
  "lot.came.nearly ripe": "{name} (al llegar: casi a punto)",
  "lot.came.ripe": "{name} (al llegar: a punto)",
  "lot.came.very ripe": "{name} (al llegar: muy a punto)",

  "prepare.do.keep dry and unwashed": "guarda en seco y no laves todavía.",
  "prepare.do.twist off leaves": "quita las hojas.",
  "prepare.do.trim stem ends": "corta la punta de los tallos.",
  "prepare.do.remove bands and bruised leaves": "quita las ligas y las hojas dañadas.",
  "prepare.do.dry well": "seca bien antes de guardar.",
  "prepare.do.keep husk on": "deja puesta la cáscara de hojas.",
  "prepare.do.keep in the dark": "guarda donde no dé la luz.",
  "prepare.do.cure first": "deja que la piel se seque y se ponga dura antes de guardar.",
  "prepare.do.sort out damaged pieces": "separa las piezas dañadas y come esas primero.",
  "prepare.do.wrap crown": "envuelve la corona.",
  "prepare.do.keep on the vine": "deja en la rama lo que vino en rama.",
  "prepare.do.wash just before use": "lava justo antes de comer, no ahora.",
  "prepare.do.leave whole": "no cortes hasta que lo vayas a usar.",
  "prepare.do.break up bunch": "separa el manojo.",
  "prepare.do.remove from sealed bag": "saca de la bolsa cerrada.",

  "eat.throwAway": "Tira lo que quede de {name} después del {date}.",
  "life.atOnce":
    "Come antes de dos horas (una hora si hace más de 32 °C o 90 °F) y tira lo demás. En un refrigerador a 5 °C (41 °F) o menos, esto sí dura.",
} as const satisfies SomeMessages;
