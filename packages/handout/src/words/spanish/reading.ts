import type { Messages } from "../message.js";

/** Lo que se entendió de una compra, y lo que hay que preguntar. */
export const readingSpanish = {
  "reading.lot": "“{typed}” → {lot}",
  "lot.line": "{name}, {amount}",
  "lot.lineAssuming": "{name}, {amount} (se da por hecho: {assumed})",
  "lot.assumed": "Se da por hecho: {assumed}.",
  "reading.notUnderstood": "“{typed}” → no se entendió",
  "reading.notPlanned": "“{typed}” → así no entra en el plan",
  "lot.daysAgo": "{count, plural, one {{name}, de hace # día} other {{name}, de hace # días}}",
  "assumed.usual amount": "la cantidad usual",
  "assumed.usual size": "el tamaño usual",
  "assumed.usual ripeness": "la madurez usual",
  "assumed.whole": "que está sin cortar",
  "assumed.spelling": "cómo se escribe",
  "assumed.cut, because half of one": "que es un trozo",
  "assumed.cut today": "que se cortó hoy",
  "assumed.rounded amount": "una cantidad redonda",
  "assumed.weight from volume": "el peso, según el volumen",
  "ask.which commodity": "“{word}”: ¿qué es? Puede ser {candidates}.",
  "ask.which commodity.none": "“{word}”: ¿qué es?",
  "ask.unsafe or other.raw sprouts":
    "“{word}”: los germinados crudos no entran en el plan. Guarda a 4 °C (40 °F) o menos y cuece muy bien antes de comer. Si son coles de Bruselas, escribe “coles de Bruselas”.",
  "ask.unsafe or other.wild mushrooms":
    "“{word}”: los hongos del campo no entran en el plan. Come solo los que un experto vio y nombró. Si son hongos de cultivo, escribe “champiñones”.",
  "ask.unsafe or other.rhubarb leaves":
    "“{word}”: las hojas del ruibarbo son veneno, crudas o cocidas. Tíralas. Si son los tallos, escribe “ruibarbo”.",
  "ask.unsafe or other.in oil":
    "“{word}”: el ajo, las hierbas o las verduras en aceite no son frescos y pueden criar gérmenes peligrosos. Si es de casa, ponlo en el refrigerador de inmediato, come antes de cuatro días y no lo dejes fuera del frío. Si es de la tienda, sigue la etiqueta.",
  "ask.unsafe or other.rotten":
    "“{word}”: tira lo podrido y revisa lo que estaba al lado. Lo sano va en otro renglón.",
  "ask.unsafe or other.slimy":
    "“{word}”: tira lo baboso y revisa lo que estaba al lado. Lo sano va en otro renglón.",
  "ask.unsafe or other.fermenting": "“{word}”: tira lo que ya fermenta solo. Lo sano va en otro renglón.",
  "ask.unsafe or other.mouldy":
    "“{word}”: tira toda pieza con moho, aunque la mancha sea chica, y no la huelas. Revisa lo que estaba al lado. Lo sano va en otro renglón.",
  "ask.unsafe or other.mouldy firm":
    "“{word}”: es duro, así que corta al menos 2.5 cm (1 pulgada) alrededor y por debajo del moho. Que el cuchillo no toque el moho. Si está blando, o con moho en muchas partes, tira todo. ¿Queda algo sano para el plan? Entonces ponlo como “en trozos”.",
  "ask.unsafe or other.green potatoes":
    "“{word}”: corta todo lo verde y todos los brotes. Tira las papas muy verdes o que amargan. ¿Entra el resto en el plan?",
  "ask.unsafe or other.sprouted potatoes":
    "“{word}”: corta todos los brotes y todo lo verde. Tira las papas muy verdes o que amargan. ¿Entra el resto en el plan?",
  "ask.unsafe or other.sprouted":
    "“{word}”: ya le salen brotes, así que es viejo y un plan diría que dura de más. Usa esto primero. ¿Entra en el plan de todos modos?",
  "ask.unsafe or other.cooked":
    "“{word}”: lo cocido no entra en el plan. Ponlo en el refrigerador antes de dos horas y sigue lo que diga la autoridad de salud de tu zona.",
  "ask.unsafe or other.frozen":
    "“{word}”: lo congelado no entra en el plan. Que siga congelado; sigue la etiqueta.",
  "ask.unsafe or other.tinned":
    "“{word}”: lo que viene en lata, frasco o botella no entra en el plan. Sigue la etiqueta. Una vez abierto, guarda en el refrigerador, fuera de la lata.",
  "ask.unsafe or other.dried": "“{word}”: lo seco no entra en el plan. Que no se moje; sigue la etiqueta.",
  "ask.unsafe or other.juice": "“{word}”: el jugo no entra en el plan. Guarda en frío y sigue la etiqueta.",
  "ask.unsafe or other.pickled":
    "“{word}”: lo que está en vinagre o fermentado no entra en el plan. Sigue la etiqueta o una receta probada.",
  "ask.unsafe or other.made from it":
    "“{word}”: esto se hace con fruta o verdura y no entra en el plan; solo entra lo fresco. Sigue la etiqueta.",
  "ask.unsafe or other.no produce":
    "“{word}”: no es fruta ni verdura fresca, así que no entra en el plan. Keepwright solo trata de fruta y verdura frescas.",
  "ask.what is this":
    "“{word}”: no se conoce fruta ni verdura con ese nombre. ¿Está bien escrito, o tiene otro nombre?",
  "ask.too many lots": "“{word}”: es más de lo que cabe en un plan (60 cosas). Haz dos planes.",
  "ask.how much.no amount": "“{word}”: ¿cuánto es?",
  "ask.how much.zero": "“{word}”: la cantidad es cero. ¿Cuánto es?",
  "ask.how much.negative": "“{word}”: no puede haber menos que nada. ¿Cuánto es?",
  "ask.how much.too large": "“{word}”: es más de lo que cabe en una casa. ¿Cuánto es?",
  "ask.how much.unknown unit": "“{word}”: no se conoce esa medida. ¿Cuánto es, en piezas o en peso?",
  "ask.how much.known units":
    "“{word}”: aquí no se conoce esa medida. ¿Cuánto es, en peso o en una de estas: {units}?",
  "ask.when wanted":
    "“{word}”: ¿para qué día, y de qué? Escribe un día (“para el viernes”), “en 4 días” o una fecha como 2026-06-19.",
  "ask.how old":
    "“{word}”: ¿hace cuántos días se compró o se cortó? Escribe por ejemplo “cortado hace 2 días” o “ayer”. Lo que está en trozos no entra en el plan hasta saber eso; en caso de duda, tira.",
  "ask.how much.contradictory": "“{word}”: las cantidades no van juntas. ¿Cuánto es?",
} as const satisfies Messages;
