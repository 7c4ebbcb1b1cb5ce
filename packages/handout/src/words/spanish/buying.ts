import type { Messages } from "../message.js";

/** Cuánto conviene comprar de una lista. */
export const buyingSpanish = {
  "buying.title": "Lo que conviene comprar, del {from} al {to}",
  "heading.buy": "Qué comprar",
  "heading.leaveUnbought": "Deja para otra vez",
  "heading.buySaves": "Lo que ganas así",
  "heading.buyHow": "Cómo se calculó",

  "buying.all": "{name}: {amount}, todo lo de tu lista.",
  "buying.less.no room": "{name}: {amount} en vez de {wished}. Para más no hay lugar donde dure.",
  "buying.less.too much for the table": "{name}: {amount} en vez de {wished}. En estos días no se come más.",
  "buying.less.goes first": "{name}: {amount} en vez de {wished}. Lo demás se pasa antes de que se coma.",
  "buying.none.no room": "{name}, {wished}: no hay lugar donde dure.",
  "buying.none.too much for the table": "{name}, {wished}: en estos días ya hay bastante que comer.",
  "buying.none.goes first": "{name}, {wished}: se pasa antes de que se coma.",
  "buying.none.instead": "Nada de esta lista conviene para esta cocina y estos días.",

  "buying.allWorth": "Conviene comprar toda la lista: se perderán cerca de {waste}.",
  "buying.saves":
    "Con toda la lista se pierden cerca de {all}; con esta, cerca de {bought}: son unos {gain} menos (de {low} a {high}).",
  "buying.savesUpTo":
    "Con toda la lista se pierden cerca de {all}; con esta, cerca de {bought}: son unos {gain} menos (hasta {high}).",
  "buying.noSaving":
    "Con toda la lista se pierden cerca de {all}; con esta, cerca de {bought}: esta lista no salva nada.",
  "buying.eatLess": "Tiene un precio: en estos días se comen cerca de {mass} menos en su mejor punto.",
  "buying.eatMore":
    "Y se comen cerca de {mass} más en su mejor punto: menos cosas se pasan mientras esperan su turno.",
  "buying.eatSame": "En estos días se come casi lo mismo en su mejor punto que con toda la lista.",

  "buying.how.rule":
    "Otra pieza, otro manojo u otros {step} convienen si se come más de lo que se pierde. Es una regla nuestra: no tiene fuente.",
  "buying.how.left":
    "No se compra lo que solo quedaría al final, aún bueno: la próxima vez hay fresco. Si te gusta tener de más, cómpralo.",
  "buying.how.range":
    "Las cifras entre paréntesis valen en cerca de 8 de cada 10 casos. Cuentan cuánto cambia el plan según cómo empieza (aquí hasta {noise}) y lo que no se sabe de cuánto dura cada cosa.",
} as const satisfies Messages;
