import type { Messages } from "../message.js";

/** Cuánto salvaría un solo cambio. */
export const improveSpanish = {
  "improve.title": "Lo que más ayuda, del {from} al {to}",
  "improve.asItIs": "Hoy, con el mejor plan hallado, el desperdicio esperado es: {waste}.",
  "improve.littleWasted":
    "Hoy casi no se espera desperdicio (menos de {least}): ningún cambio puede salvar más que eso.",
  "heading.helps": "Lo que más ayuda",
  "heading.helpsLittle": "No es seguro que ayude",
  "heading.improveHow": "Cómo se calculó",
  "improve.noneMatters": "Ninguno de estos cambios importa para esta compra.",
  "improve.gain": "{change}: se pierden cerca de {gain} menos (de {low} a {high}).",
  "improve.gainUpTo": "{change}: se pierden cerca de {gain} menos (de casi nada a {high}).",
  "improve.gainFewer":
    "{change}: se pierden cerca de {gain} menos (de {low} a {high}) y se comen en su punto cerca de {eaten} menos.",
  "improve.worthBuying":
    "{change}: se pierden cerca de {gain} menos, pero se comen en su punto cerca de {eaten} menos.",
  "improve.nothingToLeave": "Compra una cosa menos: aquí nada se pierde más de lo que se come.",
  "improve.mayGain": "{change}: quizá se pierdan {gain} menos, quizá nada.",
  "improve.worse": "{change}: se pierden cerca de {loss} más.",
  "improve.noGain": "{change}.",

  "improve.do.temperature": "Pon el refrigerador a {to} en vez de {from}",
  "improve.do.temperatureOf": "Pon el refrigerador “{name}” a {to} en vez de {from}",
  "improve.do.vent.open": "Abre la rejilla de “{place}”",
  "improve.do.vent.half": "Pon la rejilla de “{place}” a la mitad",
  "improve.do.vent.closed": "Cierra la rejilla de “{place}”",
  "improve.do.lidded boxes at hand": "Ten a la mano cajas con tapa",
  "improve.do.paper bags at hand": "Ten a la mano bolsas de papel",
  "improve.do.drawer": "Pon otro cajón con rejilla, de {litres}, en la repisa del refrigerador",
  "improve.do.drawerOf": "Pon otro cajón con rejilla, de {litres}, en la repisa del refrigerador “{name}”",
  "improve.do.topped": "Pide en la tienda que quiten las hojas: {names}",
  "improve.do.portion": "Que cada persona coma una porción más al día ({to} en vez de {from})",
  "improve.do.twice": "Compra en dos veces; deja esto para el {date}: {names}",
  "improve.do.twice.mass": "{mass} de {name}",
  "improve.do.twice.pieces": "{pieces} {name}",
  "improve.do.lot": "Compra una cosa menos; mejor esta: {name}, {amount}",

  "improve.how.one":
    "Cada cambio se probó solo, con su propio plan. No se suman: después de uno, los otros salvan más o menos.",
  "improve.how.range":
    "Las cifras entre paréntesis valen en cerca de 8 de cada 10 casos. Cuentan cuánto cambia el plan según cómo empieza (aquí hasta {noise}) y lo que no se sabe de cuánto dura cada cosa.",
  "improve.how.rule": "Un cambio cuenta si salva al menos {least} y si hasta su cifra más baja salva algo.",
  "improve.how.fewer":
    "Lo que no se compra tampoco se come. Comprar una cosa menos solo cuenta si se perdería más de ella de lo que se come en su punto.",
  "improve.how.twice":
    "Para comprar en dos veces se hicieron dos planes, uno tras otro. Lo que queda del primero pasa al segundo con la edad que tiene entonces.",
} as const satisfies Messages;
