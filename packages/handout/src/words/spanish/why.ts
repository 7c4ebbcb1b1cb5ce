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
  "why.ground.eating spoilt": "Pierde en el plato: {effects}.",
  "why.ground.smell": "Toma el olor de {givers}.",
  "why.ground.harms others": "Otras cosas pierden con eso: {names}.",
  "why.ground.lasts longer": "Dura más.",
  "why.ground.more to do": "Da más trabajo.",
  "why.ground.hardly matters": "En total casi no cambia nada.",
  "why.ground.better": "En total es un poco mejor, según estas cifras. La búsqueda no lo halló.",
  "why.costs": "En total cuesta tanto como perder {grams}.",
  "why.terms": "Eso se compone de {terms}.",
  "why.term.waste.more": "{grams} más de pérdida",
  "why.term.waste.less": "{grams} menos de pérdida",
  "why.term.qualityLost.more": "peor sabor (tan malo como perder {grams})",
  "why.term.qualityLost.less": "mejor sabor (tan bueno como salvar {grams})",
  "why.term.lifeLost.more": "días perdidos (tan malo como perder {grams})",
  "why.term.lifeLost.less": "días ganados (tan bueno como salvar {grams})",
  "why.term.effort.more": "más trabajo o prisa (tan malo como perder {grams})",
  "why.term.effort.less": "menos trabajo o prisa (tan bueno como salvar {grams})",
  "why.there.neighbours": "Lo que hay al lado le quita {span} allí.",
  "why.there.gas": "El gas que madura, de {name}, le quita {span} allí.",
  "why.there.damp": "La humedad de {name} le quita {span} allí.",

  // Lo que está al lado
  "why.neighbour": "Sin {name} en la cocina: {span}; ahora, {now}.",
  "why.means.gas": "Es por el gas que madura (etileno), no por la humedad.",
  "why.means.damp": "Es por la humedad, no por el gas que madura (etileno).",
  "why.means.both": "El gas que madura (etileno) quita {gas}; la humedad, {damp}.",
  "why.means.gasButDamp":
    "Solo sin el gas que madura (etileno) serían {gas} más; la humedad que suelta salva {damp}.",
  "why.means.dampButGas": "Solo sin la humedad serían {damp} más; el gas que madura (etileno) salva {gas}.",
  "why.helper": "Sin {name} en la cocina: solo {span}; ahora, {now}. Ayuda la humedad que suelta.",
  "why.helperOther": "Sin {name} en la cocina: solo {span}; ahora, {now}.",
  "why.noNeighbours": "Sin nada al lado: {span}; ahora, {now}.",
  "why.joint": "Lo que está al lado actúa junto: lo que quita cada cosa sola no suma lo que quitan todas.",
  "why.nobody": "Nada de lo que está al lado le hace mucho.",
  "why.theRest": "su otra parte",

  // Reglas
  "why.rule.cut out of refrigerator":
    "No va así: {things}. Lo que se corta va al refrigerador de inmediato (es costumbre y no tiene fuente).",
  "why.rule.cut out of refrigerator.sourced":
    "No va así: {things}. Lo que se corta va al refrigerador de inmediato. Fuente: {source}.",
  "why.rule.does not stand in water":
    "No va así: {things}. De ese modo toma poca agua (es costumbre y no tiene fuente).",
  "why.rule.does not stand in water.sourced":
    "No va así: {things}. De ese modo toma poca agua. Fuente: {source}.",
  "why.rule.cut uncovered":
    "No va así: {things}. Lo que se corta se tapa bien (es costumbre y no tiene fuente).",
  "why.rule.must breathe": "No va así: {things}. Tiene que respirar (es costumbre y no tiene fuente).",
  "why.rule.keep dry": "No va así: {things}. Se guarda en seco (es costumbre y no tiene fuente).",
  "why.rule.memory": "{citation} (de memoria)",
} as const satisfies Messages;
