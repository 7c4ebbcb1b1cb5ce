import type { Messages } from "../message.js";

/** Un plan: títulos, lugares, qué hacer, cambios, comidas y desperdicio. */
export const planSpanish = {
  // Título y resumen
  "plan.title": "Dónde va cada cosa, del {from} al {to}",
  "plan.household":
    "{count, plural, one {Para # persona que come cerca de {portions} porciones de fruta y verdura al día.} other {Para # personas; cada una come cerca de {portions} porciones de fruta y verdura al día.}}",
  "plan.kitchen": "Cocina: {kitchen}.",
  "plan.ordinaryKitchen":
    "No dijiste cómo es tu cocina. Este plan es para {kitchen}. La tuya puede ser más fría, más caliente o más chica.",
  "plan.away": "Nadie come en casa: {dates}.",

  // Encabezados
  "heading.understood": "Lo que se entendió",
  "heading.questions": "Por favor revisa",
  "heading.kitchen": "La cocina de este plan",
  "heading.throwAway": "Tira esto primero",
  "heading.prepare": "Haz esto primero",
  "heading.leave": "Deja esto como está por ahora",
  "heading.places": "Dónde va cada cosa",
  "heading.moves": "Cambia después",
  "heading.eat": "Come en este orden",
  "heading.lives": "Cuánto dura cada cosa, y por qué",
  "heading.waste": "Lo que ganas con esto",
  "heading.cautions": "Ten cuidado",
  "heading.sources": "De dónde salen las cifras",
  "heading.ripe": "Cómo saber que está a punto",
  "heading.going": "Ya se pasa: come ahora",
  "heading.discard": "Tira cuando",
  "heading.save": "¿Es mucho? Guarda así",
  "heading.season": "Temporada",
  "heading.belongs": "Dónde va",
  "heading.lasts": "Cuánto dura, y por qué",
  "heading.elsewhere": "En cada tipo de lugar, sin nada al lado",

  // Lugares
  "place.air": "{temperature}, cerca de {humidity} de humedad",
  "place.line": "{name}: {air}; {room}.",
  "place.lineWithSetting": "{name}: {air}; {room}. {setting}",
  "place.room": "se usan {taken} de {litres}",
  "place.empty": "Aquí no va nada esta vez: {places}.",
  "place.quoted": "“{place}”",
  "place.kind.refrigerator shelf": "repisa del refrigerador",
  "place.kind.refrigerator door": "puerta del refrigerador",
  "place.kind.crisper drawer": "cajón de verduras",
  "place.kind.counter": "mesa de la cocina",
  "place.kind.cool dark cupboard": "alacena fresca y sin luz",
  "place.kind.cellar": "sótano",
  "vent.open": "Abre la rejilla.",
  "vent.half": "Deja la rejilla a la mitad.",
  "vent.closed": "Cierra la rejilla.",
  "vent.choose": "Su rejilla se puede mover.",
  entry: "{name}, {amount}: {wrap}",
  "entry.sooner": "{name}, {amount}: {wrap} (si está a punto antes del {date})",
  "entry.from": "{name}, {amount}: {wrap} (desde el {date})",
  "wrap.none": "sin envolver",
  "wrap.paper bag": "en bolsa de papel, con la boca doblada",
  "wrap.perforated bag": "en bolsa con agujeros",
  "wrap.closed film bag": "en bolsa de plástico cerrada",
  "wrap.damp towel": "en un paño húmedo",
  "wrap.beeswax cloth": "en tela con cera de abeja",
  "wrap.foil": "en papel de aluminio",
  "wrap.lidded box": "en caja con tapa",
  "wrap.glass of water": "de pie en un vaso con agua",

  "wrapName.paper bag": "bolsas de papel",
  "wrapName.perforated bag": "bolsas con agujeros",
  "wrapName.closed film bag": "bolsas de plástico que cierran",
  "wrapName.damp towel": "paños para mojar",
  "wrapName.beeswax cloth": "telas con cera de abeja",
  "wrapName.foil": "papel de aluminio",
  "wrapName.lidded box": "cajas con tapa",
  "wrapName.glass of water": "vasos para agua",

  // Nombres de lotes: valen para una cosa o varias, de cualquier género
  "lot.apart": "{name} ({told})",
  "lot.apartBoth": "{first}, {next}",
  "lot.of": "del {date}",
  "lot.which": "lote {number} de {all}",
  "lot.part": "parte {part} de {parts}",
  "lot.cut": "{name} en trozos",
  "lot.tops": "{name} con hojas",
  "lot.now.unripe": "{name} sin madurar",
  "lot.washed": "{name} (con lavado previo)",
  "lot.now.turning": "{name} a medio madurar",
  "lot.now.nearly ripe": "{name} casi a punto",
  "lot.now.ripe": "{name} a punto",
  "lot.now.very ripe": "{name} con mucha madurez",
  "lot.came.unripe": "sin madurar al llegar",
  "lot.was.unripe": "sin madurar el {date}",
  "lot.came.turning": "a medio madurar al llegar",
  "lot.was.turning": "a medio madurar el {date}",
  "lot.came.nearly ripe": "casi a punto al llegar",
  "lot.was.nearly ripe": "casi a punto el {date}",
  "lot.came.ripe": "a punto al llegar",
  "lot.was.ripe": "a punto el {date}",
  "lot.came.very ripe": "con mucha madurez al llegar",
  "lot.was.very ripe": "con mucha madurez el {date}",

  // Antes de guardar: qué, y por qué
  "prepare.line": "{names}: {task} {why}",
  "prepare.practice": "{names}: {task} {why} *",
  "prepare.practiceNote": "* Es costumbre y no tiene fuente.",
  "prepare.what": "{names}: {task}",
  "prepare.whyPractice": "{why} Es costumbre y no tiene fuente.",
  "prepare.do.keep dry and unwashed": "guarda en seco y no laves todavía.",
  "prepare.do.twist off leaves": "quita las hojas.",
  "prepare.do.trim stem ends": "corta la punta de los tallos.",
  "prepare.do.remove bands and bruised leaves": "quita las ligas y las hojas dañadas.",
  "prepare.do.dry well": "seca bien antes de guardar.",
  "prepare.do.keep husk on": "deja puesta su cubierta de hojas.",
  "prepare.do.keep in the dark": "guarda donde no dé la luz.",
  "prepare.do.cure first": "deja que la piel se seque y se ponga dura antes de guardar.",
  "prepare.do.sort out damaged pieces": "separa las piezas dañadas y come esas primero.",
  "prepare.do.wrap crown": "envuelve la corona.",
  "prepare.do.keep on the vine": "deja en la rama lo que vino en rama.",
  "prepare.do.wash just before use": "lava justo antes de comer, no ahora.",
  "prepare.do.leave whole": "no cortes hasta que lo vayas a usar.",
  "prepare.do.break up bunch": "separa el manojo.",
  "prepare.do.remove from sealed bag": "saca de la bolsa cerrada.",
  "prepare.why.keep dry and unwashed": "Con agua en la piel empieza el moho.",
  "prepare.why.twist off leaves": "Las hojas le sacan agua a la raíz.",
  "prepare.why.trim stem ends": "Con un corte nuevo, el tallo toma agua.",
  "prepare.why.remove bands and bruised leaves": "Lo que se aplasta se pudre primero y daña lo demás.",
  "prepare.why.dry well": "Con agua encima empieza a pudrirse.",
  "prepare.why.keep husk on": "Así no se seca por dentro.",
  "prepare.why.keep in the dark": "La luz hace partes verdes y amargas.",
  "prepare.why.light": "Dura más sin luz.",
  "prepare.why.cure first": "La piel seca y dura cierra los cortes chicos y no deja entrar la pudrición.",
  "prepare.why.sort out damaged pieces": "Una que se pudre daña las que toca.",
  "prepare.why.wrap crown": "Por la corona sale gas que hace madurar.",
  "prepare.why.keep on the vine": "Donde se arranca el tallo queda una herida chica.",
  "prepare.why.wash just before use": "Con agua encima empieza a pudrirse.",
  "prepare.why.leave whole": "El lado que se corta se seca y se pudre antes.",
  "prepare.why.break up bunch": "El aire llega a cada tallo, y se ve lo que hay que sacar.",
  "prepare.why.remove from sealed bag": "Con la humedad encerrada empieza a pudrirse.",

  // Cambios
  "move.day": "{date}. {name}: pasa de “{from}” a “{to}” ({wrap}).",
  "move.ripe": "Cuando esté a punto, hacia el {date}. {name}: pasa de “{from}” a “{to}” ({wrap}).",
  "move.sooner": "Si está a punto antes del {date}. {name}: pasa de “{from}” a “{to}” ({wrap}).",
  "move.rewrap": "{date}. {name}: deja en “{from}”, pero desde ahora {wrap}.",
  "move.none": "No hay que cambiar nada de lugar.",

  // Comidas
  "eat.day": "{date}: {list}",
  "eat.away": "{date}: nadie en casa",
  "eat.nothing": "{date}: nada en el plan",
  "eat.entryShort": "{name}: {portions}",
  "eat.entry": "{count, plural, one {{name} (# porción)} other {{name} (# porciones)}}",
  "eat.entryDoubtful":
    "{count, plural, one {{name} (# porción; quizá no dure: come antes, congela o regala)} other {{name} (# porciones; quizá no duren: come antes, congela o regala)}}",
  "eat.throwAway":
    "{count, plural, one {Tira lo que quede de {name} después del {date} (# porción).} other {Tira lo que quede de {name} después del {date} (# porciones).}}",
  "eat.left":
    "{count, plural, one {Queda al final: {name} (# porción).} other {Queda al final: {name} (# porciones).}}",
  "eat.cutOpen":
    "{name}: se come en varios días, desde el {date}. Al cortar, tapa lo que quede y ponlo en el refrigerador de inmediato.",
  "eat.cutOpenOften":
    "{name}: cada pieza dura varios días; se empieza una en estas fechas: {dates}. Una vez cortada, tapa lo que queda y ponlo enseguida en el refrigerador.",
  "eat.cutOpenUntil":
    "{name}: se come en varios días, desde el {date}. Al cortar, tapa lo que quede y ponlo en el refrigerador de inmediato. Por salud, come hasta el {last} y no más.",
  "eat.cutOpenTooLong":
    "{count, plural, one {{name}: se come en varios días, desde el {date}. Al cortar, tapa lo que quede y ponlo en el refrigerador de inmediato. Por salud, come hasta el {last} y no más: sobra # porción. Congela o regala esa porción antes.} other {{name}: se come en varios días, desde el {date}. Al cortar, tapa lo que quede y ponlo en el refrigerador de inmediato. Por salud, come hasta el {last} y no más: sobran # porciones. Congela o regala esas porciones antes.}}",
  "eat.cutOpenAtOnce":
    "{count, plural, one {{name}: se corta el {date}. Ningún lugar de esta cocina lo conserva seguro más que unas horas una vez cortado: come antes de dos horas. Sobra # porción: regala esa porción de inmediato o tírala.} other {{name}: se corta el {date}. Ningún lugar de esta cocina lo conserva seguro más que unas horas una vez cortado: come antes de dos horas. Sobran # porciones: regala esas porciones de inmediato o tíralas.}}",
  "eat.ready": "{name}: a punto hacia el {date}.",
  "eat.notReady": "{name}: en este lugar no va a madurar.",

  // Desperdicio
  "waste.both":
    "Desperdicio esperado con este plan: {plan}. Con todo sin orden en el refrigerador: {unsorted}.",
  "waste.none":
    "Desperdicio esperado con este plan: casi nada. Con todo sin orden en el refrigerador: {unsorted}.",
  "waste.equal":
    "Con este plan, o con todo sin orden en el refrigerador, el desperdicio esperado es más o menos el mismo: {plan}.",
  "waste.neither":
    "Casi no se espera desperdicio, ni con este plan ni con todo sin orden en el refrigerador: se come a tiempo.",
  "waste.worse":
    "Desperdicio esperado con este plan: {plan}. Con todo sin orden en el refrigerador sería menos: {unsorted}. A cambio, el plan da mejor sabor.",
  "waste.worseAll":
    "Desperdicio esperado con este plan: {plan}. Aquí es mejor dejar todo sin orden en el refrigerador: {unsorted}.",
  "waste.alone": "Desperdicio esperado con este plan: {plan}.",
  "waste.note": "Son promedios del modelo, en peso que se come. Una semana puede salir distinta.",
} as const satisfies Messages;
