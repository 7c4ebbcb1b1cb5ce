import type { Messages } from "../message.js";

/** Un plan que sigue: qué cambia, y por qué. */
export const carryOnSpanish = {
  "carryOn.title": "Sigue el plan, del {from} al {to}",
  "carryOn.changed":
    "{count, plural, one {# cosa cambia frente al plan de antes; lo demás queda igual.} other {# cosas cambian frente al plan de antes; lo demás queda igual.}}",
  "carryOn.nothing": "No cambia nada: el plan de antes aún vale. Deja todo donde está.",

  "heading.changes": "Qué cambia, y por qué",
  "heading.staying": "Queda como estaba",
  "heading.gone": "Ya no hay",
  "heading.begun": "Ya se empezó y está en trozos",

  "carryOn.moves": "{name}: pasa ahora de “{from}” a “{to}” ({wrap}). {reasons}",
  "carryOn.rewrap": "{name}: deja en “{from}”, pero desde ahora {wrap}. {reasons}",
  "carryOn.parted": "{name}: pasa de “{from}” a {places}. {reasons}",
  "carryOn.planned": "{name}: pasa ahora, según el plan, de “{from}” a “{to}” ({wrap}). {reasons}",
  "carryOn.days": "{name}: deja donde está. Días para comer, ahora: {now}. Antes: {before}. {reasons}",
  "carryOn.new": "{name}: pon en “{to}” ({wrap}). {reasons}",
  "carryOn.newParted": "{name}: pon en {places}. {reasons}",
  "carryOn.vent": "Rejilla de “{place}”: pon {setting}.",
  "carryOn.stays": "{names}.",
  "carryOn.gone": "{name}: {reason}.",
  "carryOn.takenAsCut":
    "{name}: ya se comió una parte y no dijiste qué día se cortó. Aquí se toma como que se cortó el {date} y que desde entonces está con tapa en el refrigerador. Si no fue así, dilo, por ejemplo: “corté el melón ayer”.",
  "carryOn.takenAsCutOut":
    "{name}: ya se comió una parte y no dijiste qué día se cortó. Aquí se toma como que se cortó el {date}, y en esta cocina no hay refrigerador para guardarlo. Si no fue así, dilo, por ejemplo: “corté el melón ayer”.",
  "carryOn.cutUndated":
    "{name}: está en trozos y no dijiste qué día se cortó. Aquí se toma como que se cortó el {date}, lo más temprano que pudo ser. Si fue después, dilo, por ejemplo: “corté el melón ayer”.",
  "carryOn.layWarm":
    "{name}: se cortó el {date} y no se dijo dónde estuvo desde entonces. Se toma como si se hubiera quedado en “{place}”, fuera del refrigerador, donde lo tenía el plan. Si entró al refrigerador al cortarse, dilo, por ejemplo: “metí el melón al refrigerador ayer”.",
  "carryOn.cutToday":
    "{name}: se cortó el {date}. Se toma como si hubiera entrado al refrigerador de inmediato, sin quedarse en “{place}”. Si estuvo fuera, dilo, por ejemplo: “dejé el melón fuera 2 horas”.",
  "carryOn.begun":
    "{title}: ya se comió una parte, así que lo que queda está en trozos. Tapa y guarda en el refrigerador, y di qué día se cortó: “corté ayer: {name}”. Hasta entonces se toma como una pieza sin cortar.",
  "carryOn.whichIsMeant":
    "De {name}: esto vale para lo que se cortó primero. Si no sabes cuál es, tira todo.",
  "carryOn.onDay": "el {date} ({portions})",
  "carryOn.noDay": "ningún día",
  "carryOn.setting.open": "abierta",
  "carryOn.setting.half": "a la mitad",
  "carryOn.setting.closed": "cerrada",

  "carryOn.gone.eaten": "no queda nada",
  "carryOn.gone.thrown out": "a la basura",
  "carryOn.gone.given away": "se regaló todo",
  "carryOn.gone.frozen": "al congelador",
  "carryOn.taken": "{name}: {amounts}.",
  "carryOn.taken.thrown out": "{grams} a la basura",
  "carryOn.taken.given away": "{grams} para regalar",
  "carryOn.taken.frozen": "{grams} al congelador",

  "carryOn.because.came home": "Es compra nueva.",
  "carryOn.because.usual kind": "“{word}” se toma como {name}. Si es otra cosa, escribe cuál: {kinds}.",
  "carryOn.because.moved by hand": "Su lugar no era el del plan.",
  "carryOn.because.cut since": "Está en trozos desde entonces.",
  "carryOn.because.ripe sooner": "{count, plural, one {A punto # día antes.} other {A punto # días antes.}}",
  "carryOn.because.ripe later":
    "{count, plural, one {A punto # día después.} other {A punto # días después.}}",
  "carryOn.because.ends sooner":
    "{count, plural, one {Se pasa cerca de # día antes de lo que decía el plan.} other {Se pasa cerca de # días antes de lo que decía el plan.}}",
  "carryOn.because.keeps longer":
    "{count, plural, one {Dura cerca de # día más de lo que decía el plan.} other {Dura cerca de # días más de lo que decía el plan.}}",
  "carryOn.because.more left":
    "{count, plural, one {Queda # porción más que en el plan.} other {Quedan # porciones más que en el plan.}}",
  "carryOn.because.less left":
    "{count, plural, one {Queda # porción menos que en el plan.} other {Quedan # porciones menos que en el plan.}}",
  "carryOn.because.may not stay": "No puede quedar como está: mira “Ten cuidado”.",
  "carryOn.because.room taken": "El lugar en “{place}” ya lo ocupa: {names}.",
  "carryOn.because.room gone": "Queda muy poco lugar en “{place}”.",
  "carryOn.because.room free": "Ahora hay lugar en “{place}”.",
  "carryOn.because.beside":
    "{count, plural, one {Al lado de {names} duraría # día menos.} other {Al lado de {names} duraría # días menos.}}",
  "carryOn.because.lasts longer there":
    "{count, plural, one {Allí dura cerca de # día más.} other {Allí dura cerca de # días más.}}",
  "carryOn.because.ripens there": "Allí madura antes.",
  "carryOn.because.eats better there": "De allí sale con mejor sabor.",
  "carryOn.because.better for the rest": "Lo demás gana con eso: vale tanto como no perder {grams}.",
  "carryOn.because.others to eat": "En esos días hay que comer: {names}.",
  "carryOn.because.others gone": "De lo demás hay más o menos que en el plan.",
} as const satisfies Messages;
