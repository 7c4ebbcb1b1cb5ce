import type { Messages } from "../../message.js";

/** Consejos que todos oímos y que las pruebas no confirman, dichos con cariño. */
export const mythsSpanish = {
  "myths.title": "¿Será verdad?",
  "myths.subtitle": "Cosas que todos hemos oído",
  "myths.intro":
    "Todos aprendemos esto de gente de confianza. Aquí está lo que dicen las pruebas, y de dónde sale.",
  "myths.none": "Ninguno de los dichos que conocemos toca a estos alimentos y temas.",
  "myths.said": "«{said}»",
  "myths.true": "Lo cierto: {text}",
  "myths.why": "Por qué se piensa así: {text}",
  "myths.figure": "fuente",

  "myth.cold-tomato.said": "El tomate va en el refrigerador.",
  "myth.cold-tomato.true":
    "{count, plural, one {{names}: a menos de unos {degrees} pierden sabor. Basta con # día. Deja fuera lo entero. Lo cortado sí va al frío.} other {{names}: a menos de unos {degrees} pierden sabor. Bastan # días. Deja fuera lo entero. Lo cortado sí va al frío.}}",
  "myth.cold-tomato.why": "El frío frena el moho. Para casi todo lo demás, va bien.",

  "myth.cold-for-all.said": "Todo dura más en el refrigerador.",
  "myth.cold-for-all.true":
    "A algunas cosas el frío les hace daño. Salen manchas o se ponen blandas. Les daña por debajo de: {limits}.",
  "myth.cold-for-all.limit": "{name}, {degrees}",
  "myth.cold-for-all.why": "A casi todas las hojas y bayas sí les va bien.",

  "myth.cold-banana.said": "La banana no va nunca en el refrigerador.",
  "myth.cold-banana.true":
    "La verde no: le daña el frío de menos de unos {degrees}. La madura sí puede. La cáscara se pone negra, pero por dentro sigue buena unos días.",
  "myth.cold-banana.why": "Con la cáscara negra parece que está mala.",

  "myth.cold-potato.said": "La papa dura bien en el refrigerador.",
  "myth.cold-potato.true":
    "El frío la pone dulce. A menos de unos {degrees} se nota ({span}), y al freír se pone negra. Mejor un lugar fresco y sin luz.",
  "myth.cold-potato.why": "Es cierto que el frío frena los brotes.",

  "myth.ripens-later.said": "Toda fruta madura si esperas.",
  "myth.ripens-later.true":
    "{names}: después del corte, esto ya no madura. Se pone blando, pero no dulce. Compra lo que ya está a punto.",
  "myth.ripens-later.why": "La pera y el durazno sí maduran en casa. Es fácil creer que toda fruta lo hace.",

  "myth.cold-ripens.said": "La fruta dura madura en el refrigerador, solo que más lento.",
  "myth.cold-ripens.true":
    "{names}: en el frío, esto deja de madurar. Deja fuera lo que está duro. Al frío va cuando ya está a punto.",
  "myth.cold-ripens.why": "El frío guarda bien la fruta madura. Parece que también sirve para la dura.",

  "myth.gas.said": "La fruta madura puede ir junto a todo.",
  "myth.gas.true":
    "{givers}: sueltan etileno, un gas que hace madurar. En casas con manzanas en el refrigerador había unas {times} veces más de ese gas. Quita días a: {takers}.",
  "myth.gas.why": "El gas no se ve ni se huele.",

  "myth.wash-first.said": "Lava todo en cuanto llegas a casa.",
  "myth.wash-first.true": "{names}: lava justo antes de comer. Con la piel mojada nace el moho.",
  "myth.wash-first.why": "Lavar está bien. Solo falla el momento.",

  "myth.soap.said": "Con jabón queda más limpio.",
  "myth.soap.true": "Usa agua de la llave y nada de jabón. Frota lo firme con un cepillo limpio.",
  "myth.soap.why": "El jabón va bien para manos y platos.",

  "myth.mould-soft.said": "Quita el moho y come el resto.",
  "myth.mould-soft.true":
    "{names}: esto es blando. Tira la pieza entera, aunque sea poca la mancha. No la huelas. Mira las de al lado.",
  "myth.mould-soft.why": "Solo se ve una mancha, y a nadie le gusta tirar comida.",

  "myth.mould-firm.said": "Una mancha de moho, y hay que tirar todo.",
  "myth.mould-firm.true":
    "{names}: esto es firme. Si la pieza está entera y la mancha es chica, corta al menos {size} a su lado y debajo. Que el cuchillo no toque el moho.",
  "myth.mould-firm.why": "Para lo blando sí es así.",

  "myth.looks-fine.said": "Si se ve bien y huele bien, no hay peligro.",
  "myth.looks-fine.true":
    "{count, plural, one {{names}: en lo ya cortado crecen gérmenes que no se ven. Tapa, y guarda a {degrees} o menos. Come todo ese día.} other {{names}: en lo ya cortado crecen gérmenes que no se ven. Tapa, y guarda a {degrees} o menos. Come todo en # días como máximo. El día del corte es el día 1.}}",
  "myth.looks-fine.why": "Lo viejo casi siempre se ve mal. Los gérmenes no se ven.",

  "myth.fridge-cold.said": "Mi refrigerador se siente frío: ya basta.",
  "myth.fridge-cold.true":
    "En {homes} casas, solo {share} de cada 100 tenían una media de menos de {degrees}. Fue en 1991. Otra prueba más nueva aún halló horas con calor. Pon un termómetro. Busca {limit} o menos.",
  "myth.fridge-cold.why": "Todo el aire que sale de él se siente frío.",

  "myth.garlic-oil.said": "El ajo en aceite puede estar fuera.",
  "myth.garlic-oil.true":
    "{count, plural, one {Puede enfermar mucho. Ponlo al frío ya mismo. Úsalo en # día, o congela.} other {Puede enfermar mucho. Ponlo al frío ya mismo. Úsalo en # días, o congela.}}",
  "myth.garlic-oil.why": "Se ve bien y huele bien mucho tiempo.",

  "myth.green-potato.said": "Una papa verde, si se pela, está bien.",
  "myth.green-potato.true":
    "La verde tiene más cantidad de un veneno. Quita lo verde y los brotes. Si está toda verde o sabe amarga, tírala.",
  "myth.green-potato.why": "Parece que lo verde solo está en la cáscara.",

  "myth.onion-potato.said": "La cebolla hace brotar la papa.",
  "myth.onion-potato.true":
    "La cebolla casi no suelta gas que hace madurar. Las pruebas de ese gas con los brotes no dicen lo mismo. Ponlas lejos si quieres: no hace daño.",
  "myth.onion-potato.why": "A menudo están juntas, y las dos echan brotes.",

  "myth.banana-crown.said": "Envuelve la punta, y la banana dura días más.",
  "myth.banana-crown.true": "No conocemos una prueba que diga cuánto ayuda. Daño no hace.",
  "myth.banana-crown.why": "El gas que hace madurar sale por la punta. Es lógico probar.",

  "myth.tops.said": "La raíz dura más con sus hojas.",
  "myth.tops.true": "{names}: las hojas le sacan agua a la raíz. Arranca las hojas.",
  "myth.tops.why": "Al comprar, la hoja fresca dice que la raíz es fresca.",
} as const satisfies Messages;
