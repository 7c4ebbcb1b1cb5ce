import type { Messages } from "../message.js";

/** Lo que la línea de comandos dice al lado de sus respuestas. */
export const commandLineSpanish = {
  "door.haul.words": "La compra se leyó de las palabras del comando.",
  "door.haul.input": "La compra se leyó de la entrada estándar.",
  "door.haul.file": "La compra se leyó del archivo {file}.",
  "door.haul.no file": "La compra se leyó de las palabras del comando: no hay archivo con el nombre {file}.",
  "door.list.words": "La lista se leyó de las palabras del comando.",
  "door.list.input": "La lista se leyó de la entrada estándar.",
  "door.list.file": "La lista se leyó del archivo {file}.",
  "door.list.no file": "La lista se leyó de las palabras del comando: no hay archivo con el nombre {file}.",
  "door.plan.words": "El plan se leyó de las palabras del comando.",
  "door.plan.input": "El plan se leyó de la entrada estándar.",
  "door.plan.file": "El plan se leyó del archivo {file}.",
  "door.plan.no file": "El plan se leyó de las palabras del comando: no hay archivo con el nombre {file}.",
  "door.takenFor": "{typed} se toma por {name}.",
  "door.warning": "Aviso: {finding}",
  "door.kitchenFine": "{file} sirve para hacer planes.",

  "progress.plan": "Se calcula el plan …",
  "progress.draws": "Se hace {count} veces …",
  "progress.proof": "Se busca cuánto podría mejorar …",
  "progress.why": "Se miran otros lugares …",
  "progress.judge": "Se revisa cómo está todo …",
  "progress.improve": "Se prueban cambios, cada uno con su plan …",
  "progress.buy": "Se prueban cantidades, cada una con su plan …",
  "progress.carry on": "Se sigue con el plan …",
} as const satisfies Messages;
