import type { Messages } from "../message.js";

/** Lo que está mal en un archivo, en cómo está todo, en una cocina o en una fila, y cómo se corrige. */
export const fileFindingsSpanish = {
  "file.at": "{whole} {at}",
  "file.nothing": "no hay nada",
  "file.whole.kitchen": "cocina",
  "file.whole.haul": "compra",
  "file.whole.arrangement": "cómo está todo",
  "file.whole.happened": "lo que pasó",
  "file.whole.household": "hogar",
  "file.whole.plan": "plan hecho",
  "file.whole.row": "fila",
  "file.kind.string": "un texto entre comillas",
  "file.kind.number": "un número",
  "file.kind.int": "un número entero",
  "file.kind.boolean": "true o false",
  "file.kind.array": "una lista entre [ ]",
  "file.kind.object": "un grupo de campos entre '{' '}'",
  "finding.arrangement empty":
    "Cómo está todo: no dice nada. Di dónde está al menos una cosa, o cómo está una rejilla.",
  "finding.lies said twice":
    "{lotNamed}: se dice {times} veces dónde está. Dilo una vez, o da a cada lugar su parte, “share”, que juntas sumen 1.",
  "finding.shares not whole":
    "{lotNamed}: sus partes suman {sum}. Di dónde está todo: las partes deben sumar 1.",
  "finding.share too small":
    "{lotNamed}: una parte es tan chica que no se puede separar. Da partes en pasos de cerca de {step}, o deja todo en un lugar.",
  "finding.vent set twice": "Rejilla de {place}: se dice más de una vez cómo está. Dilo una vez por rejilla.",
  "finding.place without vent": "Rejilla de {place}: ese lugar no tiene rejilla. Quítala de las rejillas.",
  "finding.vent always so":
    "Rejilla de {place}: en esta cocina siempre está {fixed}, y dices que está {setting}. Pon “{fixed}”, o di en el archivo de la cocina que se puede mover.",
  "finding.moves when ripe in vain":
    "{lotNamed}: debe cambiar de lugar al madurar, pero ya no madura. Da un día, o quita “later”.",
  "finding.day beside when ripe": "{lotNamed}: hay un día al lado de “ripe”. Quita “day”.",
  "finding.day of move not given":
    "{lotNamed}: falta el día en que cambia de lugar. Da “day”, un número entero de 1 a {last}: días después del primero.",
  "finding.day of move too late":
    "{lotNamed}: el día {asked} no es antes del día {days}, el fin de lo que se mira. Da “day”, un número entero de 1 a {last}: días después del primero.",
  "finding.no day to move on": "{lotNamed}: solo se mira un día. Quita “later”.",
  "finding.done but not needed":
    "{lotNamed}: {done} aparece como hecho, y no había nada de eso que hacer. Quítalo de “done”.",
  "finding.nothing said of lot":
    "{lot}: no se dice nada. Di qué pasó, por ejemplo “eaten”: “all”, o quítalo.",
  "finding.left beside gone":
    "{lot}: “left” está al lado de {fields}. Di lo que queda o lo que ya no hay, solo una de las dos cosas.",
  "finding.since alone":
    "{lot}: “since” está sin más. Di dónde está (“place”) o qué lo envuelve (“wrap”), o quita “since”.",
  "finding.vent cannot be set":
    "Rejilla de {place}: ese lugar no tiene rejilla que se pueda mover. Quítala, o di en el archivo de la cocina que se puede mover.",
  "finding.warm refrigerator":
    "Refrigerador “{id}”: {celsius} °C. Ponlo a {value} °C ({fahrenheit} °F) o menos: con más calor, la comida que se puede volver peligrosa no es segura mucho tiempo.",
  "finding.place below freezing":
    "Lugar “{id}”: {celsius} °C. Ahí se congelan algunas frutas y verduras; revisa el termómetro.",
  "finding.counter unlike its room":
    "Lugar “{id}”: {celsius} °C en un cuarto a {room} °C. Una mesa suele estar a la temperatura de su cuarto; revisa las dos.",
  "finding.no refrigerator":
    "Cocina: no hay ningún lugar en un refrigerador. Sin él, lo cortado no se guarda de forma segura; cómelo enseguida.",
  "finding.haul empty": "La compra está vacía. Agrega al menos una fruta o verdura con su cantidad.",
  "finding.lot id twice": "Lote “{id}”: este id se usa más de una vez. Da a cada lote su propio id.",
  "finding.kind not in catalogue":
    "Lote “{id}”: el tipo “{kind}” no está en el catálogo. Busca primero el nombre, y usa su id.",
  "finding.carried from another kitchen":
    "Lote “{id}”: el lugar {place} no está en la cocina. Da la cocina para la que se hizo el plan de antes.",
  "finding.plan of another kitchen":
    "Plan: se hizo para la cocina {made}, y esta es {here}. Da el plan con su compra y su cocina.",
  "finding.plan without lot":
    "Plan, lote “{id}”: está en la compra y no en el plan. Da el plan con su compra y su cocina.",
  "finding.plan of other weight":
    "Plan, lote “{id}”: {planned} g en el plan, {there} g en la compra. Da el plan con su compra y su cocina.",
  "finding.plan of other portions":
    "Plan, lote “{id}”: {planned} porciones en el plan, {there} en la compra. Da el plan con su compra y su cocina.",
  "finding.plan of another kind":
    "Plan, lote “{id}”: “{planned}” en el plan, “{there}” en la compra. Da el plan con su compra y su cocina.",
  "finding.file kind of value": "{where}: {stands}. Debe ser {valueKind}.",
  "finding.file one of": "{where}: {stands}. Escribe {choices}.",
  "finding.file too few": "{where}: {stands}. Pon al menos {least}.",
  "finding.file too many": "{where}: {stands}. Pon como mucho {most}.",
  "finding.file too small": "{where}: {stands}. Escribe {least} o más.",
  "finding.file not above": "{where}: {stands}. Escribe un número mayor que {least}.",
  "finding.file too big": "{where}: {stands}. Escribe {most} o menos.",
  "finding.file text empty": "{where}: {stands}. Escribe algo aquí; no puede estar vacío.",
  "finding.file text too long": "{where}: {stands}. Escríbelo con {most} letras como mucho.",
  "finding.file no such field": "{where}: {stands}. Quita {keys}: ningún campo tiene ese nombre.",
  "finding.file day": "{where}: {stands}. Escribe un día como año-mes-día, por ejemplo 2026-06-13.",
  "finding.file wanted day":
    "{where}: {stands}. Escribe un día de la semana en inglés (“friday”), una fecha (“2026-06-19”) o días enteros desde el primero (de 0 a {most}).",
  "finding.file form":
    "{where}: {stands}. Escríbelo en una de las formas que muestra la guía de cocinas y compras.",
  "finding.file other": "{where}: {stands}. Corrígelo: {why}.",
  "finding.haul not there":
    "La compra está vacía. Escribe lo que llegó a casa, por ejemplo: 1 kg de manzanas, un manojo de cilantro.",
  "finding.haul not understood":
    "No se entendió nada de la compra. Escribe cantidades y nombres, por ejemplo: 1 kg de manzanas, un manojo de cilantro.",
  "finding.list not there":
    "La lista está vacía. Escribe lo que te gustaría comprar, por ejemplo: 1 kg de espinacas, 3 lechugas.",
  "finding.list not understood":
    "No se entendió nada de la lista. Escribe cantidades y nombres de lo que te gustaría comprar, por ejemplo: 1 kg de espinacas, 3 lechugas.",
  "finding.question about it": "{question}",
  "finding.row not data":
    "Fila: {text} no es JSON válido ({why}). Escribe un objeto de JSON por línea, con las palabras de la compra en “haul”: mira keepwright batch --help.",
  "finding.row kitchen not known":
    "Fila, cocina: {kitchen}. Da una de estas: {keys}, o una cocina entera como la imprime “keepwright kitchen ordinary --json”.",
  "finding.row files not written":
    "Fila: no se pueden escribir sus archivos ({fault}). Revisa la carpeta y el espacio en el disco, y da el mismo comando otra vez.",
} as const satisfies Messages;
