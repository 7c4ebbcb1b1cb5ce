/** Deshacer y rehacer, y cómo se llama cada paso. El nombre del paso va dentro de «Deshacer: {step}». */
export const historySpanish = {
  "history.label": "Deshacer y rehacer",
  "history.undo": "Deshacer",
  "history.redo": "Rehacer",
  "history.undoStep": "Deshacer: {step}",
  "history.redoStep": "Rehacer: {step}",
  "history.undone":
    "Se deshizo: {step}. {left, plural, one {Queda un paso por deshacer.} other {Quedan # pasos por deshacer.}}",
  "history.redone": "Se rehizo: {step}.",
  "history.otherTab":
    "Otra pestaña cambió la lista en el mismo momento. Lo que escribió no se perdió: vuelve con “Deshacer”.",
  "history.thisVisit":
    "Este aparato guarda tu lista, pero no los pasos anteriores (su base de datos está llena o apagada): “Deshacer” sirve hasta que cierres la página.",
  "history.asides":
    "{count, plural, one {Un registro de este aparato no se pudo usar entero. Se apartó tal como estaba.} other {# registros de este aparato no se pudieron usar enteros. Se apartaron tal como estaban.}}",
  "history.toAsides": "Ver lo que se apartó",
  "step.typed":
    "{lines, plural, one {escribir “{words}”} other {escribir “{words}” y más, # líneas en total}}",
  "step.erased": "{lines, plural, one {quitar “{words}”} other {quitar “{words}” y más, # líneas en total}}",
  "step.rewritten":
    "{lines, plural, one {reescribir “{words}”} other {reescribir “{words}” y más, # líneas en total}}",
  "step.over another tab":
    "{lines, plural, one {escribir “{words}” sobre otra pestaña} other {escribir “{words}” y más, # líneas en total, sobre otra pestaña}}",
  "step.corrected": "cambiar {words}",
  "step.left out": "dejar fuera {words}",
  "step.as read": "volver a lo leído en {words}",
  "step.own kitchen": "describir la cocina “{words}”",
  "step.forget kitchen": "olvidar la cocina “{words}”",
  "step.chosen": "poner {words} en otro lugar",
  "step.released": "dejar {words} como diga el plan",
  "step.kitchen": "elegir otra cocina",
  "step.people": "cambiar las personas",
  "step.days": "cambiar los días",
  "step.portions": "cambiar las porciones por día",
  "step.away": "cambiar los días fuera",
  "step.units": "cambiar las unidades",
  "step.language": "cambiar el idioma",
  "step.region": "cambiar fechas y números",
  "step.done": "marcar como hecho",
  "step.not done": "quitar la marca",
  "step.lying": "cambiar dónde está cada cosa",
  "step.cleared": "vaciar la lista",
  "step.example": "abrir el ejemplo",
  "step.file": "abrir un archivo guardado",
  "step.recovered": "traer otra copia",
  "step.went back": "volver atrás",
  "step.from": "cambiar el día en que llegó a casa",
  "step.class": "cambiar lo que se pide para una clase",
  "step.missed": "marcar algo como no hecho",
  "step.not missed": "marcar algo como hecho",
  "step.other": "el último cambio",
  "step.forgotten": "olvidar todo",
} as const;
