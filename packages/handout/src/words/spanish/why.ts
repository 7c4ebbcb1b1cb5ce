import type { Messages } from "../message.js";

/** Por qué cada cosa está donde está, y qué le hace lo que tiene al lado. */
export const whySpanish = {
  "heading.why": "Por qué ahí, y no en otro lugar",
  "why.here": "{name}: “{place}” ({wrap}). {span}; el límite es {ending}.",
  "why.hereRipe":
    "{name}: “{first}” hasta que madure ({firstWrap}), luego “{place}” ({wrap}). {span}; el límite es {ending}.",

  // Otros lugares y envolturas
  "why.elsewhere": "{place} ({wrap}): {span}; el límite es {ending}.",
  "why.elsewhereRipe":
    "{first} hasta que madure ({firstWrap}), luego {place} ({wrap}): {span}; el límite es {ending}.",
  "why.wrap": "Con otra envoltura ({wrap}): {span}; el límite es {ending}.",
  "why.wrapRipe":
    "Con otra envoltura ({firstWrap} hasta que madure, luego {wrap}): {span}; el límite es {ending}.",
  "why.ground.no room": "No cabe.",
  "why.ground.not ripe": "Allí no madura.",
  "why.ground.ready later": "Tarda más en estar a punto.",
  "why.ground.lasts less": "Dura menos.",
  "why.ground.eating spoilt": "Se come peor: {effects}.",
  "why.ground.smell": "Toma el olor de {givers}.",
  "why.ground.harms others": "Otras cosas pierden con eso: {names}.",
  "why.ground.lasts longer": "Dura más.",
  "why.ground.more to do": "Da más trabajo.",
  "why.ground.hardly matters": "En total casi no cambia nada.",
  "why.ground.better": "En total es un poco mejor, según estas cifras. La búsqueda no lo halló.",
  "why.costs": "En total cuesta tanto como perder {grams}.",
  "why.terms": "Es decir: {terms}.",
  "why.term.waste.more": "{grams} más de pérdida",
  "why.term.waste.less": "{grams} menos de pérdida",
  "why.term.qualityLost.more": "peor sabor (tan malo como perder {grams})",
  "why.term.qualityLost.less": "mejor sabor (tan bueno como salvar {grams})",
  "why.term.lifeLost.more": "menos días de vida (tan malo como perder {grams})",
  "why.term.lifeLost.less": "más días de vida (tan bueno como salvar {grams})",
  "why.term.effort.more": "más trabajo o prisa (tan malo como perder {grams})",
  "why.term.effort.less": "menos trabajo o prisa (tan bueno como salvar {grams})",
  "why.there.neighbours": "Lo que hay al lado le quita {span} allí.",
  "why.there.gas": "El gas que hace madurar, de {name}, le quita {span} allí.",
  "why.there.damp": "La humedad de {name} le quita {span} allí.",

  // Lo que está al lado
  "why.neighbour": "En un lote promedio: sin {name} en la cocina, {span}; ahora, {now}.",
  "why.means.gas": "Es por el gas que hace madurar (etileno), no por la humedad.",
  "why.means.damp": "Es por la humedad, no por el gas que hace madurar (etileno).",
  "why.means.both": "El gas que hace madurar (etileno) quita {gas}; la humedad, {damp}.",
  "why.means.gasButDamp":
    "Solo sin el gas que hace madurar (etileno) serían {gas} más; la humedad que suelta salva {damp}.",
  "why.means.dampButGas":
    "Solo sin la humedad serían {damp} más; el gas que hace madurar (etileno) salva {gas}.",
  "why.helper":
    "En un lote promedio: sin {name} en la cocina, solo {span}; ahora, {now}. Ayuda la humedad que suelta.",
  "why.helperOther": "En un lote promedio: sin {name} en la cocina, solo {span}; ahora, {now}.",
  "why.noNeighbours": "En un lote promedio: sin nada al lado, {span}; ahora, {now}.",
  "why.joint":
    "Las cosas de al lado actúan juntas: lo que quita cada una por su cuenta no suma lo que quitan todas.",
  "why.nobody": "Nada de lo que tiene al lado le afecta mucho.",
  "why.theRest": "su otra parte",

  // Reglas
  "why.rule.cut out of refrigerator":
    "Así no: {things}. Lo que se corta va al refrigerador de inmediato (es costumbre y no tiene fuente).",
  "why.rule.cut out of refrigerator.sourced":
    "Así no: {things}. Lo que se corta va al refrigerador de inmediato. Fuente: {source}.",
  "why.rule.does not stand in water":
    "Así no: {things}. De ese modo toma poca agua (es costumbre y no tiene fuente).",
  "why.rule.does not stand in water.sourced":
    "Así no: {things}. De ese modo toma poca agua. Fuente: {source}.",
  "why.rule.cut uncovered":
    "Así no: {things}. Lo cortado o lavado para comer se tapa bien (es costumbre y no tiene fuente).",
  "why.rule.must breathe": "Así no: {things}. Tiene que respirar (es costumbre y no tiene fuente).",
  "why.rule.keep dry": "Así no: {things}. Se guarda en seco (es costumbre y no tiene fuente).",
  "why.rule.memory": "{citation} (de memoria)",
} as const satisfies Messages;
