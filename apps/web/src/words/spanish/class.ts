import type { classEnglish } from "../english/class.js";

/** Hojas para una clase. */
export const classSpanish = {
  "class.title": "Hojas para una clase",
  "class.lead":
    "Di de qué trata tu clase. Tendrás hojas de respuestas, una hoja de lugares, preguntas y más, para la cocina y las personas que pusiste aquí.",
  "class.kinds": "Productos, uno por línea",
  "class.large": "Letra grande",
  "class.make": "Hacer las hojas",
  "class.working": "Se están haciendo las hojas …",
  "class.made": "{count, plural, one {Una hoja está lista abajo.} other {# hojas están listas abajo.}}",
  "class.wrong": "No se pudieron hacer las hojas: {problem}",
  "class.stopped": "se detuvo antes de terminar.",
  "class.printAll": "Imprimir todas",
  "class.printOne": "Imprimir: {title}",
  "class.sources": "De dónde sale esto",
} as const satisfies Record<keyof typeof classEnglish, string>;
