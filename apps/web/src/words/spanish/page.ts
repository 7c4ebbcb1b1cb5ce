/** Nombre, avisos y palabras que comparten todas las pantallas. */
export const pageSpanish = {
  "page.name": "Keepwright",
  "page.lead": "Dónde va cada cosa, cómo guardarla y qué comer primero.",
  "page.private": "Se calcula en este aparato. No se envía nada a nadie.",
  "page.opening": "Abriendo la lista de productos…",
  "page.noFigures":
    "No se pudieron abrir los datos de los productos. Lo que escribiste queda guardado en este aparato: abre la página otra vez cuando haya conexión.",
  "page.notKept":
    "Este aparato no pudo guardar tu lista (no queda espacio o el guardado está apagado). Sigue en esta página hasta que la cierres; copia el texto para no perderlo.",
  "page.newer": "Hay una versión más nueva de esta página. Lo que escribiste se queda.",
  "page.takeNewer": "Abrir la versión nueva",
  "number.wrong": "“{typed}” no sirve. Escribe un número entero de {least} a {most}.",
  "screens.label": "Pantallas",
  "screen.unpack": "Desempacar",
  "screen.kitchen": "Mi cocina",
  "screen.mine": "Como lo tengo",
  "screen.ways": "Comparar",
  "screen.ask": "Preguntar",
  "screen.class": "Clase",
  "screen.settings": "Ajustes",
  "screen.title": "{screen} · Keepwright",
  "screen.opening": "Abriendo…",
} as const;
