import type { Messages } from "../message.js";

/** Qué no se puede tomar de lo que se dijo, y qué sí. */
export const findingSpanish = {
  "finding.account line not understood":
    "{line}: no se entiende. Escribe así: comimos 2 manzanas; tiré la espinaca; aguacates maduros; compré 500 g de chícharos; puse la espinaca en el refrigerador.",
  "finding.account words not understood":
    "{line}: no se entiende {phrase}. Escribe así: comimos 2 manzanas; tiré la espinaca; aguacates maduros; compré 500 g de chícharos; puse la espinaca en el refrigerador.",
  "finding.account kind not known":
    "{line}: en {phrase} no hay ninguna fruta ni verdura conocida. Escribe así: comimos 2 manzanas; tiré la espinaca; aguacates maduros; compré 500 g de chícharos; puse la espinaca en el refrigerador.",
  "finding.account which kind": "{line}: {phrase} puede ser más de una cosa. Escribe cuál es: {kinds}.",
  "finding.account kind not in plan":
    "{line}: {phrase} no está en el plan. Pon uno de estos: {kinds}; o escribe la compra nueva así: “compré …”.",
  "finding.account cut kind not in plan":
    "{line}: {phrase} no está en el plan. Pon uno de estos: {kinds}; o, si al final quedó algo, di cuándo se cortó, por ejemplo: encontré 200 g de melón cortado hace 3 días.",
  "finding.account without age":
    "{line}: no dice cuántos días tiene {phrase}, y su tiempo seguro corre. Di cuándo se cortó, por ejemplo: compré 200 g de melón cortado hoy; o: compré 200 g de melón cortado hace 2 días. Lo que quedó de antes tiene los días de entonces.",
  "finding.came home without age":
    "{phrase} entra como compra nueva: no dice cuántos días tiene, y su tiempo seguro ya corre. Di hace cuántos días se cortó, o se compró si se vende lista para comer: “extraDays”, 0 si fue hoy. Lo que queda de antes tiene los días de antes.",
  "finding.account without amount":
    "{line}: {phrase} no dice cuánto. Di cuánto, por ejemplo: comimos 200 g de espinaca, o: la mitad de la espinaca.",
  "finding.account of a day to come":
    "{line}: {phrase} habla de un día que aún no llega. Escribe lo que ya pasó; para qué día se quiere algo se dice al comprar.",
  "finding.account of a part":
    "{line}: {phrase} dice una cantidad, y esto solo se puede decir de todo. Quita la cantidad; o di de una parte que se comió, se regaló o se tiró.",
  "finding.account day not clear":
    "{line}: no queda claro desde qué día, en {phrase}. Escribe el día así: corté el melón hace 2 días, o: corté el melón el 2026-06-14.",
  "finding.account without a known place":
    "{line}: {phrase} no nombra un lugar de la cocina. Pon uno de estos: {places}.",
  "finding.account without hours": "{line}: no dice cuántas horas. Escribe: dejé el melón fuera 2 horas.",
  "finding.account without since":
    "{line}: no dice desde cuándo ni cuántas horas. Escribe: dejé la espinaca en la mesa desde ayer, o: dejé el melón fuera 2 horas.",
  "finding.account of what is not so":
    "{line}: dice lo que no es. Escribe lo que sí es: espinaca todavía buena; aguacates duros.",
  "finding.account of both":
    "{line}: dice en una línea lo que sí y lo que no. Escribe una línea para cada cosa.",
  "finding.account of its look":
    "{line}: dice cómo se ve, pero no si todavía se come. Escribe: lechuga todavía buena; o: tiré la lechuga.",
  "finding.no such lot": "{lot}: no está en la compra. Pon uno de estos: {lots}.",
  "finding.lot of several kinds": "{lot}: puede ser más de una cosa de la compra. Pon uno de estos: {lots}.",
  "finding.day not between":
    "{lot}: el día {date} no está entre el primer día del plan y hoy. Escribe un día del {from} al {on}, como año-mes-día.",
  "finding.day not of the calendar":
    "{lot}: {date} no es un día del calendario. Escribe un día del {from} al {on}, como año-mes-día.",
  "finding.does not ripen":
    "{lot}: ya no madura después de la cosecha. Quita si está maduro; si lo viste, di que sigue bien.",
  "finding.came cut": "{lot}: ya llegó en trozos. Quita que se cortó: su tiempo seguro ya corre.",
  "finding.cut on which day":
    "{lot}: está en trozos y, según el plan, estuvo fuera del refrigerador; no dice qué día se cortó. Di el día, del {from} al {on}, por ejemplo: corté el melón hoy, o: corté el melón ayer.",
  "finding.hours of what is whole":
    "{lot}: las horas fuera del refrigerador solo cuentan para lo que está en trozos. Di qué día se cortó, o quita las horas.",
  "finding.warm since when":
    "{lot}: está en trozos y fuera del refrigerador, y no dice desde cuándo. Di cuántas horas, por ejemplo: dejé el melón fuera 1 hora; o desde qué día antes de hoy.",
  "finding.no such wrap":
    "{lot}: la cocina no tiene {wrap}. Pon uno de estos: {wraps}; o agrega eso a la cocina.",
  "finding.no such place": "{lot}: el lugar {place} no está en la cocina. Pon uno de estos: {places}.",
  "finding.pieces not counted":
    "{lot}: {pieces} piezas, pero al llegar no se contaron. Di el peso o las porciones, por ejemplo: 200 g.",
  "finding.more eaten than there was":
    "{lot}: se comieron {grams} g, pero había {there} g. Corrige la cantidad; si fue todo, escribe “todo”.",
  "finding.more thrown out than there was":
    "{lot}: se tiraron {grams} g, pero había {there} g. Corrige la cantidad; si fue todo, escribe “todo”.",
  "finding.more given away than there was":
    "{lot}: se regalaron {grams} g, pero había {there} g. Corrige la cantidad; si fue todo, escribe “todo”.",
  "finding.more frozen than there was":
    "{lot}: se congelaron {grams} g, pero había {there} g. Corrige la cantidad; si fue todo, escribe “todo”.",
  "finding.more left than there was":
    "{lot}: quedan {grams} g, pero había {there} g. Corrige la cantidad, o escribe la compra nueva así: “compré …”.",
  "finding.more cut left than there was":
    "{lot}: quedan {grams} g, pero había {there} g. Corrige la cantidad. Si además hay otro, di cuándo se cortó, por ejemplo: compré 200 g de melón cortado hoy.",
  "finding.eaten by the plan":
    "{lot}: se dice algo de esto, pero según el plan ya se comió todo. Di cuánto queda (“quedan 200 g de {name}”), o que se comió (“comimos todo: {name}”).",
  "finding.today not of the calendar":
    "El día de hoy: “{on}” no es un día del calendario. Escribe el día como año-mes-día, por ejemplo 2026-06-13.",
  "finding.today before the plan":
    "El día de hoy: {on} es antes del primer día del plan, {from}. Pon un día desde el {from}.",
  "finding.today long after the plan":
    "El día de hoy: {on} es {days} días después del primer día del plan, {from}. Un plan sigue hasta {most} días; después, haz un plan nuevo con lo que hay.",
  "finding.plan over":
    "Días del plan: el plan de antes terminó después de {days} días. Di para cuántos días desde hoy, de 1 a 28.",
  "finding.days to plan for": "Días del plan: {days}. Di para cuántos días desde hoy, de 1 a 28.",
  "finding.nothing left":
    "Lo que queda: nada, y no hay compra nueva. No hay nada que planear: haz un plan nuevo con la próxima compra.",
  "finding.wanted on no day":
    "{lot}: se quiere para {day}, que no es un día del calendario. Pon un día del {from} al {last}, o quita el día.",
  "finding.wanted before the first day":
    "{lot}: se quiere para {day}, que es antes del primer día. Pon un día del {from} al {last}, o quita el día.",
  "finding.wanted too far ahead":
    "{lot}: se quiere para {day}, que es dentro de más de {most} días. Pon un día del {from} al {last}, o quita el día.",
} as const satisfies Messages;
