import type { Messages } from "../message.js";

/** Avisos. Sus cifras son los límites de seguridad del catálogo; una prueba las compara con las del inglés. */
export const safetySpanish = {
  "caution.no-refrigerator-for-cut-produce":
    "No hay refrigerador para lo cortado. Come lo cortado antes de dos horas (una hora si hace más de 32 °C o 90 °F) o tíralo.",
  "caution.must-be-cooked":
    "{names}: cuece muy bien antes de comer. Sin cocer o a medio cocer puede hacer daño. Busca por su nombre cómo se prepara.",
  "caution.wild-mushrooms":
    "Hongos silvestres: come solo los que un experto vio uno por uno. Cuécelos muy bien. Si dudas, tíralos.",
  "caution.cut-produce":
    "Fruta y verdura cortada: tápala y ponla en el refrigerador antes de dos horas (una hora si hace más de 32 °C o 90 °F).",
  "caution.cut-ready-to-eat":
    "Melón, sandía, jitomate o tomate y hojas, ya cortados: guarda a 5 °C (41 °F) o menos. Come a más tardar a los siete días, contando el día en que se cortó, aunque se vea bien.",
  "caution.refrigerator-too-warm": "El refrigerador está a más de 4.4 °C (40 °F). Ponlo más frío.",
  "caution.green-potatoes":
    "Papas: corta las partes verdes y los brotes. Tira la papa si está verde por dentro o si amarga.",
  "caution.mould-soft":
    "Si hay moho en una fruta o en algo blando o cortado, tira toda la pieza, aunque la mancha sea chica. No la huelas. Revisa lo que está al lado.",
  "caution.mould-firm":
    "Si hay una mancha chica de moho en una verdura firme y entera, como la zanahoria, el repollo o el pimiento, corta al menos 2.5 cm (1 pulgada) a su alrededor y por debajo. Que el cuchillo no toque el moho. Con el camote (batata), la chirivía o si tienes duda, no: tira la pieza.",
  "caution.garlic-in-oil":
    "Ajo en aceite hecho en casa: ponlo en el refrigerador de inmediato, úsalo antes de cuatro días y nunca lo dejes fuera del frío.",
  "caution.washed-greens":
    "Hojas que se venden lavadas: guarda siempre en frío y usa antes de la fecha de la bolsa.",
  "caution.safe-time-past":
    "Tira esto: {names}. Se cortó o se abrió hace mucho y ya no es seguro, aunque todo se vea bien.",
  "caution.wash":
    "Lava la fruta y la verdura entera con agua de la llave justo antes de comer o cortar, también la que se pela.",
  "caution.overflow": "{place}: está muy lleno, sobran cerca de {litres}. Come o regala algo primero.",
  "caution.unnamed": "Ten cuidado: {name}.",
  "caution.local": "Consulta a la autoridad de salud y alimentos de tu zona. Si dudas, tira la comida.",
} as const satisfies Messages;
