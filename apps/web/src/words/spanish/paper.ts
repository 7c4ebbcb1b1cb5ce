/** Cosas para llevarse de la página: una hoja para la puerta, etiquetas, un calendario. */
export const paperSpanish = {
  "paper.heading": "Para imprimir y llevar",
  "paper.close": "Cerrar",
  "paper.sheet": "Una hoja para la puerta del refrigerador",
  "paper.sheetAbout": "Dónde va cada cosa, qué comer primero, qué mover. Es un PDF para imprimir.",
  "paper.size": "Papel",
  "paper.size.a4": "A4",
  "paper.size.letter": "Carta",
  "paper.large": "Letra grande, en tantas páginas como haga falta",
  "paper.makeSheet": "Guardar la hoja",
  "paper.labels": "Etiquetas para bolsas y cajas",
  "paper.labelsAbout":
    "Qué es, hasta cuándo está bien, dónde va. Imprime a tamaño real (100 %). Mide antes tu hoja de etiquetas.",
  "paper.grid": "Hoja de etiquetas",
  "paper.gridName": "{page}: {width} × {height} mm, {columns} × {rows}",
  "paper.start": "Primera etiqueta libre",
  "paper.outlines": "Dibujar los bordes, para probar en papel común",
  "paper.makeLabels": "Guardar las etiquetas",
  "paper.calendar": "Los días para tu calendario",
  "paper.calendarAbout":
    "Qué comer, mover y tirar cada día. Un archivo que abren los programas de calendario (iCalendar).",
  "paper.remind": "Aviso",
  "paper.remind.none": "Ninguno",
  "paper.remind.same": "El mismo día a las 8:00",
  "paper.remind.before": "La tarde anterior a las 18:00",
  "paper.makeCalendar": "Guardar los días",
  "paper.print": "Imprimir con el navegador (se ve distinto)",
  "paper.working": "Haciendo la página…",
  "paper.first": "La primera vez hace falta la red ({size} MB). Después ya no.",
  "paper.saved":
    "{count, plural, one {Se guardó: {name} (# página).} other {Se guardó: {name} (# páginas).}}",
  "paper.savedDays": "Se guardó: {name}.",
  "paper.unreachable":
    "Lo que hace la página todavía no está en este aparato, y no hay red. Conéctate una vez ({size} MB) y prueba de nuevo, o imprime con tu navegador.",
  "paper.unprintable":
    "No hay letras para imprimir {characters}. Nombra la cocina y sus lugares con letras latinas o cirílicas.",
  "paper.wrong": "No se pudo hacer la página: {problem}",
  "paper.saveDocument": "Guardar como PDF: {title}",
  "paper.file.sheet": "hoja-para-la-puerta-{date}.pdf",
  "paper.file.labels": "etiquetas-{date}.pdf",
  "paper.file.calendar": "dias-{date}.ics",
} as const;
